import createFetchClient, { type Client as FetchClient, type Middleware } from 'openapi-fetch';
import type { Answer, BodyOf, Call, FilePath, Init, InitArg, ItemOf, LooseInit, PagedPath, PageOf, PatchPath, PathParams, PathsWith } from './call-types.js';
import { ConnectionError, FailedError, ProblemError } from './errors.js';
import { jobEventsOf, type JobEvent, type OpenStream } from './events.js';
import { CREATING } from './generated/creating.js';
import type { paths } from './generated/types.js';
import { itemsOf, pagesOf } from './pages.js';
import type { Plan, PlanDocument, Schemas } from './schemas.js';
import { RETRY_RULES, sendWith, SURROUNDINGS, type RetryRules, type Surroundings } from './send.js';
import { waitUntil, type WaitOptions } from './wait.js';

/** Who asks. A key belongs to one garden; a person names the garden, and may work in several. */
export interface Credentials {
  /** A garden's key, `lw_...`, or the token of whoever runs the server. */
  key?: string;
  /** The session of a person, `lws_...`. */
  session?: string;
  /** The garden a person works in: its id. Not needed with a key. */
  garden?: string;
}

export interface ClientOptions extends Credentials {
  /** Where the API is, for example `https://plans.example.org`. */
  baseUrl: string;
  /** Used in place of the fetch of the machine. */
  fetch?: (request: Request) => Promise<Response>;
  retry?: Partial<RetryRules>;
  /** Sleep, chance and clock, for tests. */
  surroundings?: Partial<Surroundings>;
}

/** A merge patch (RFC 7396), or a function that makes one from the record as it is now. */
export type Change<P extends PatchPath> = BodyOf<P, 'patch'> | ((now: Answer<P, 'get'>) => BodyOf<P, 'patch'>);

/**
 * The API, typed by its document. Every method throws `ProblemError` for a refusal and `ConnectionError` when no
 * answer came; what may safely be sent again is sent again first (see `sendWith`). Creating requests carry an
 * Idempotency-Key of their own, so that a repeat makes nothing twice; give your own key in `params.header` to make
 * a repeat safe across restarts of your program.
 */
export interface LathworkClient {
  get: Call<'get'>;
  post: Call<'post'>;
  put: Call<'put'>;
  patch: Call<'patch'>;
  delete: Call<'delete'>;
  /** A file, as bytes. To send one, give a Blob with its media type as `body`. */
  bytes<P extends FilePath>(path: P, ...init: InitArg<Init<P, 'get'>>): Promise<Uint8Array>;
  /** A file that is text: a table, a calendar. */
  text<P extends FilePath>(path: P, ...init: InitArg<Init<P, 'get'>>): Promise<string>;
  /** The client underneath, for those who need the headers of an answer: `{ data, response }`. It throws all the same. */
  readonly http: FetchClient<paths>;
  /** The same API with other credentials; those that are not named are kept, `undefined` drops one. */
  as(credentials: { [K in keyof Credentials]?: Credentials[K] | undefined }): LathworkClient;

  /** A list, page by page, from the first to the last. */
  pages<P extends PagedPath>(path: P, ...init: InitArg<Init<P, 'get'>>): AsyncGenerator<PageOf<P>, void, undefined>;
  /** A list, one item after the other; pages are fetched as they are needed. */
  items<P extends PagedPath>(path: P, ...init: InitArg<Init<P, 'get'>>): AsyncGenerator<ItemOf<P>, void, undefined>;

  /** The ETag of a record, for an operation that wants If-Match. */
  etag<P extends PathsWith<'get'>>(path: P, params: PathParams<P, 'get'>): Promise<string>;
  /**
   * Reads a record, changes it by a merge patch with If-Match, and gives it as it is then. When somebody else was
   * quicker, a function is asked once more with the newer record; a fixed change is not sent over what it has not seen.
   * @throws ProblemError `version-stale` (412) when it was changed meanwhile
   */
  update<P extends PatchPath>(path: P, params: PathParams<P, 'get'>, change: Change<P>): Promise<Answer<P, 'patch'>>;

  /** Asks for a plan and waits until it is computed. */
  makePlan(request: Schemas['PlanRequest'], options?: WaitOptions<Plan>): Promise<Plan>;
  /**
   * Waits until a plan is computed.
   * @throws FailedError when it could not be computed; NotReadyError after `limitMs`
   */
  waitForPlan(plan: string | Plan, options?: WaitOptions<Plan>): Promise<Plan>;
  /** Asks for a document and waits until it is printed. */
  makeDocument(request: Schemas['PlanDocumentRequest'], options?: WaitOptions<PlanDocument>): Promise<PlanDocument>;
  /**
   * Waits until a document is printed.
   * @throws FailedError when it could not be printed; NotReadyError after `limitMs`
   */
  waitForDocument(document: string | PlanDocument, options?: WaitOptions<PlanDocument>): Promise<PlanDocument>;
  /** The PDF of a printed document. */
  documentFile(id: string): Promise<Uint8Array>;
  /** How far a job is, event by event to its end. The job of a plan or document has the same id. A broken stream is taken up again. */
  jobEvents(id: string, options?: { signal?: AbortSignal }): AsyncGenerator<JobEvent, void, undefined>;
}

type LooseCall = (path: string, init?: LooseInit) => Promise<{ data?: unknown; response: Response }>;

type LooseGet = (path: string, init?: LooseInit) => Promise<unknown>;

const WAIT_AT_CREATION = { header: { Prefer: 'wait=10' } } as const;

const credentialsOf = ({ key, session, garden }: Credentials): Credentials => ({
  ...(key === undefined ? {} : { key }),
  ...(session === undefined ? {} : { session }),
  ...(garden === undefined ? {} : { garden }),
});

/** A file goes as it is, everything else as JSON. */
const bodySerializer = (body: unknown): Blob | string => (body instanceof Blob ? body : JSON.stringify(body));

/** A file says itself what it is. */
const ofItsType = (init: LooseInit | undefined): LooseInit | undefined =>
  init?.body instanceof Blob ? { ...init, headers: { 'content-type': init.body.type, ...init.headers } } : init;

const askedBy = (request: Request) => ({ method: request.method, path: new URL(request.url).pathname });

/** Puts the credentials, the Idempotency-Key and the media types on each request, and turns refusals into errors. */
const manners = (credentials: Credentials, around: Surroundings): Middleware => ({
  onRequest({ request, schemaPath }) {
    const bearer = credentials.session ?? credentials.key;
    const { headers } = request;
    const put = (name: string, value: string | undefined): void => {
      if (value !== undefined && !headers.has(name)) headers.set(name, value);
    };
    put('authorization', bearer === undefined ? undefined : `Bearer ${bearer}`);
    put('lathwork-garden', credentials.garden);
    put('accept', '*/*');
    if (CREATING.has(`${request.method} ${schemaPath}`)) put('idempotency-key', around.newKey());
    if (request.method === 'PATCH' && headers.get('content-type') === 'application/json') headers.set('content-type', 'application/merge-patch+json');
    return request;
  },
  async onResponse({ request, response }) {
    if (response.status >= 400) throw new ProblemError(askedBy(request), response, await response.text());
  },
});

const isIn = (states: readonly string[]) => (record: { state: string }) => !states.includes(record.state);

/** Everything the helpers stand on. */
interface Base {
  http: FetchClient<paths>;
  around: Surroundings;
  rules: RetryRules;
}

/** Streams are opened with one attempt: whoever waits for them has another way, or counts the attempts itself. */
const eventsOf = ({ http, around, rules }: Base): LathworkClient['jobEvents'] => {
  const fetchOnce = sendWith(around, { ...rules, attempts: 1 });
  const get = http.GET as unknown as (path: string, init: object) => Promise<{ data?: ReadableStream<Uint8Array> | null }>;
  return (id, options = {}) => {
    const signal = options.signal ?? null;
    const open: OpenStream = async (lastEventId) => {
      const headers = { accept: 'text/event-stream', ...(lastEventId === null ? {} : { 'last-event-id': lastEventId }) };
      const { data } = await get('/v1/jobs/{id}/events', { params: { path: { id } }, headers, parseAs: 'stream', fetch: fetchOnce, signal });
      return data ?? null;
    };
    return jobEventsOf(id, open, around, rules, signal);
  };
};

/** Helpers that stand on the plain calls. */
const helpers = (base: Base) => {
  const { http, around } = base;
  const loose = (name: 'GET' | 'PATCH') => http[name] as unknown as LooseCall;
  const jobEvents = eventsOf(base);
  const readEtag = async (path: string, params: object): Promise<{ etag: string; data: unknown }> => {
    const { data, response } = await loose('GET')(path, { params: { path: params } });
    const etag = response.headers.get('etag');
    if (etag === null) throw new Error(`GET ${path} gives no ETag: it cannot be changed by If-Match`);
    return { etag, data };
  };
  const waited = async <T extends { id: string; state: string; problem: unknown }>(
    what: string,
    record: string | T,
    busy: readonly string[],
    options: WaitOptions<T>,
  ): Promise<T> => {
    const [id, known] = typeof record === 'string' ? [record, undefined] : [record.id, record];
    const read = async (signal: AbortSignal): Promise<T> => (await loose('GET')(`/v1/${what}s/{id}`, { params: { path: { id } }, signal })).data as T;
    const events = (signal: AbortSignal): AsyncIterable<JobEvent> => jobEvents(id, { signal });
    const last = await waitUntil(around, { what, id, read, events, isDone: isIn(busy), known }, options);
    if (last.state !== 'ready') throw new FailedError(what, id, last.problem as Record<string, unknown> | null);
    return last;
  };
  return { loose, readEtag, waited, jobEvents };
};

type Work = ReturnType<typeof helpers>;

const planWork = (http: FetchClient<paths>, { waited }: Work): Pick<LathworkClient, 'makePlan' | 'waitForPlan'> => {
  const waitForPlan: LathworkClient['waitForPlan'] = (plan, options = {}) => waited('plan', plan, ['computing'], options);
  return {
    waitForPlan,
    async makePlan(body, options = {}) {
      const { data } = await http.POST('/v1/plans', { body, params: WAIT_AT_CREATION, signal: options.signal ?? null });
      return waitForPlan(data as Plan, options);
    },
  };
};

const documentWork = (http: FetchClient<paths>, { waited }: Work): Pick<LathworkClient, 'makeDocument' | 'waitForDocument' | 'documentFile'> => {
  const waitForDocument: LathworkClient['waitForDocument'] = (document, options = {}) => waited('document', document, ['queued', 'rendering'], options);
  return {
    waitForDocument,
    async makeDocument(body, options = {}) {
      const { data } = await http.POST('/v1/documents', { body, params: WAIT_AT_CREATION, signal: options.signal ?? null });
      return waitForDocument(data as PlanDocument, options);
    },
    documentFile: (id) => bytesOf(dataOf(http.GET as unknown as LooseCall, 'GET'), '/v1/documents/{id}/file', { params: { path: { id } } }),
  };
};

const recordWork = ({ loose, readEtag }: Work): Pick<LathworkClient, 'etag' | 'update'> => ({
  etag: async (path, params) => (await readEtag(path, params as object)).etag,
  async update(path, params, change) {
    const tryOnce = async (): Promise<unknown> => {
      const { etag, data } = await readEtag(path, params as object);
      const body = typeof change === 'function' ? (change as (now: unknown) => unknown)(data) : change;
      return (await loose('PATCH')(path, { params: { path: params as object, header: { 'If-Match': etag } }, body })).data;
    };
    const again = (error: unknown): Promise<unknown> => {
      if (typeof change === 'function' && error instanceof ProblemError && error.status === 412) return tryOnce();
      throw error;
    };
    return (await tryOnce().catch(again)) as never;
  },
});

/** An answer that breaks off while it is read is no answer. */
const dataOf =
  (call: LooseCall, method: string) =>
  async (path: string, init?: LooseInit): Promise<unknown> => {
    try {
      return (await call(path, ofItsType(init))).data;
    } catch (error) {
      const ours = error instanceof ProblemError || error instanceof ConnectionError || init?.signal?.aborted === true;
      throw ours ? error : new ConnectionError({ method, path }, 1, error);
    }
  };

const bytesOf = async (get: LooseGet, path: string, init?: LooseInit): Promise<Uint8Array> =>
  new Uint8Array((await get(path, { ...init, parseAs: 'arrayBuffer' })) as ArrayBuffer);

/**
 * A client of the planning API.
 *
 *     const api = createClient({ baseUrl: 'https://plans.example.org', key: 'lw_...' });
 *     const plan = await api.makePlan({ buildId });
 */
export const createClient = (options: ClientOptions): LathworkClient => {
  const around: Surroundings = { ...SURROUNDINGS, ...options.surroundings, ...(options.fetch ? { fetch: options.fetch } : {}) };
  const rules: RetryRules = { ...RETRY_RULES, ...options.retry };
  const send = sendWith(around, rules);
  const http = createFetchClient<paths>({ baseUrl: options.baseUrl, fetch: send, bodySerializer });
  http.use(manners(credentialsOf(options), around));
  const work = helpers({ http, around, rules });
  const call = <N extends 'GET' | 'POST' | 'PUT' | 'PATCH' | 'DELETE'>(name: N) => dataOf(http[name] as unknown as LooseCall, name) as never;
  const get = dataOf(http.GET as unknown as LooseCall, 'GET');
  return {
    get: call('GET'),
    post: call('POST'),
    put: call('PUT'),
    patch: call('PATCH'),
    delete: call('DELETE'),
    bytes: (path, ...[init]) => bytesOf(get, path, init as LooseInit | undefined),
    text: async (path, ...[init]) => ((await get(path, { ...(init as LooseInit | undefined), parseAs: 'text' })) ?? '') as string,
    http,
    as: (credentials) => {
      const { key: _key, session: _session, garden: _garden, ...rest } = options;
      return createClient({ ...rest, ...credentialsOf({ ...credentialsOf(options), ...credentials } as Credentials) });
    },
    pages: (path, ...[init]) => pagesOf(get, path, init as LooseInit | undefined) as never,
    items: (path, ...[init]) => itemsOf(get, path, init as LooseInit | undefined) as never,
    ...recordWork(work),
    ...planWork(http, work),
    ...documentWork(http, work),
    jobEvents: work.jobEvents,
  };
};
