import { createHash } from 'node:crypto';
import { ExportGardenTask } from '../../apps/api/src/domains/transfer/garden-exports.jobs.js';
import { readArchive } from '../../apps/api/src/platform/uploads/archive.js';
import type { TestApi } from './api-app.js';
import { zipOf } from './archives.js';
import type { HttpClient } from './http-client.js';
import { asAdmin } from './people.js';
import { sampleResult } from './sample-result.js';
import { sampleInputs } from './sample-inputs.js';

/** Bytes of an answer that is no JSON. */
export const bytesOf = async (http: HttpClient, path: string): Promise<{ status: number; bytes: Buffer }> => {
  const answer = await http
    .get(path)
    .ok(() => true)
    .buffer(true)
    .parse((stream, done) => {
      const chunks: Buffer[] = [];
      stream.on('data', (chunk: Buffer) => chunks.push(chunk)).on('end', () => done(null, Buffer.concat(chunks)));
    });
  return { status: answer.status, bytes: answer.body as Buffer };
};

/** Asks for an export and lets it be packed at once; gives its id. */
export const packed = async (api: TestApi, gardenId: string, http: HttpClient, withFiles = true): Promise<string> => {
  const asked = await http.post('/v1/exports', { withFiles });
  if (asked.status !== 202) throw new Error(`export: ${asked.status} ${asked.text}`);
  const { id } = asked.body as { id: string };
  await api.get(ExportGardenTask).run({ gardenId, id }, new AbortController().signal, () => undefined);
  return id;
};

export const exported = async (api: TestApi, gardenId: string, http: HttpClient, withFiles = true): Promise<Buffer> =>
  (await bytesOf(http, `/v1/exports/${await packed(api, gardenId, http, withFiles)}/file`)).bytes;

export const filesOf = async (zip: Buffer): Promise<Map<string, string>> =>
  new Map((await readArchive(zip)).map(({ name, bytes }) => [name, bytes.toString('utf8')]));

export const imported = (http: HttpClient, zip: Buffer) => http.request('post', '/v1/imports').set('Content-Type', 'application/zip').send(zip);

const UUID = /[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}/g;

/** What is compared of a packed garden: its JSON and its tables, with ids numbered by where they first appear. */
export const normalised = async (zip: Buffer): Promise<Record<string, string>> => {
  const files = await filesOf(zip);
  const numbers = new Map<string, string>();
  const number = (id: string): string => {
    if (!numbers.has(id)) numbers.set(id, `id-${numbers.size}`);
    return numbers.get(id) ?? '';
  };
  const names = ['garden.json', ...[...files.keys()].filter((name) => name.startsWith('tables/')).sort()];
  return Object.fromEntries(names.map((name) => [name, (files.get(name) ?? '').replaceAll(UUID, number)]));
};

/** Plans as if they had been computed: with the hand-made result of the report's tests. Nothing here depends on figures. */
export const computeByHand = async (api: TestApi, planIds: readonly string[]): Promise<void> => {
  const result = JSON.stringify(sampleResult(sampleInputs()));
  for (const id of planIds) {
    await asAdmin(api, `UPDATE plan_revisions SET state = 'ready', finished_at = now() WHERE id = $1`, [id]);
    await asAdmin(
      api,
      `INSERT INTO plan_results (garden_id, plan_id, schema_version, engine_version, result, timings, attempt)
       SELECT garden_id, id, ($2::jsonb->>'schemaVersion')::int, $2::jsonb->>'engineVersion', $2::jsonb || jsonb_build_object('planId', id), '{}', 1 FROM plan_revisions WHERE id = $1`,
      [id, result],
    );
  }
};

/** The archive with some files changed, and the list in it made to fit. */
export const changed = async (zip: Buffer, change: (files: Map<string, string>) => void): Promise<Buffer> => {
  const packedFiles = await readArchive(zip);
  const isBytes = (name: string): boolean => /\.(jpg|pdf)$/.test(name);
  const files = new Map(packedFiles.filter(({ name }) => !isBytes(name)).map(({ name, bytes }) => [name, bytes.toString('utf8')]));
  change(files);
  const all: [string, string | Buffer][] = [
    ...files,
    ...packedFiles.filter(({ name }) => isBytes(name)).map(({ name, bytes }): [string, Buffer] => [name, bytes]),
  ];
  const manifest = JSON.parse(files.get('manifest.json') ?? '{}') as { files: unknown };
  const rest = all.filter(([name]) => name !== 'manifest.json');
  manifest.files = rest.map(([name, text]) => ({ name, byteCount: Buffer.byteLength(text), sha256: createHash('sha256').update(text).digest('hex') }));
  return zipOf([['manifest.json', JSON.stringify(manifest)], ...rest]);
};
