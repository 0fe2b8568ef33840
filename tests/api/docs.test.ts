import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { html, prose } from '../../apps/api/src/platform/docs/html.js';
import { PublishedDocument } from '../../apps/api/src/platform/http/docs.controller.js';
import { CATALOGUE, type ProblemKey } from '../../apps/api/src/platform/problems/catalogue.js';
import { startApi, type TestApi } from '../support/api-app.js';
import { contractOf, isJson, type Contract, type Json } from '../support/contract.js';

// The pages for people: complete, true to the document, every link leads somewhere, and nothing is run or loaded.

const POLICY = "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'";

let api: TestApi;
let contract: Contract;
/** Every page that can be reached by links from the first, by its address. */
const pages = new Map<string, { status: number; text: string; policy: string; type: string }>();

const page = async (path: string) => {
  const { status, text, headers } = await api.anyone.get(path).set('Accept', 'text/html,application/xhtml+xml,*/*;q=0.8');
  return { status, text, policy: String(headers['content-security-policy']), type: String(headers['content-type']) };
};

const linksOf = (text: string): string[] => [...text.matchAll(/<a\b[^>]*\bhref="([^"]*)"/g)].map((match) => match[1] ?? '');
const idsOf = (text: string): string[] => [...text.matchAll(/\bid="([^"]*)"/g)].map((match) => match[1] ?? '');
const plain = (text: string): string =>
  text
    .replaceAll(/<[^>]*>/g, ' ')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&')
    .replaceAll(/\s+/g, ' ');

/** The part of a domain's page that is about one operation. */
const sectionOf = (tag: string, id: string): string => {
  const text = pages.get(`/v1/docs/${tag}`)?.text ?? '';
  const from = text.indexOf(`<section id="${id}">`);
  return from < 0 ? '' : text.slice(from, text.indexOf('</section>', from));
};

beforeAll(async () => {
  api = await startApi();
  contract = contractOf(api.get(PublishedDocument).text);
  const waiting = ['/v1/docs'];
  for (let path = waiting.pop(); path !== undefined; path = waiting.pop()) {
    if (pages.has(path)) continue;
    const found = await page(path);
    pages.set(path, found);
    if (found.type.startsWith('text/html')) waiting.push(...linksOf(found.text).flatMap((href) => (href.startsWith('/') ? [href.split('#')[0] ?? ''] : [])));
  }
}, 60_000);
afterAll(() => api.stop());

describe('the pages for people', () => {
  it('are one for all, one for each domain, one for all problems and one for each', () => {
    const tags = new Set(contract.operations.map(({ tag }) => tag));
    const wanted = ['/v1/docs', ...[...tags].map((tag) => `/v1/docs/${tag}`), '/v1/problems', ...Object.keys(CATALOGUE).map((key) => `/v1/problems/${key}`)];
    expect([...pages.keys()].filter((path) => path !== '/v1/openapi.json').sort()).toEqual(wanted.sort());
    for (const [path, { status }] of pages) expect([path, status]).toEqual([path, 200]);
  });

  it('have no link that leads nowhere, also within a page', () => {
    const broken: string[] = [];
    for (const [path, { text, type }] of pages) {
      if (!type.startsWith('text/html')) continue;
      for (const href of linksOf(text)) {
        const [there = '', mark] = href.split('#');
        const target = pages.get(there === '' ? path : there);
        if (!target || (mark !== undefined && !idsOf(target.text).includes(mark))) broken.push(`${path} -> ${href}`);
      }
      expect(idsOf(text)).toEqual([...new Set(idsOf(text))]);
    }
    expect(broken).toEqual([]);
    expect([...pages.values()].flatMap(({ text }) => linksOf(text)).length).toBeGreaterThan(1000);
  });

  it('S28: run nothing, load nothing and send nothing', () => {
    for (const [path, { text, policy, type }] of pages) {
      if (!type.startsWith('text/html')) continue;
      expect([path, policy]).toEqual([path, POLICY]);
      expect(text).not.toMatch(/<(script|link|img|iframe|form|object|embed|base|svg|video|audio|source)\b/i);
      expect(text).not.toMatch(/\s(on\w+|src|srcset|style|formaction|ping)=/i);
      expect(text).not.toMatch(/url\(|@import|javascript:/i);
      expect(linksOf(text).filter((href) => !/^[/#]/.test(href) || href.startsWith('//'))).toEqual([]);
    }
  });

  it('show each operation with its parameters, all fields of its request and answers, and its refusals', () => {
    const missing: string[] = [];
    const refusals = new Set<string>();
    for (const { id, tag, method, path, parameters, body, responses } of contract.operations) {
      const section = sectionOf(tag, id);
      const words = plain(section);
      const says = (what: string): void => {
        if (!words.includes(what)) missing.push(`${id}: ${what}`);
      };
      says(`${method.toUpperCase()} ${path}`);
      // A field stands in the first column under its place: openings[].widthM.
      const named = new Set([...section.matchAll(/<td><code>([^<]*)<\/code>/g)].map((match) => (match[1] ?? '').split('.').at(-1)?.replaceAll('[]', '')));
      const names = (what: string): void => {
        if (!named.has(what)) missing.push(`${id}: field ${what}`);
      };
      for (const { name } of parameters) names(name);
      for (const { schema } of Object.values(body ?? {})) for (const field of fieldsOf(schema)) names(field);
      for (const [status, answer] of Object.entries(responses)) {
        says(status);
        for (const { schema } of Object.values(answer.content ?? {})) if (/^2/.test(status)) for (const field of fieldsOf(schema)) names(field);
        if (/^[45]/.test(status)) {
          refusals.add(status);
          if (!section.includes(`href="/v1/problems#status-${status}"`)) missing.push(`${id}: link of ${status}`);
        }
      }
    }
    expect(missing).toEqual([]);
    expect(refusals.size).toBeGreaterThan(10);
  });

  it('show the very examples of the document', () => {
    let count = 0;
    for (const { id, tag, body, responses } of contract.operations) {
      const words = plain(sectionOf(tag, id).replaceAll(/<\/?code>/g, ''));
      const contents = [body ?? {}, ...Object.entries(responses).flatMap(([status, { content }]) => (/^2/.test(status) && content ? [content] : []))];
      for (const content of contents)
        for (const [type, { example }] of Object.entries(content)) {
          if (example === undefined || !type.endsWith('json')) continue;
          count += 1;
          // The document as it is written has its keys in order; the page has them as they were sent.
          for (const line of lines(example)) expect([id, words.includes(line)]).toEqual([id, true]);
        }
    }
    expect(count).toBeGreaterThan(80);
  });

  it('say what holds everywhere, each in a chapter with its problems', () => {
    const { text = '' } = pages.get('/v1/docs') ?? {};
    for (const id of ['signing-in', 'garden', 'keys', 'quantities', 'paging', 'etags', 'idempotency', 'refusals', 'limits', 'jobs', 'webhooks', 'deprecation'])
      expect(idsOf(text)).toContain(id);
    const words = plain(text);
    const limit = contract.of('listSites').parameters.find(({ name }) => name === 'limit')?.schema as { minimum: number; maximum: number; default: number };
    expect(words).toContain(`${limit.minimum} to ${limit.maximum}, ${limit.default} when left out`);
    for (const { path, method } of contract.operations) expect(words).toContain(`${method.toUpperCase()} ${path}`);
    const { info } = contract.document as unknown as { info: { title: string; version: string } };
    expect(words).toContain(`${info.title} ${info.version}`);
  });

  it('escape whatever is put into them', () => {
    expect(html`<p title="${'"><b>'}">${'<script>'}</p>`.text).toBe('<p title="&quot;&gt;&lt;b&gt;">&lt;script&gt;</p>');
    expect(html`${[`'`, html`<i>${'&'}</i>`, null, false, 0]}`.text).toBe('&#39;<i>&amp;</i>0');
    expect(prose('needs `<a>` & `b`').text).toBe('needs <code>&lt;a&gt;</code> &amp; <code>b</code>');
  });

  it('are not there for a domain that is not there', async () => {
    const { status, body } = await api.anyone.get('/v1/docs/nowhere').set('Accept', '*/*');
    expect([status, (body as Json)['type']]).toEqual([404, '/v1/problems/route-unknown']);
    expect((await api.anyone.get('/v1/docs/sites').set('Accept', 'image/png')).status).toBe(406);
  });
});

describe('problems', () => {
  it('A9: each has a page for people that says what happened and what to do, and the same as data', async () => {
    for (const key of Object.keys(CATALOGUE) as ProblemKey[]) {
      const { status, title, detail, remedy } = CATALOGUE[key];
      const words = plain(pages.get(`/v1/problems/${key}`)?.text ?? '').replaceAll(/ ([.,:;)])/g, '$1');
      for (const said of [String(status), title, remedy])
        expect([
          key,
          words.includes(
            plain(said)
              .replaceAll('`', ' ')
              .replaceAll(/ ([.,:;)])/g, '$1'),
          ),
        ]).toEqual([key, true]);
      const data = await api.anyone.get(`/v1/problems/${key}`).set('Accept', '*/*').expect(200);
      expect(data.body).toEqual({ type: `/v1/problems/${key}`, status, title, detail, remedy });
    }
  });

  it('give the form that is asked for, and say that it depends on what is asked', async () => {
    const forms: [string | undefined, string][] = [
      [undefined, 'application/json'],
      ['*/*', 'application/json'],
      ['application/json', 'application/json'],
      ['text/html', 'text/html'],
      ['text/html;q=0.5, application/json', 'application/json'],
      ['application/json;q=0.2, text/html;q=0.9', 'text/html'],
    ];
    for (const path of ['/v1/problems', '/v1/problems/not-found'])
      for (const [accept, type] of forms) {
        const request = api.anyone.get(path);
        const { headers } = await (accept === undefined ? request.unset('Accept') : request.set('Accept', accept));
        expect([path, accept, headers['content-type']?.split(';')[0], headers['vary']]).toEqual([path, accept, type, 'Accept']);
      }
    const refused = await api.anyone.get('/v1/problems').set('Accept', 'image/png');
    expect([refused.status, (refused.body as Json)['detail']]).toEqual([406, 'This address answers application/json, text/html only.']);
  });
});

/** The fields that a schema names, with those inside them. */
function fieldsOf(schema: unknown, inside: readonly string[] = []): string[] {
  if (!isJson(schema)) return [];
  const ref = typeof schema['$ref'] === 'string' ? (schema['$ref'].split('/').at(-1) ?? '') : '';
  if (ref) return inside.includes(ref) ? [] : fieldsOf(contract.document.components['schemas']?.[ref], [...inside, ref]);
  const parts = ['anyOf', 'oneOf', 'allOf'].flatMap((key) => (schema[key] as unknown[] | undefined) ?? []);
  const own = Object.entries((schema['properties'] as Json | undefined) ?? {}).flatMap(([name, one]) => [name, ...fieldsOf(one, inside)]);
  return [...own, ...[...parts, schema['items']].flatMap((one) => fieldsOf(one, inside))];
}

/** The single values of an example, as they are written. */
function lines(value: unknown): string[] {
  if (Array.isArray(value)) return value.flatMap(lines);
  if (!isJson(value)) return [plain(JSON.stringify(value))];
  return Object.entries(value).flatMap(([key, one]) =>
    typeof one === 'object' && one !== null ? [`"${key}":`, ...lines(one)] : [plain(`"${key}": ${JSON.stringify(one)}`)],
  );
}
