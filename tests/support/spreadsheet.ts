import { parse } from 'csv-parse/sync';

/** A CSV file read by another library, as rows of texts by column. */
export const csvRows = (text: string): Record<string, string>[] =>
  parse(text, { columns: true, record_delimiter: '\r\n', relax_column_count: false, bom: false });
export const csvCells = (text: string): string[][] => parse(text, { columns: false, record_delimiter: '\r\n', relax_column_count: false, bom: false });
