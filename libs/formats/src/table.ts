import { fieldsOf } from './csv.js';
import { shown } from './faults.js';
import type { ParserContext } from './parser.js';

/** The header of a table and its rows, read by column name. */
export class Table {
  private at: ReadonlyMap<string, number> | null = null;
  private width = 0;

  constructor(
    private readonly context: ParserContext,
    private readonly required: readonly string[],
    private readonly fold: (name: string) => string = (name) => name,
  ) {}

  get hasHeader(): boolean {
    return this.at !== null;
  }

  has(column: string): boolean {
    return this.at?.has(column) ?? false;
  }

  get columns(): string[] {
    return [...(this.at?.keys() ?? [])];
  }

  /** False where the header cannot be used. */
  header(text: string, line: number): boolean {
    const names = this.split(text, line)?.map(this.fold);
    if (!names) return false;
    // Trailing commas of a spreadsheet make columns without a name; they are not columns.
    while (names.length > 0 && names.at(-1) === '') names.pop();
    this.width = names.length;
    const at = new Map<string, number>();
    const { faults } = this.context;
    names.forEach((name, i) => {
      if (at.has(name))
        faults.add({ line, column: shown(name), code: 'duplicate-column', message: `two columns are named ${shown(name)}`, remedy: 'Keep one of the two.' });
      at.set(name, i);
    });
    for (const column of this.required)
      if (!at.has(column))
        faults.add({
          line,
          column,
          code: 'missing-column',
          message: `there is no column ${column}`,
          remedy: 'Send the file as it was published, with its header line.',
        });
    this.at = at;
    return faults.count === 0;
  }

  /** The fields of a row, or null with a fault. Empty fields past the last column are let pass. */
  row(text: string, line: number): string[] | null {
    const fields = this.split(text, line);
    if (!fields) return null;
    while (fields.length > this.width && fields.at(-1) === '') fields.pop();
    if (fields.length === this.width) return fields;
    this.context.faults.add({
      line,
      code: 'field-count',
      message: `${fields.length} fields where the header has ${this.width}`,
      remedy: 'Look whether the line is cut off or a comma stands inside a field without quotes.',
    });
    return null;
  }

  field(fields: readonly string[], column: string): string {
    return fields[this.at?.get(column) ?? -1] ?? '';
  }

  private split(text: string, line: number): string[] | null {
    const fields = fieldsOf(text);
    if (!fields)
      this.context.faults.add({
        line,
        code: 'unclosed-quote',
        message: 'a quoted field is not closed on its line',
        remedy: 'Close the quote, or look whether the line is cut off.',
      });
    return fields;
  }
}
