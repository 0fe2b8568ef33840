import type { LooseInit } from './call-types.js';

interface Page {
  items: unknown[];
  next: string | null;
}

type Get = (path: string, init?: LooseInit) => Promise<unknown>;

/** Walks a list by its cursors. */
export async function* pagesOf(get: Get, path: string, init: LooseInit = {}): AsyncGenerator<Page, void, undefined> {
  let cursor: string | null = null;
  do {
    const query: object = { ...init.params?.query, ...(cursor === null ? {} : { cursor }) };
    const page = (await get(path, { ...init, params: { ...init.params, query } })) as Page;
    yield page;
    // A server that hands out the same cursor twice would keep us here for ever.
    if (page.next !== null && page.next === cursor) throw new Error(`GET ${path} gave the same cursor twice`);
    cursor = page.next;
  } while (cursor !== null);
}

export async function* itemsOf(get: Get, path: string, init?: LooseInit): AsyncGenerator<unknown, void, undefined> {
  for await (const page of pagesOf(get, path, init)) yield* page.items;
}
