import { celsiusOfFahrenheit, kelvinsOfFahrenheit, numberOf, rounded } from './csv.js';
import { shown } from './faults.js';
import { FieldReader, LIMITS, type Limits, type ParserContext } from './parser.js';
import type { Table } from './table.js';

const INCH_MM = 25.4;

/** Measurement flags that mean "no value"; X means "not zero, but rounds to zero". */
const NO_VALUE_FLAGS = new Set(['M', 'V', 'Y', 'Z']);
const MEASUREMENT_FLAGS = new Set(['', 'X', ...NO_VALUE_FLAGS]);
/** S standard, R representative, P provisional, E estimated; C and Q stand in the layout of 1981-2010 (complete, quasi-normal). */
const COMPLETENESS_FLAGS = new Set(['', 'S', 'R', 'P', 'E', 'C', 'Q']);
const TRACE = -7777;
const NO_VALUE_CODES = new Set([-9999, -8888, -6666, -5555]);

export type Layout = '1991-2020' | '1981-2010';

/** Values of one row with flags and missing codes already honoured. */
export class NceiRow {
  private readonly reader: FieldReader;

  constructor(
    private readonly table: Table,
    private readonly fields: readonly string[],
    readonly line: number,
    readonly layout: Layout,
    private readonly context: ParserContext,
  ) {
    this.reader = new FieldReader(context.faults);
  }

  text(column: string): string {
    return this.table.field(this.fields, column);
  }

  years(variable: string): number | null {
    return numberOf(this.text(`years_${variable}`));
  }

  completeness(variable: string): string {
    return this.layout === '1981-2010' ? this.text(`${variable}_ATTRIBUTES`) : this.text(`comp_flag_${variable}`);
  }

  measurement(variable: string): string {
    return this.layout === '1981-2010' ? '' : this.text(`meas_flag_${variable}`);
  }

  /** False where a flag says that there is no value; a flag that is not known is a fault. */
  flagged(variable: string): 'value' | 'none' | 'trace' {
    const flags: readonly (readonly [string, string, ReadonlySet<string>])[] = [
      ['meas_flag', this.measurement(variable), MEASUREMENT_FLAGS],
      ['comp_flag', this.completeness(variable), COMPLETENESS_FLAGS],
    ];
    for (const [name, flag, known] of flags)
      if (!known.has(flag))
        this.context.faults.add({
          line: this.line,
          column: `${name}_${variable}`,
          code: 'unknown-flag',
          message: `the flag "${shown(flag, 8)}" is not one of the publisher's`,
          remedy: 'Send the file as it was published.',
        });
    const flag = this.measurement(variable);
    return NO_VALUE_FLAGS.has(flag) ? 'none' : flag === 'X' ? 'trace' : 'value';
  }

  /** The figure as published (decimals restored), null where there is none. */
  value(variable: string, tenthsFactor: number): number | null {
    const raw = this.text(variable);
    if (raw === '') return null;
    const flag = this.flagged(variable);
    const number = this.reader.number(raw, { line: this.line, column: variable });
    if (number === null || flag === 'none' || NO_VALUE_CODES.has(number)) return null;
    if (flag === 'trace' || number === TRACE) {
      this.context.remarks.add('trace-as-zero', 'amounts over nothing that the publisher rounds to zero', { line: this.line });
      return 0;
    }
    if (this.completeness(variable) === 'P' || this.completeness(variable) === 'E')
      this.context.remarks.add('few-years-behind', 'figures flagged provisional or estimated: fewer years than a standard normal asks for', {
        line: this.line,
      });
    if (this.layout === '1981-2010' && raw.includes('.')) {
      this.context.faults.add({
        line: this.line,
        column: variable,
        code: 'unknown-unit',
        message: `${variable} is ${shown(raw)}: this layout has whole tenths or hundredths, without a decimal point`,
        remedy: 'Download the station again as by-station CSV.',
      });
      return null;
    }
    return this.layout === '1981-2010' ? number / tenthsFactor : number;
  }

  celsius(variable: string, limits: Limits): number | null {
    const value = this.value(variable, 10);
    const inCelsius = this.context.options.answers?.temperatureUnit === 'celsius';
    return this.reader.within(value === null ? null : inCelsius ? rounded(value, 2) : celsiusOfFahrenheit(value), limits, {
      line: this.line,
      column: variable,
    });
  }

  kelvins(variable: string): number | null {
    const value = this.value(variable, 10);
    return this.reader.within(value === null ? null : kelvinsOfFahrenheit(value), LIMITS.spreadK, { line: this.line, column: variable });
  }

  millimetres(variable: string, perInch: number, limits: Limits): number | null {
    const value = this.value(variable, perInch);
    return this.reader.within(value === null ? null : rounded(value * INCH_MM, 2), limits, { line: this.line, column: variable });
  }

  days(variable: string, limits: Limits): number | null {
    return this.reader.within(this.value(variable, 10), limits, { line: this.line, column: variable });
  }
}
