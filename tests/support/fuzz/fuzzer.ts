import { randomUUID } from 'node:crypto';
import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { SCOPES } from '../../../apps/api/src/platform/access/scopes.js';
import { ROLES } from '../../../apps/api/src/platform/access/roles.js';
import { makeKey } from '../../../apps/api/src/platform/access/key.js';
import { OPERATOR_TOKEN, type TestApi } from '../api-app.js';
import { isJson, METHODS, type Contract, type Described, type Json, type Parameter } from '../contract.js';
import { jpeg } from '../pictures.js';
import { addressOf, namesIn, withRealIds, type Ids } from '../contract-world.js';
import { Findings, Judge, type Heard } from './checks.js';
import { dice, pick, spoiled, validValue, wholeSchema } from './values.js';

type Roll = () => number;
type Headings = Record<string, string>;

const KINDS = [
  'valid',
  'valid',
  'valid',
  'badBody',
  'badBody',
  'badParameter',
  'badId',
  'unknownId',
  'noHeader',
  'noAccess',
  'badMethod',
  'badAccept',
  'badType',
  'badJson',
] as const;
type Kind = (typeof KINDS)[number];

export interface FuzzOptions {
  cases: number;
  seed: number;
  only?: readonly string[];
}

export interface FuzzWorld {
  ids: Ids;
  /** A key of the garden with every scope. */
  key: string;
}

export interface FuzzReport {
  findings: Findings;
  requests: number;
  /** Operations that never answered a valid request with 2xx. */
  neverDone: string[];
  /** Operations whose addresses this world cannot fill. */
  unreached: string[];
}

interface Sent {
  path: string;
  method: string;
  headers: Headings;
  body?: string | Uint8Array;
}

const DONE = (status: number): boolean => status >= 200 && status < 300;
/** A valid request may still meet the state of things. */
const STATEFUL = new Set([403, 404, 409, 412, 422, 429]);

/** What a schema can say, it must say: a body that fits its schema is never refused for one of these. */
const SAYABLE = new Set([
  'required',
  'unknown-field',
  'wrong-type',
  'too-long',
  'too-many',
  'empty',
  'out-of-range',
  'not-a-choice',
  'wrong-length',
  'wrong-form',
  'not-an-id',
]);

const DAY = (roll: Roll): string => new Date(Date.UTC(2020, 0, 1 + Math.floor(roll() * 2000))).toISOString().slice(0, 10);

/** Values that must be known to be of use: which words are valid today, which thing is still free. */
const KNOWN: Readonly<Record<string, (roll: Roll) => Json>> = {
  giveConsent: () => ({ wordingVersion: 1 }),
  createClaim: () => ({ tag: 'RB-011', count: 1 }),
  createExchangeRate: (roll) => ({ from: 'EUR', to: pick(['USD', 'GBP', 'NZD', 'CHF'], roll), readOn: DAY(roll) }),
};

/** Things that are emptied or ended together, and stay where they are. */
const EMPTIED = new Set(['removePrivateDetails', 'endOtherSessions']);

const ENDED_STATES = new Set(['revoked', 'ended', 'cancelled', 'withdrawn']);
const ENDS = ['revokedAt', 'leftAt', 'endedAt', 'cancelledAt', 'withdrawnAt'];

const isHeader =
  (name: string) =>
  (one: Parameter): boolean =>
    one.in === 'header' && one.name.toLowerCase() === name;

/** Sends requests made from the document to the application, and holds every answer to it. */
export class Fuzzer {
  readonly findings = new Findings();
  private readonly judge: Judge;
  private readonly origin: string;
  private readonly done = new Set<string>();
  private requests = 0;
  /** Set while the example of the description is sent, by a key or by a person. */
  private shown: 'key' | 'person' | null = null;
  private person = '';
  private readonly stranger = makeKey().key;
  private readonly narrow = new Map<string, string>();

  constructor(
    private readonly api: TestApi,
    private readonly contract: Contract,
    private readonly world: FuzzWorld,
    private readonly options: FuzzOptions,
  ) {
    this.judge = new Judge(contract, this.findings);
    const address = api.server.address() as { port: number };
    this.origin = `http://127.0.0.1:${address.port}`;
  }

  async run(): Promise<FuzzReport> {
    const wanted = this.contract.operations.filter(({ id }) => !this.options.only || this.options.only.includes(id));
    const reached = wanted.filter(({ path }) => namesIn(path) !== null);
    // What takes things away comes last, so that the rest still has something to work on.
    const last = ({ method, id }: Described): number =>
      /^(erase|remove|leave|end)/.test(id) ? 3 : method === 'delete' ? 2 : /^(archive|cancel|withdraw)/.test(id) ? 1 : 0;
    for (const operation of [...reached].sort((a, b) => last(a) - last(b))) await this.operation(operation);
    return {
      findings: this.findings,
      requests: this.requests,
      neverDone: reached.filter(({ id }) => !this.done.has(id)).map(({ id }) => id),
      unreached: wanted.filter((one) => !reached.includes(one)).map(({ id }) => id),
    };
  }

  private async operation(operation: Described): Promise<void> {
    const kinds = KINDS.filter((kind) => this.applies(operation, kind));
    const cases = fc.record({ kind: fc.constantFrom(...kinds), seed: fc.nat() });
    const own = [...operation.id].reduce((sum, letter) => (Math.imul(sum, 31) + letter.charCodeAt(0)) | 0, this.options.seed);
    const drawn = fc.sample(cases, { seed: own, numRuns: Math.max(this.options.cases - new Set(kinds).size, 0) });
    const each = [...new Set(kinds)].map((kind, i) => ({ kind, seed: own + i }));
    await this.freshPerson(operation);
    // First what the description itself shows, by each credential: so that every operation is carried out in every run.
    for (const as of ['key', 'person'] as const) {
      this.shown = as;
      await this.one(operation, 'valid', dice(own));
    }
    this.shown = null;
    for (const { kind, seed } of [...each, ...drawn]) await this.one(operation, kind, dice(seed));
    if (operation.id.startsWith('archive')) await this.undoArchive(operation);
  }

  private applies({ body, path, parameters, isPublic }: Described, kind: Kind): boolean {
    const json = Object.keys(body ?? {}).some((type) => type.includes('json'));
    if (kind === 'badBody' || kind === 'badJson') return json;
    if (kind === 'badType') return body !== null;
    if (kind === 'badId') return /\{(\w*[iI]d)\}/.test(path) && !path.includes('stations');
    if (kind === 'unknownId') return path.includes('{');
    if (kind === 'badParameter') return parameters.some((one) => one.in === 'query');
    if (kind === 'noHeader') return parameters.some((one) => one.in === 'header' && one.required);
    return kind === 'noAccess' ? !isPublic : true;
  }

  // ---- who asks

  private async freshPerson({ schemes, method, id }: Described): Promise<void> {
    const ends = method === 'delete' || /^(erase|end|change|remove|leave|redeem)/.test(id);
    if (schemes.includes('sessionToken') && (ends || this.person === ''))
      this.person = (await this.api.person(this.world.ids['garden'] ?? '', [...ROLES])).token;
  }

  private credentials({ isPublic, schemes }: Described, roll: Roll): Headings {
    if (isPublic) return {};
    const asPerson = { Authorization: `Bearer ${this.person}`, 'Lathwork-Garden': this.world.ids['garden'] ?? '' };
    if (schemes.includes('operatorToken')) return { Authorization: `Bearer ${OPERATOR_TOKEN}` };
    if (!schemes.includes('gardenKey')) return asPerson;
    const isPerson = this.shown ? this.shown === 'person' : roll() < 0.5;
    return isPerson && this.person !== '' ? asPerson : { Authorization: `Bearer ${this.world.key}` };
  }

  /** A key of the garden that has one other scope only. */
  private async narrowKey(scope: string): Promise<string> {
    const other = SCOPES.find((one) => one !== scope && one.split(':')[0] !== scope.split(':')[0]);
    const known = this.narrow.get(scope) ?? (await this.api.keyOf(this.world.ids['garden'] ?? '', other ? [other] : []));
    this.narrow.set(scope, known);
    return known;
  }

  // ---- one request

  private async ask({ path, method, headers, body }: Sent): Promise<Heard> {
    this.requests += 1;
    const started = performance.now();
    const answer = await fetch(this.origin + path, {
      method: method.toUpperCase(),
      headers,
      redirect: 'manual',
      signal: AbortSignal.timeout(20_000),
      ...(body === undefined ? {} : { body: body as NonNullable<RequestInit['body']> }),
    });
    const text = await answer.text();
    let json: unknown = null;
    if ((answer.headers.get('content-type') ?? '').includes('json') && text !== '') json = JSON.parse(text) as unknown;
    return { status: answer.status, headers: answer.headers, text, json, ms: performance.now() - started };
  }

  private schemaOf(schema: Json): Json {
    return wholeSchema(this.contract, schema) as Json;
  }

  private queryOf(operation: Described, roll: Roll): URLSearchParams {
    const query = new URLSearchParams();
    for (const one of operation.parameters) {
      if (one.in !== 'query' || one.name === 'cursor' || (!one.required && roll() < 0.5)) continue;
      const value =
        one.example ??
        validValue({ type: 'object', properties: { [one.name]: this.schemaOf(one.schema) }, required: [one.name] }, this.world.ids, roll() * 1e9);
      query.set(one.name, String(isJson(value) ? value[one.name] : value));
    }
    return query;
  }

  private async validRequest(operation: Described, roll: Roll): Promise<Sent & { value?: unknown }> {
    const query = this.queryOf(operation, roll);
    const bare = addressOf(operation.path, this.world.ids);
    const path = bare + (query.size > 0 ? `?${String(query)}` : '');
    const headers: Headings = this.credentials(operation, roll);
    if (operation.parameters.some(isHeader('idempotency-key')) && roll() < 0.8) headers['Idempotency-Key'] = randomUUID();
    if (operation.parameters.some(isHeader('if-match'))) headers['If-Match'] = await this.tagOf(operation, headers);
    const [type, media] = Object.entries(operation.body ?? {})[0] ?? [];
    if (type === undefined) return { path, method: operation.method, headers };
    headers['Content-Type'] = type;
    if (!type.includes('json'))
      return {
        path,
        method: operation.method,
        headers,
        body: (this.shown || roll() < 0.6) && type === 'image/jpeg' ? await jpeg() : Uint8Array.from({ length: 200 }, () => roll() * 256),
      };
    const shown = media?.example;
    const drawn =
      (this.shown || roll() < 0.3) && shown !== undefined
        ? withRealIds(shown, this.world.ids)
        : validValue(this.schemaOf(media?.schema ?? {}), this.world.ids, roll() * 1e9);
    const own =
      isJson(drawn) && typeof drawn['name'] === 'string' && operation.method === 'post'
        ? { name: `${drawn['name'].slice(0, 80)} ${Math.floor(roll() * 1e9)}` }
        : {};
    const value = isJson(drawn) ? { ...drawn, ...own, ...KNOWN[operation.id]?.(roll) } : drawn;
    return { path, method: operation.method, headers, body: JSON.stringify(value), value };
  }

  private async tagOf(operation: Described, headers: Headings): Promise<string> {
    const whole = this.contract.operations.find(
      ({ method, path }) =>
        method === 'get' &&
        operation.path.startsWith(path) &&
        operation.path.split('/').length - path.split('/').length <= 1 &&
        (path === operation.path || /\/\w+$/.test(operation.path)),
    );
    const at = whole?.path ?? operation.path;
    return (await this.ask({ path: addressOf(at, this.world.ids), method: 'get', headers })).headers.get('etag') ?? '"1"';
  }

  private async one(operation: Described, kind: Kind, roll: Roll): Promise<void> {
    const request = await this.validRequest(operation, roll);
    const cases: Record<Kind, () => Promise<void>> = {
      valid: () => this.valid(operation, request),
      badBody: () => this.badBody(operation, request, roll),
      badParameter: () => this.badParameter(operation, request, roll),
      badId: () => this.badId(operation, request, roll),
      unknownId: () => this.refused(operation, { ...request, path: this.withIds(operation, request, () => randomUUID()) }, [404, 400], 'invalid refused'),
      noHeader: () => this.noHeader(operation, request),
      noAccess: () => this.noAccess(operation, request, roll),
      badMethod: () => this.badMethod(operation, request, roll),
      badAccept: () => this.refused(operation, { ...request, headers: { ...request.headers, Accept: 'application/x-nothing' } }, null, 'invalid refused'),
      badType: () => this.refused(operation, { ...request, headers: { ...request.headers, 'Content-Type': 'text/x-nothing' } }, null, 'invalid refused'),
      badJson: () =>
        this.refused(
          operation,
          { ...request, body: pick(['{', '{"a":1,"a":2}', '[1', 'nul', '{"__proto__":{}}', '"\\ud800"'], roll) },
          null,
          'invalid refused',
        ),
    };
    await cases[kind]();
  }

  private async heard(operation: Described, request: Sent, what: string): Promise<Heard> {
    const heard = await this.ask(request);
    this.judge.general(
      operation,
      heard,
      `${what} ${request.method.toUpperCase()} ${request.path} ${typeof request.body === 'string' ? request.body.slice(0, 500) : ''}`,
    );
    return heard;
  }

  private async refused(
    operation: Described,
    request: Sent,
    statuses: readonly number[] | null,
    check: 'invalid refused' | 'missing header refused' | 'access not ignored',
  ): Promise<void> {
    const heard = await this.heard(operation, request, 'a spoiled');
    const held = statuses ? statuses.includes(heard.status) : heard.status >= 400 && heard.status < 500;
    this.findings.expect(
      check,
      operation.id,
      held,
      () =>
        `${heard.status} to ${request.method} ${request.path} ${String(request.body ?? '').slice(0, 300)} with ${JSON.stringify(Object.keys(request.headers))}: ${heard.text.slice(0, 200)}`,
    );
  }

  private async badBody(operation: Described, request: Sent & { value?: unknown }, roll: Roll): Promise<void> {
    const [media] = Object.values(operation.body ?? {});
    const check = this.contract.check(media?.schema ?? {});
    for (let tries = 0; tries < 20; tries += 1) {
      const value = spoiled(request.value, roll);
      if (value === undefined || check(value)) continue;
      return this.refused(operation, { ...request, body: JSON.stringify(value) }, [400, 403, 404, 413, 422], 'invalid refused');
    }
  }

  private async badParameter(operation: Described, request: Sent, roll: Roll): Promise<void> {
    const one = pick(
      operation.parameters.filter(({ in: place }) => place === 'query'),
      roll,
    );
    const bad = one.name === 'cursor' ? 'AAAA' : pick(['\u0000', 'x'.repeat(3000), '-1e99', '[]', ''], roll);
    const [path, query] = request.path.split('?');
    const changed = new URLSearchParams(query);
    changed.set(one.name, bad);
    const isTaken = one.name !== 'cursor' && this.contract.check(one.schema)(bad);
    if (isTaken) return void (await this.heard(operation, { ...request, path: `${path}?${String(changed)}` }, 'an odd'));
    await this.refused(operation, { ...request, path: `${path}?${String(changed)}` }, [400, 403, 404, 422], 'invalid refused');
  }

  private withIds(operation: Described, request: Sent, id: () => string): string {
    const [, query] = request.path.split('?');
    return operation.path.replaceAll(/\{\w+\}/g, id) + (query ? `?${query}` : '');
  }

  private badId(operation: Described, request: Sent, roll: Roll): Promise<void> {
    const bad = pick(['1', 'A0000000-0000-7000-8000-000000000000', "'%20OR%20''='", '%00', '..%2f..%2fetc', 'null'], roll);
    return this.refused(operation, { ...request, path: this.withIds(operation, request, () => bad) }, [400, 404], 'invalid refused');
  }

  private noHeader(operation: Described, request: Sent): Promise<void> {
    const { 'If-Match': _left, ...headers } = request.headers;
    return this.refused(operation, { ...request, headers }, [428, 400, 403, 404, 409], 'missing header refused');
  }

  private async noAccess(operation: Described, request: Sent, roll: Roll): Promise<void> {
    const { Authorization: _key, 'Lathwork-Garden': _garden, ...headers } = request.headers;
    const withKey = (key: string): Sent => ({ ...request, headers: { ...headers, Authorization: `Bearer ${key}` } });
    const ways: readonly (() => Promise<void>)[] = [
      () => this.refused(operation, { ...request, headers }, [401], 'access not ignored'),
      () => this.refused(operation, withKey(this.stranger), [401], 'access not ignored'),
      async () => this.refused(operation, withKey(operation.scope ? await this.narrowKey(operation.scope) : this.world.key), [403], 'access not ignored'),
    ];
    // A key that is refused for its scope must not have been let in; the two that are no credential are the likelier mistake.
    await pick(ways, roll)();
  }

  private async badMethod(operation: Described, request: Sent, roll: Roll): Promise<void> {
    const documented = this.contract.operations.filter(({ path }) => path === operation.path).map(({ method }) => method.toUpperCase());
    const overlapping = this.contract.operations
      .filter(({ path }) => path !== operation.path && matches(path, request.path.split('?')[0] ?? ''))
      .map(({ method }) => method.toUpperCase());
    const others = METHODS.map((one) => one.toUpperCase()).filter((one) => !documented.includes(one) && !overlapping.includes(one));
    if (others.length === 0) return;
    const method = pick(others, roll);
    const { 'Content-Type': _type, ...headers } = request.headers;
    const heard = await this.heard(operation, { path: request.path, method, headers }, 'another method:');
    this.findings.expect('undocumented method refused', operation.id, heard.status === 405, () => `${heard.status} to ${method} ${request.path}`);
    const wanted = [...new Set([...documented, ...overlapping, ...(documented.includes('GET') || overlapping.includes('GET') ? ['HEAD'] : [])])].sort();
    const allow = (heard.headers.get('allow') ?? '').split(', ').sort();
    this.findings.expect(
      'Allow is right',
      operation.id,
      isDeepStrictEqual(allow, wanted),
      () => `${allow.join(' ')} instead of ${wanted.join(' ')} at ${operation.path}`,
    );
  }

  // ---- what a valid request must lead to

  private async valid(operation: Described, request: Sent & { value?: unknown }): Promise<void> {
    const heard = await this.heard(operation, request, 'a valid');
    this.findings.expect(
      'valid accepted',
      operation.id,
      this.isAccepted(request, heard),
      () => `${heard.status} ${codesOf(heard).join(' ')} to ${request.path} ${String(request.body ?? '').slice(0, 300)}`,
    );
    if (!DONE(heard.status)) return;
    this.done.add(operation.id);
    const { Authorization = '', 'Lathwork-Garden': garden } = request.headers;
    const headers: Headings = { Authorization, ...(garden ? { 'Lathwork-Garden': garden } : {}) };
    if (heard.status === 201) await this.readable(operation, heard, headers, request.value);
    if (operation.method === 'patch') await this.fresh(operation, heard, headers);
    if (operation.method === 'delete') await this.gone(operation, request, headers);
    if (operation.method === 'get') await this.headLikeGet(operation, request, heard);
    await this.freshPersonAfter(operation);
  }

  private isAccepted(request: Sent & { value?: unknown }, heard: Heard): boolean {
    if (DONE(heard.status) || STATEFUL.has(heard.status)) return true;
    if (request.body !== undefined && typeof request.body !== 'string') return heard.status < 500;
    // Whether a password or a code is the right one is no question of form.
    if (heard.status === 401) return isJson(request.value) && ('password' in request.value || 'code' in request.value);
    const codes = codesOf(heard);
    // What a merge patch leaves out may be missing where there was nothing to merge with.
    return heard.status === 400 && codes.length > 0 && !codes.some((code) => SAYABLE.has(code) && !(code === 'required' && request.method === 'patch'));
  }

  private async freshPersonAfter(operation: Described): Promise<void> {
    if (operation.method !== 'get') await this.freshPerson(operation);
  }

  private async readable(operation: Described, made: Heard, headers: Headings, sent: unknown): Promise<void> {
    const location = made.headers.get('location');
    if (location === null || !this.contract.operations.some(({ method, path }) => method === 'get' && matches(path, location))) return;
    // A garden is read with its own first key.
    const own = isJson(made.json) && isJson(made.json['key']) && isJson(made.json['garden']) ? made.json['key']['key'] : null;
    const read = await this.ask({ path: location, method: 'get', headers: typeof own === 'string' ? { Authorization: `Bearer ${own}` } : headers });
    this.findings.expect('created is readable', operation.id, read.status === 200, () => `${read.status} at ${location}: ${read.text.slice(0, 200)}`);
    if (!isJson(made.json) || !isJson(read.json) || !isJson(sent)) return;
    const [was, is] = [made.json, read.json];
    const differs = Object.keys(sent).filter((key) => key in was && key in is && !isDeepStrictEqual(was[key], is[key]));
    this.findings.expect(
      'created is readable',
      operation.id,
      differs.length === 0,
      () => `${differs.join(', ')} of what was made at ${location} read otherwise`,
    );
  }

  /** What a change answered is what is read afterwards, under the same tag. */
  private async fresh(operation: Described, changed: Heard, headers: Headings): Promise<void> {
    if (!this.contract.operations.some(({ method, path }) => method === 'get' && path === operation.path)) return;
    const read = await this.ask({ path: addressOf(operation.path, this.world.ids), method: 'get', headers });
    const same = read.headers.get('etag') === changed.headers.get('etag') && isDeepStrictEqual(read.json, changed.json);
    this.findings.expect(
      'created is readable',
      operation.id,
      same,
      () => `the change answered ${changed.text.slice(0, 200)}, and then was read as ${read.text.slice(0, 200)}`,
    );
  }

  private async gone(operation: Described, request: Sent, headers: Headings): Promise<void> {
    if (!this.contract.operations.some(({ method, path }) => method === 'get' && path === operation.path)) return;
    const read = await this.ask({ path: request.path, method: 'get', headers });
    const left = isJson(read.json) ? read.json : {};
    const isEnded = ENDS.some((key) => typeof left[key] === 'string') || ENDED_STATES.has(String(left['state'])) || EMPTIED.has(operation.id);
    this.findings.expect(
      'deleted is gone',
      operation.id,
      read.status === 404 || isEnded,
      () => `${read.status} at ${request.path}: ${read.text.slice(0, 200)}`,
    );
  }

  private async headLikeGet(operation: Described, request: Sent, heard: Heard): Promise<void> {
    if ((heard.headers.get('content-type') ?? '').includes('event-stream')) return;
    const head = await this.ask({ ...request, method: 'head' });
    const tagOf = (one: Heard): string => `${one.status} ${one.headers.get('content-type') ?? ''} ${one.headers.get('etag') ?? ''}`;
    // A file that is packed anew for each asking is another one every time.
    const isVolatile = tagOf(head) !== tagOf(heard) && tagOf(await this.ask(request)) !== tagOf(heard);
    this.findings.expect(
      'headers as documented',
      operation.id,
      (isVolatile || tagOf(head) === tagOf(heard)) && head.text === '',
      () => `HEAD ${request.path} says ${tagOf(head)}, GET ${tagOf(heard)}`,
    );
  }

  private async undoArchive(operation: Described): Promise<void> {
    const restore = this.contract.operations.find(({ path, method }) => method === 'post' && path === operation.path.replace(/archive$/, 'restore'));
    if (!restore) return;
    const headers = { Authorization: `Bearer ${this.world.key}` };
    await this.ask({ path: addressOf(restore.path, this.world.ids), method: 'post', headers: { ...headers, 'If-Match': await this.tagOf(restore, headers) } });
  }
}

/** The codes of the faults in a refusal. */
const codesOf = ({ json }: Heard): string[] =>
  isJson(json) && Array.isArray(json['errors']) ? (json['errors'] as { code: string }[]).map(({ code }) => code) : [];

/** Whether an address is of this template. */
const matches = (template: string, address: string): boolean =>
  new RegExp(`^${template.replaceAll('.', '\\.').replaceAll(/\{\w+\}/g, '[^/]+')}$`).test(address);
