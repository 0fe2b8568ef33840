import type { FetchResponse, MaybeOptionalInit } from 'openapi-fetch';
import type { paths } from './generated/types.js';

export type Method = 'get' | 'post' | 'put' | 'patch' | 'delete';
type AnyMedia = `${string}/${string}`;

/** The addresses that have this method. */
export type PathsWith<M extends Method> = { [P in keyof paths]: paths[P] extends { [K in M]: unknown } ? P : never }[keyof paths];

type OkContent<O> = O extends { responses: infer R }
  ? { [S in keyof R & (200 | 201 | 202)]: R[S] extends { content: infer C } ? keyof C : never }[keyof R & (200 | 201 | 202)]
  : never;

/** The addresses whose answer is JSON or nothing at all. */
export type JsonPath<M extends Method> = {
  [P in PathsWith<M>]: [OkContent<paths[P][M & keyof paths[P]]>] extends ['application/json'] ? P : never;
}[PathsWith<M>];

/** The addresses whose answer is a file: PDF, CSV, pictures, calendars. */
export type FilePath = Exclude<PathsWith<'get'>, JsonPath<'get'>>;

/** What a call may be given: parameters, body, headers and whatever fetch takes. How the answer is read is not up for choice. */
export type Init<P extends keyof paths, M extends Method> = NonNullable<MaybeOptionalInit<paths[P], M>> & { parseAs?: never };

type NeededKeys<T> = { [K in keyof T]-?: object extends Pick<T, K> ? never : K }[keyof T];

/** Parameters and body may be left out only where the operation needs none. */
export type InitArg<I> = [NeededKeys<I>] extends [never] ? [init?: I] : [init: I];

/** What a good answer carries; undefined where it has no body. */
export type Answer<P extends keyof paths, M extends Method> = paths[P] extends { [K in M]: infer O extends Record<string | number, unknown> }
  ? Extract<FetchResponse<O, object, AnyMedia>, { response: Response; data: unknown }>['data']
  : never;

/** One call: a typed address in, the body of the answer out. */
export type Call<M extends Method> = <P extends JsonPath<M>>(path: P, ...init: InitArg<Init<P, M>>) => Promise<Answer<P, M>>;

/** The path parameters of an operation; `{}` where it has none. */
export type PathParams<P extends keyof paths, M extends Method> = paths[P] extends { [K in M]: { parameters: { path: infer T } } }
  ? T
  : Readonly<Record<string, never>>;

/** The body of an operation that has one. */
export type BodyOf<P extends keyof paths, M extends Method> = paths[P] extends { [K in M]: { requestBody: { content: infer C } } } ? C[keyof C] : never;

/** The addresses that answer with one page of a list. */
export type PagedPath = {
  [P in JsonPath<'get'>]: Answer<P, 'get'> extends { items: readonly unknown[]; next: string | null } ? P : never;
}[JsonPath<'get'>];

export type ItemOf<P extends PagedPath> = Answer<P, 'get'> extends { items: readonly (infer T)[] } ? T : never;

/** One page as it came. */
export interface PageOf<P extends PagedPath> {
  items: ItemOf<P>[];
  /** Cursor of the next page; null at the end. */
  next: string | null;
}

/** The addresses of one record that can be read and changed by a merge patch. */
export type PatchPath = PathsWith<'get'> & PathsWith<'patch'>;

/** The same, untyped: what runs behind the types. */
export interface LooseInit {
  params?: { path?: object; query?: object; header?: object };
  body?: unknown;
  headers?: Record<string, string>;
  parseAs?: 'json' | 'text' | 'arrayBuffer' | 'stream';
  signal?: AbortSignal;
}
