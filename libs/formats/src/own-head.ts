import type { FilePlace, FileSource, FormatId } from './climate-file.js';
import { celsiusOfFahrenheit, fieldsOf, numberOf, rounded } from './csv.js';
import { shown } from './faults.js';
import { tidyName } from './lines.js';
import { FieldReader, LIMITS, type Limits, type ParserContext } from './parser.js';
import { coordinatesOf, unitAnswer } from './place.js';

/**
 * The head of our own two forms (docs/formats/own-csv.md): lines `key,value` up to the header of the table. Lines that begin
 * with # are remarks. A key that is not documented is a fault, because a mistyped key would otherwise be lost in silence.
 */
const KEYS = [
  'format',
  'name',
  'station_id',
  'country',
  'latitude_deg',
  'longitude_deg',
  'elevation_m',
  'zone_h',
  'period',
  'kind',
  'publisher',
  'credit',
  'licence_note',
] as const;
export const OWN_FIRST = /^"?format"?\s*,\s*"?(lathwork-(?:months|hours)-\d+)"?[\s,]*$/;
const REQUIRED = ['name', 'latitude_deg', 'longitude_deg', 'elevation_m', 'period', 'credit'] as const;

export const ownFormatOf = (head: readonly string[]): string | null =>
  OWN_FIRST.exec((head.find((l) => l.trim() !== '' && !l.startsWith('#')) ?? '').replace(/^\uFEFF/, ''))?.[1] ?? null;

/** A column of our own tables: its name carries the unit; a customary unit is another name for the same figure. */
export interface OwnColumn<F extends string> {
  name: string;
  figure: F;
  limits: Limits;
  unit?: 'celsius' | 'fahrenheit' | 'percent' | 'inch';
}
const INCH_MM = 25.4;

export const ownValue = (value: number, unit: OwnColumn<string>['unit'], context: ParserContext): number => {
  if (unit === 'celsius') return unitAnswer(context.options.answers)(value);
  if (unit === 'fahrenheit') return context.options.answers?.temperatureUnit === 'celsius' ? value : celsiusOfFahrenheit(value);
  if (unit === 'percent') return rounded(value / 100, 4);
  return unit === 'inch' ? rounded(value * INCH_MM, 2) : value;
};

export class OwnHead {
  private readonly values = new Map<string, { text: string; line: number }>();
  private readonly reader: FieldReader;

  constructor(
    private readonly formatId: FormatId,
    private readonly written: string,
    private readonly context: ParserContext,
    private readonly moreKeys: readonly string[] = [],
  ) {
    this.reader = new FieldReader(context.faults);
  }

  line(text: string, line: number): void {
    const fields = fieldsOf(text);
    const { faults } = this.context;
    while (fields && fields.length > 2 && fields.at(-1) === '') fields.pop();
    if (!fields || fields.length !== 2) {
      faults.add({
        line,
        code: fields ? 'field-count' : 'unclosed-quote',
        message: `"${shown(text)}" is not a key and a value`,
        remedy: 'Write key,value and put a value that holds a comma in quotes.',
      });
      return;
    }
    const [key, value] = [(fields[0] ?? '').toLowerCase(), fields[1] ?? ''];
    if (![...KEYS, ...this.moreKeys].includes(key))
      faults.add({
        line,
        column: shown(key),
        code: 'unknown-column',
        message: `"${shown(key)}" is no key of this form`,
        remedy: `Keys are ${[...KEYS, ...this.moreKeys].join(', ')}.`,
      });
    else if (this.values.has(key)) faults.add({ line, column: key, code: 'duplicate-row', message: `${key} stands twice`, remedy: 'Keep one of the two.' });
    else if (value !== '') this.values.set(key, { text: value, line });
  }

  text(key: string): string | null {
    return this.values.get(key)?.text ?? null;
  }

  number(key: string, limits: Limits): number | null {
    const value = this.values.get(key);
    if (!value) return null;
    const at = { line: value.line, column: key };
    return this.reader.within(this.reader.number(value.text, at), limits, at);
  }

  lineOf(key: string): number {
    return this.values.get(key)?.line ?? 0;
  }

  /** Called at the header of the table; null with faults where the head does not do. */
  place(line: number, required: readonly string[] = []): FilePlace | null {
    const { faults } = this.context;
    const before = faults.count;
    const format = this.text('format');
    if (format !== this.written)
      faults.add({
        line: this.lineOf('format'),
        column: 'format',
        code: 'format-not-read',
        message: `format ${shown(format ?? 'not given', 40)} is not ${this.written}`,
        remedy: `Write format,${this.written} as the first line.`,
      });
    for (const key of [...REQUIRED, ...required])
      if (!this.values.has(key))
        faults.add({
          line,
          column: key,
          code: 'missing-header',
          message: `${key} is not given above the table`,
          remedy: `Add a line ${key},value above the table.`,
        });
    const [latitudeDeg, longitudeDeg] = ['latitude_deg', 'longitude_deg'].map((key) => {
      const value = this.values.get(key);
      return value ? this.reader.number(value.text, { line: value.line, column: key }) : null;
    });
    const elevationM = this.number('elevation_m', LIMITS.elevationM);
    const zoneH = this.number('zone_h', LIMITS.zoneH);
    const kind = this.text('kind');
    if (kind !== null && kind !== 'means' && kind !== 'normals')
      faults.add({
        line: this.lineOf('kind'),
        column: 'kind',
        code: 'out-of-range',
        message: `kind is "${shown(kind)}"`,
        remedy: 'Write means or, for official 30-year normals, normals.',
      });
    if (typeof latitudeDeg !== 'number' || typeof longitudeDeg !== 'number') return null;
    const at = coordinatesOf({ latitudeDeg, longitudeDeg }, this.lineOf('latitude_deg'), this.context);
    if (!at || faults.count > before) return null;
    return { stationId: this.tidy('station_id', 40), stationName: this.tidy('name', 120) ?? '', country: this.tidy('country', 80), ...at, elevationM, zoneH };
  }

  private tidy(key: string, most: number): string | null {
    const text = this.text(key);
    return text === null ? null : tidyName(text, most);
  }

  source(kind: FileSource['kind']): FileSource {
    return {
      formatId: this.formatId,
      variant: this.written,
      publisher: this.tidy('publisher', 120) ?? 'the sender',
      period: this.tidy('period', 40),
      kind,
      licenceNote: this.tidy('licence_note', 200) ?? 'No terms are given in the file.',
      credit: this.tidy('credit', 200) ?? '',
      statements: [],
    };
  }
}

/** Faults columns that are not documented and a figure that has two columns, each with its unit. */
export const judgeColumns = <F extends string>(
  found: readonly string[],
  known: readonly OwnColumn<F>[],
  keys: readonly string[],
  x: { line: number; context: ParserContext },
): void => {
  const { faults } = x.context;
  for (const name of found)
    if (!keys.includes(name) && !known.some((c) => c.name === name))
      faults.add({
        line: x.line,
        column: shown(name),
        code: 'unknown-column',
        message: `"${shown(name)}" is no column of this form`,
        remedy: `Columns are ${[...keys, ...known.map((c) => c.name)].join(', ')}.`,
      });
  for (const column of known)
    if (found.includes(column.name) && known.some((c) => c !== column && c.figure === column.figure && found.includes(c.name)))
      faults.add({
        line: x.line,
        column: column.name,
        code: 'duplicate-column',
        message: `${column.name} stands beside a column of the same figure in another unit`,
        remedy: 'Keep one of the two.',
      });
};

export const plainNumber = (raw: string): number => numberOf(raw) ?? Number.NaN;
