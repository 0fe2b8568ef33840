import { CATALOGUE, type ProblemKey } from './catalogue.js';

/** What is wrong with one field, and where it stands. */
export interface FieldFault {
  /** JSON Pointer into the body; for a parameter its name after a slash. */
  pointer: string;
  code: string;
  detail: string;
  /** Where the value came from when it was not the body. */
  in?: 'query' | 'path' | 'header';
  unit?: string;
  allowed?: string;
  remedy?: string;
}

export type ProblemParams = Readonly<Record<string, string | number>>;

/** A problem as it is sent and as it is stored on a failed job's row (RFC 9457). */
export interface ProblemBody {
  type: string;
  title: string;
  status: number;
  detail: string;
  remedy: string;
  errors?: FieldFault[];
  requestId?: string;
  [more: string]: unknown;
}

export const FAULT_LIMIT = 50;

/** A refusal from the catalogue. Throw it with `fail`; the filter turns it into an answer. */
export class Problem extends Error {
  constructor(
    readonly key: ProblemKey,
    readonly params: ProblemParams = {},
    readonly faults: readonly FieldFault[] = [],
    readonly headers: Readonly<Record<string, string>> = {},
    /** Further members of the answer, such as who holds a thing and what else is free. */
    readonly more: Readonly<Record<string, unknown>> = {},
  ) {
    super(key);
  }

  get status(): number {
    return CATALOGUE[this.key].status;
  }

  toBody(): ProblemBody {
    const { title, status, detail, remedy } = CATALOGUE[this.key];
    const filled = detail.replaceAll(/\{(\w+)\}/g, (_whole, name: string) => String(this.params[name] ?? '?'));
    return {
      type: `/v1/problems/${this.key}`,
      title,
      status,
      detail: filled,
      remedy,
      ...this.more,
      ...(this.faults.length > 0 ? { errors: this.faults.slice(0, FAULT_LIMIT) } : {}),
    };
  }
}

/** Refuses with a key of the catalogue. */
export const fail = (key: ProblemKey, params: ProblemParams = {}, faults: readonly FieldFault[] = []): never => {
  throw new Problem(key, params, faults);
};
