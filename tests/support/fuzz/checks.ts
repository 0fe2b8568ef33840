import { type Contract, type Described, isJson, type Json } from '../contract.js';

/** The fourteen things that every answer is held to. */
export const CHECKS = [
  'no server error',
  'status documented',
  'content type documented',
  'headers as documented',
  'answer fits its schema',
  'invalid refused',
  'valid accepted',
  'missing header refused',
  'undocumented method refused',
  'Allow is right',
  'deleted is gone',
  'created is readable',
  'access not ignored',
  'in time',
] as const;
export type Check = (typeof CHECKS)[number];

export interface Finding {
  check: Check;
  operation: string;
  detail: string;
}

export interface Heard {
  status: number;
  headers: Headers;
  text: string;
  json: unknown;
  ms: number;
}

/** What is found, each thing once, and how often each check was made. */
export class Findings {
  readonly all: Finding[] = [];
  readonly made: Record<Check, number> = Object.fromEntries(CHECKS.map((check) => [check, 0])) as Record<Check, number>;

  expect(check: Check, operation: string, holds: boolean, detail: () => string): void {
    this.made[check] += 1;
    if (holds) return;
    const said = detail().slice(0, 700);
    const alike = (one: Finding): boolean => one.check === check && one.operation === operation && one.detail.slice(0, 60) === said.slice(0, 60);
    if (!this.all.some(alike)) this.all.push({ check, operation, detail: said });
  }
}

const TIME_LIMIT_MS = 15_000;

const headerValue = (schema: Json, value: string): unknown => (schema['type'] === 'integer' || schema['type'] === 'number' ? Number(value) : value);

/** Headers that must come wherever the document shows them; others depend on what was asked. */
const ALWAYS = new Set(['etag', 'location', 'www-authenticate', 'retry-after']);

/** What holds for every answer, whatever was asked. */
export class Judge {
  constructor(
    private readonly contract: Contract,
    private readonly findings: Findings,
  ) {}

  general(operation: Described, heard: Heard, about: string): void {
    const { id } = operation;
    const said = (): string => `${heard.status} to ${about}: ${heard.text.slice(0, 300)}`;
    this.findings.expect('no server error', id, heard.status < 500, said);
    this.findings.expect('in time', id, heard.ms < TIME_LIMIT_MS, () => `${Math.round(heard.ms)} ms for ${about}`);
    // 405 belongs to an address, not to one of its operations; 304 has no body to describe.
    const answer = operation.responses[String(heard.status)];
    this.findings.expect('status documented', id, answer !== undefined || heard.status === 405 || heard.status === 304, said);
    if (!answer || heard.text === '') return;
    const type = (heard.headers.get('content-type') ?? '').split(';')[0] ?? '';
    const media = answer.content?.[type];
    const takesAny = Object.keys(answer.content ?? {}).length === 0;
    this.findings.expect('content type documented', id, media !== undefined || takesAny, () => `${type} with ${said()}`);
    this.headers(operation, heard, said);
    if (!media?.schema || !type.includes('json')) return;
    const check = this.contract.check(media.schema);
    const value = media.schema['type'] === 'string' ? heard.text : heard.json;
    this.findings.expect('answer fits its schema', id, check(value), () => `${JSON.stringify(check.errors?.[0])} in ${said()}`);
    if (type !== 'application/problem+json') return;
    const status = isJson(heard.json) ? heard.json['status'] : null;
    this.findings.expect('answer fits its schema', id, status === heard.status, () => `the problem says ${String(status)}: ${said()}`);
  }

  private headers({ id, responses }: Described, heard: Heard, said: () => string): void {
    this.findings.expect('headers as documented', id, heard.headers.get('x-request-id') !== null, () => `no request id with ${said()}`);
    for (const [name, header] of Object.entries(responses[String(heard.status)]?.headers ?? {})) {
      const value = heard.headers.get(name);
      if (value === null) {
        const depends = heard.status === 503 || !ALWAYS.has(name.toLowerCase());
        this.findings.expect('headers as documented', id, depends, () => `no ${name} with ${said()}`);
        continue;
      }
      const schema = header['schema'] as Json;
      this.findings.expect('headers as documented', id, this.contract.check(schema)(headerValue(schema, value)), () => `${name}: ${value} with ${said()}`);
    }
  }
}
