import type { MonthlyFile } from './climate-file.js';
import { numberOf } from './csv.js';
import { shown } from './faults.js';
import { tidyName } from './lines.js';
import { POWER_MISSING, POWER_MONTHS, powerMonthly, powerPeriod, type PowerParameter } from './nasa-power.js';
import { FieldReader, type FormatDoor, type LineParser, type ParserContext } from './parser.js';
import { Table } from './table.js';

/** The CSV of a climatology: a header between two marks, then `PARAMETER,JAN..DEC,ANN`. Units stand in the header. */
const BEGIN = '-BEGIN HEADER-';
const END = '-END HEADER-';
const LOCATION = /Latitude\s+(-?\d+(?:\.\d+)?)\s+Longitude\s+(-?\d+(?:\.\d+)?)/i;
/** After the equals sign of the line that speaks of elevation. */
const ELEVATION = /=\s{0,9}(-?\d{1,6}(?:\.\d{1,6})?)\s{0,9}meters/i;
const PARAMETER = /^([A-Z][A-Z0-9_]{1,40})\s+(\S.{0,200})$/;
const PERIOD = /\((\w+ \d{4}) ?- ?(\w+ \d{4})\)/;

class NasaPowerCsv implements LineParser {
  private inHeader = false;
  private ended = false;
  private at: { latitudeDeg: number; longitudeDeg: number; line: number } | null = null;
  private elevationM: number | null = null;
  private period: string | null = null;
  private readonly statements: string[] = [];
  private readonly units = new Map<string, string>();
  private readonly parameters = new Map<string, PowerParameter>();
  private readonly table: Table;
  private readonly reader: FieldReader;

  constructor(private readonly context: ParserContext) {
    this.table = new Table(context, ['PARAMETER', ...POWER_MONTHS]);
    this.reader = new FieldReader(context.faults);
  }

  line(text: string, number: number): boolean {
    const line = text.trim();
    if (line === '') return true;
    if (line === BEGIN) this.inHeader = true;
    else if (line === END) {
      this.inHeader = false;
      this.ended = true;
    } else if (this.inHeader) this.headerLine(line, number);
    else if (!this.table.hasHeader) return this.table.header(text, number);
    else this.row(text, number);
    return true;
  }

  private headerLine(text: string, line: number): void {
    const place = LOCATION.exec(text);
    if (place) this.at = { latitudeDeg: Number(place[1]), longitudeDeg: Number(place[2]), line };
    const height = /Elevation /i.test(text) ? ELEVATION.exec(text) : null;
    if (height) this.elevationM = numberOf(height[1] ?? '');
    const period = PERIOD.exec(text);
    if (period) this.period ??= powerPeriod(`${period[1]} - ${period[2]}`);
    const parameter = PARAMETER.exec(text);
    // The unit is what the last brackets hold.
    const unit = parameter && /\(([^()]*)\)[^()]*$/.exec(parameter[2] ?? '')?.[1];
    if (parameter && typeof unit === 'string') this.units.set(parameter[1] ?? '', unit);
    if (/^NASA/.test(text) || /^Elevation/.test(text)) this.statements.push(tidyName(text, 200));
  }

  private row(text: string, line: number): void {
    const fields = this.table.row(text, line);
    if (!fields) return;
    const name = this.table.field(fields, 'PARAMETER');
    if (this.parameters.has(name)) {
      this.context.faults.add({ line, code: 'duplicate-row', message: `${shown(name)} stands twice`, remedy: 'Keep one row a parameter.' });
      return;
    }
    const months = POWER_MONTHS.map((column) => {
      const raw = this.table.field(fields, column);
      const value = raw === '' ? null : this.reader.number(raw, { line, column });
      return value === null || value <= POWER_MISSING ? null : value;
    });
    this.parameters.set(name, { line, unit: this.units.get(name) ?? null, months });
  }

  end(): MonthlyFile | null {
    const { faults } = this.context;
    if (faults.count > 0) return null;
    if (!this.at)
      faults.add({ line: 1, code: 'missing-header', message: 'no header line gives Latitude and Longitude', remedy: 'Send the answer of the service whole.' });
    if (!this.ended || this.parameters.size === 0)
      faults.add({ line: 0, code: 'truncated', message: 'the file ends before its first parameter', remedy: 'Send the answer of the service whole.' });
    if (!this.at || faults.count > 0) return null;
    const { latitudeDeg, longitudeDeg, line } = this.at;
    return powerMonthly(
      {
        formatId: 'nasa-power-csv',
        latitudeDeg,
        longitudeDeg,
        placeLine: line,
        elevationM: this.elevationM,
        period: this.period,
        statements: this.statements,
        parameters: this.parameters,
      },
      this.context,
    );
  }
}

export const nasaPowerCsv: FormatDoor = {
  id: 'nasa-power-csv',
  fits: (head) => {
    if (head.find((l) => l.trim() !== '')?.trim() !== BEGIN) return null;
    return head.some((l) => /^PARAMETER,JAN,FEB,/.test(l.trim())) ? 'a header between marks and rows "PARAMETER,JAN,FEB" of a climatology' : null;
  },
  start: (context) => new NasaPowerCsv(context),
};
