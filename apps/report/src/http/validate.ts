import { FormatRegistry } from '@sinclair/typebox';
import { TypeCompiler } from '@sinclair/typebox/compiler';
import { DocumentRequestSchema, type DocumentRequest } from '@lathwork/model';

const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/i;
const DATE = /^(\d{4})-(\d{2})-(\d{2})$/;

function isDate(text: string): boolean {
  const found = DATE.exec(text);
  if (found === null) return false;
  const [year, month, day] = [Number(found[1]), Number(found[2]), Number(found[3])];
  const date = new Date(Date.UTC(year, month - 1, day));
  return date.getUTCFullYear() === year && date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
}

FormatRegistry.Set('uuid', (text) => UUID.test(text));
FormatRegistry.Set('date', isDate);

const compiled = TypeCompiler.Compile(DocumentRequestSchema);

export interface Fault {
  at: string;
  problem: string;
}

const MAX_FAULTS = 10;

export type Checked = { ok: true; request: DocumentRequest } | { ok: false; faults: Fault[] };

/** The body against the contract of the model library; unknown fields are faults too. */
export function checkRequest(body: unknown): Checked {
  if (compiled.Check(body)) return { ok: true, request: body };
  const faults: Fault[] = [];
  for (const error of compiled.Errors(body)) {
    faults.push({ at: error.path === '' ? '/' : error.path, problem: error.message });
    if (faults.length >= MAX_FAULTS) break;
  }
  return { ok: false, faults };
}
