/** A question that only the sender can answer. The same file is sent again with the answer. */
export interface FileQuestion {
  /** The field of `answers` that holds the answer. */
  answer: 'temperatureUnit' | 'coordinates' | 'powerMaxMin';
  choices: readonly string[];
}

/** Why a file was not taken, at a line. `line` counts from 1; 0 is the file as a whole. */
export interface FileFault {
  line: number;
  column?: string;
  code: FaultCode;
  message: string;
  remedy: string;
  ask?: FileQuestion;
}

/** Something worth telling about a file that was taken. `count` is how often it was met, `line` where it was met first. */
export interface FileRemark {
  line: number;
  column?: string;
  code: RemarkCode;
  message: string;
  count: number;
}

/** Every code with what it means in one line; the keys are the contract with whoever words the answer. */
export const FAULT_CODES = {
  empty: 'the file holds nothing',
  'too-large': 'the file is larger than the limit',
  'line-too-long': 'a line is longer than any line of these formats',
  'not-text': 'the bytes are those of an archive, a picture, a workbook or another file that is not plain text',
  'web-page': 'the file is a web page, often an error page saved in place of the data',
  'wrong-encoding': 'the text is UTF-16',
  'not-recognised': 'no known format fits the first lines',
  'format-not-read': 'the format is known but has no importer',
  'missing-header': 'a header line that the format must have is not there',
  'missing-column': 'a column that the format must have is not there',
  'duplicate-column': 'two columns have one name',
  'unknown-column': 'a column of our own table is not one of the documented ones',
  'field-count': 'a line has too few or too many fields',
  'unclosed-quote': 'a quoted field is not closed on its line',
  'not-a-number': 'a field should be a number and is not',
  'not-a-date': 'a field should be a month, day, hour or date and is not',
  'out-of-range': 'a number lies outside what can be true',
  'unknown-unit': 'a unit is not one of those that the format uses',
  'unknown-flag': 'a flag is not one of those that the format uses',
  'not-in-order': 'dates or probabilities do not follow one another',
  'duplicate-row': 'one month or hour stands twice',
  'several-stations': 'the file holds more than one place',
  'min-over-max': 'a lowest temperature lies over the highest',
  truncated: 'the file ends before it should',
  'not-a-year': 'too many hours of the year are absent',
  'too-many-rows': 'more rows than a year has',
  'not-hourly': 'the rows are not one an hour',
  'nothing-usable': 'no figure that a plan could use is in the file',
  'not-json': 'the text is not valid JSON of the documented form',
  'maybe-fahrenheit': 'the temperatures look like degrees Fahrenheit',
  'maybe-celsius': 'the temperatures look far too cold for the place',
  'maybe-extremes': 'whether highest and lowest are daily means or extremes of the month is not stated',
  'maybe-swapped': 'latitude and longitude look interchanged',
  'wrong-hemisphere': 'the warm months are those of the other hemisphere',
  'zone-far-from-longitude': 'the time zone does not belong to the longitude',
} as const;
export type FaultCode = keyof typeof FAULT_CODES;

export const REMARK_CODES = {
  'latin-1': 'lines that were not UTF-8 were read as Latin-1',
  'missing-months': 'months without a figure stay without one',
  'missing-hours': 'hours that are absent stay without figures',
  'missing-values': 'values with the code for missing stay without a figure',
  'column-empty': 'a whole column has no figure',
  'leap-day': 'the file has a 29 February',
  'mixed-years': 'the months come from different years, as in every typical year',
  'minute-field': 'the minute field is not used: the sun was fitted instead',
  'sun-offset-unknown': 'the sun could not be fitted to the radiation',
  'humidity-over-100': 'humidity above 100 per cent was taken as 100',
  'not-believed': 'an amount that is not of one hour, or is beyond any ever measured, was left out',
  'small-negative': 'a small negative amount was taken as nothing',
  'trace-as-zero': 'an amount that the publisher rounds to nothing is zero',
  'provisional-left-out': 'provisional figures are kept in the series and left out of the means',
  estimated: 'figures that the publisher marks as estimated',
  'few-years': 'months with fewer years than asked have no mean',
  'few-years-behind': 'figures that rest on fewer years than the publisher asks for a standard normal',
  'frost-date-absent': 'a frost date is absent because the publisher gives none',
  'country-by-name': 'no country stands in the file',
  'station-number-elsewhere': 'the station number belongs to another part of the world',
  'design-conditions-left-out': 'design conditions in the header are licensed and are not kept',
  'ground-temperatures': 'ground temperatures in the header are computed means over a depth of undisturbed soil',
  'power-extremes': 'maximum and minimum of the period are not taken for mean daily ones',
  'power-rain-sum': 'a monthly sum of rain is left out unless the daily rate beside it agrees',
  'parameter-not-read': 'parameters that a plan does not use',
  'converted-from-fahrenheit': 'temperatures were converted from Fahrenheit because the sender said so',
  'coordinates-interchanged': 'latitude and longitude were interchanged because the sender said so',
} as const;
export type RemarkCode = keyof typeof REMARK_CODES;

/** Keeps the first faults in full and counts the rest. */
export class Faults {
  readonly list: FileFault[] = [];
  count = 0;
  constructor(private readonly limit: number) {}

  add(fault: FileFault): void {
    this.count++;
    if (this.list.length < this.limit) this.list.push(fault);
  }
}

/** One remark for each code and column, with a count. */
export class Remarks {
  private readonly byKey = new Map<string, FileRemark>();

  add(code: RemarkCode, message: string, at: { line?: number; column?: string; count?: number } = {}): void {
    const key = `${code} ${at.column ?? ''}`;
    const known = this.byKey.get(key);
    if (known) known.count += at.count ?? 1;
    else this.byKey.set(key, { line: at.line ?? 0, code, message, count: at.count ?? 1, ...(at.column === undefined ? {} : { column: at.column }) });
  }

  get list(): FileRemark[] {
    return [...this.byKey.values()];
  }
}

/** What a person typed or a file holds, fit to stand in a message. */
export const shown = (raw: string, most = 24): string => {
  const text = raw.replaceAll(/\p{C}/gu, '?');
  return text.length > most ? `${text.slice(0, most)}...` : text;
};
