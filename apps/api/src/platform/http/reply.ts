/** The answer of a use case: what is sent, and what is kept under an idempotency key. */
export interface Answer {
  status: number;
  body: unknown;
  /** Address of what was made, for example `/v1/sites/{id}`. */
  location?: string;
  etag?: string;
  /** The body holds something shown once, such as a new key: what is kept of it is encrypted with the caller's key. */
  secret?: boolean;
}

/** An answer on its way out. Controllers return it; the interceptor writes it, or 304 when the caller has it already. */
export class Reply {
  constructor(
    readonly answer: Omit<Answer, 'body'>,
    /** Exact text of the body, so that a replay is identical to the last byte. */
    readonly text: string,
    readonly headers: Readonly<Record<string, string>> = {},
  ) {}
}

/** One resource with its ETag. */
export const found = (body: unknown, etag: string): Reply => new Reply({ status: 200, etag }, JSON.stringify(body));

/** Any other answer. */
export const reply = (answer: Answer, headers: Readonly<Record<string, string>> = {}): Reply => new Reply(answer, JSON.stringify(answer.body), headers);
