import type { MonthlyFile } from './climate-file.js';
import { shown } from './faults.js';
import { tidyName } from './lines.js';
import { POWER_MISSING, POWER_MONTHS, powerMonthly, powerPeriod, type PowerFile, type PowerParameter } from './nasa-power.js';
import type { FormatDoor, LineParser, ParserContext } from './parser.js';

/** The GeoJSON form of a climatology: `geometry.coordinates`, `properties.parameter.{P}.{JAN..DEC}`, `parameters.{P}.units`. */
type Json = null | boolean | number | string | Json[] | { [key: string]: Json };

const member = (value: Json | undefined, key: string): Json | undefined =>
  typeof value === 'object' && value !== null && !Array.isArray(value) && Object.hasOwn(value, key) ? value[key] : undefined;
const path = (value: Json, ...keys: string[]): Json | undefined => keys.reduce<Json | undefined>(member, value);
const textOf = (value: Json | undefined): string => (typeof value === 'string' || typeof value === 'number' ? String(value) : '');

class NasaPowerJson implements LineParser {
  private readonly lines: string[] = [];

  constructor(private readonly context: ParserContext) {}

  line(text: string): boolean {
    this.lines.push(text);
    return true;
  }

  end(): MonthlyFile | null {
    const value = this.parsed();
    const file = value === undefined ? null : this.fileOf(value);
    return file && this.context.faults.count === 0 ? powerMonthly(file, this.context) : null;
  }

  private parsed(): Json | undefined {
    const text = this.lines.join('\n');
    try {
      return JSON.parse(text) as Json;
    } catch (e) {
      const at = /position (\d+)/.exec(String(e))?.[1];
      const line = at === undefined ? this.lines.length : text.slice(0, Number(at)).split('\n').length;
      const cutOff = at === undefined || Number(at) >= text.trimEnd().length;
      this.context.faults.add({
        line,
        code: cutOff ? 'truncated' : 'not-json',
        message: cutOff ? `the JSON ends within line ${this.lines.length}` : `the text is not valid JSON on line ${line}`,
        remedy: 'Send the answer of the service whole and unchanged.',
      });
      return undefined;
    }
  }

  /** The line on which a name stands first, so that a fault can be found. */
  private lineOf(name: string): number {
    return this.lines.findIndex((l) => l.includes(`"${name}"`)) + 1;
  }

  private fileOf(value: Json): PowerFile | null {
    const coordinates = path(value, 'geometry', 'coordinates');
    const [longitudeDeg, latitudeDeg, elevation] = Array.isArray(coordinates) ? coordinates : [];
    const parameter = path(value, 'properties', 'parameter');
    if (
      typeof longitudeDeg !== 'number' ||
      typeof latitudeDeg !== 'number' ||
      typeof parameter !== 'object' ||
      parameter === null ||
      Array.isArray(parameter)
    ) {
      this.context.faults.add({
        line: 1,
        code: 'not-json',
        message: 'the JSON has no geometry.coordinates with two numbers or no properties.parameter',
        remedy: 'Send the answer of the climatology service for one point, unchanged.',
      });
      return null;
    }
    const fill = path(value, 'header', 'fill_value');
    const missing = typeof fill === 'number' ? fill : POWER_MISSING;
    const parameters = new Map<string, PowerParameter>();
    for (const [name, months] of Object.entries(parameter)) {
      const unit = path(value, 'parameters', name, 'units');
      parameters.set(name, {
        line: this.lineOf(name),
        unit: typeof unit === 'string' ? unit : null,
        months: POWER_MONTHS.map((m) => this.month(name, m, member(months, m), missing)),
      });
    }
    const [start, stop] = [textOf(path(value, 'header', 'start')), textOf(path(value, 'header', 'end'))];
    const title = textOf(path(value, 'header', 'title'));
    return {
      formatId: 'nasa-power-json',
      latitudeDeg,
      longitudeDeg,
      elevationM: typeof elevation === 'number' && elevation !== missing ? elevation : null,
      placeLine: this.lineOf('coordinates'),
      period:
        start === '' || stop === '' ? powerPeriod(textOf(path(value, 'header', 'range')) || title) : powerPeriod(`${start.slice(0, 4)} - ${stop.slice(0, 4)}`),
      statements: title === '' ? [] : [tidyName(title, 200)],
      parameters,
    };
  }

  private month(name: string, month: string, value: Json | undefined, missing: number): number | null {
    if (value === null || value === undefined || value === missing) return null;
    if (typeof value === 'number' && Number.isFinite(value)) return value <= POWER_MISSING ? null : value;
    this.context.faults.add({
      line: this.lineOf(name),
      column: `${shown(name)} ${month}`,
      code: 'not-a-number',
      message: `${shown(name)} ${month} is not a number`,
      remedy: 'Send the answer of the service unchanged.',
    });
    return null;
  }
}

export const nasaPowerJson: FormatDoor = {
  id: 'nasa-power-json',
  fits: (head) => {
    if (!(head.find((l) => l.trim() !== '') ?? '').trimStart().startsWith('{')) return null;
    return head.some((l) => /"parameter"\s*:/.test(l)) ? 'JSON with "parameter", as the climatology of a grid cell has it' : null;
  },
  start: (context) => new NasaPowerJson(context),
};
