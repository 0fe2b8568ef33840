import { createHash } from 'node:crypto';
import { Problem } from '../../platform/problems/problem.js';
import { readArchive, type ArchiveFile } from '../../platform/uploads/archive.js';
import { GARDEN_FORMAT, TRANSFER_SCHEMA_VERSION } from './garden-file.js';

export type Json = Record<string, unknown>;

export const refuse = (reason: string): never => {
  throw new Problem('import-refused', { reason });
};

export const isJson = (value: unknown): value is Json => typeof value === 'object' && value !== null && !Array.isArray(value);

const DEEPEST = 40;
const FORBIDDEN = ['__proto__', 'constructor', 'prototype'];

/** Keys that change what an object is, and nesting without an end, come in no honest archive. */
const mustBePlain = (value: unknown, depth = 0): void => {
  if (depth > DEEPEST) refuse(`it is nested deeper than ${DEEPEST} levels`);
  if (Array.isArray(value)) for (const one of value) mustBePlain(one, depth + 1);
  else if (isJson(value)) {
    if (Object.keys(value).some((key) => FORBIDDEN.includes(key))) refuse('it holds a key that is not taken');
    for (const one of Object.values(value)) mustBePlain(one, depth + 1);
  }
};

export interface Unpacked {
  garden: Json;
  records: Json;
  files: ReadonlyMap<string, Buffer>;
}

const parsed = (files: ReadonlyMap<string, Buffer>, name: string): Json => {
  const bytes = files.get(name);
  if (!bytes) return refuse(`it has no ${name}`);
  let value: unknown;
  try {
    value = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes)) as unknown;
  } catch {
    return refuse(`${name} is not JSON`);
  }
  mustBePlain(value);
  return isJson(value) ? value : refuse(`${name} is not an object`);
};

/** What the list in the archive says of a file must be so: who changed a file by hand is told, and a file cut short is seen. */
const mustMatch = (manifest: Json, files: ReadonlyMap<string, Buffer>): void => {
  const list = Array.isArray(manifest['files']) ? (manifest['files'] as unknown[]) : refuse('its manifest lists no files');
  const said = new Map((list as Json[]).map((one) => [isJson(one) ? String(one['name']) : '', isJson(one) ? one['sha256'] : null]));
  for (const [name, bytes] of files) {
    if (name === 'manifest.json') continue;
    if (said.get(name) !== createHash('sha256').update(bytes).digest('hex')) refuse(`${name} is not as the manifest says`);
    said.delete(name);
  }
  const [missing] = said.keys();
  if (missing !== undefined) refuse(`${missing} is missing`);
};

/** Opens a packed garden within the limits of archives, and checks that it is one. */
export const unpack = async (bytes: Buffer): Promise<Unpacked> => {
  const list: ArchiveFile[] = await readArchive(bytes);
  const files = new Map(list.map(({ name, bytes: content }) => [name, content]));
  const manifest = parsed(files, 'manifest.json');
  if (manifest['format'] !== GARDEN_FORMAT) refuse('it is not a packed garden');
  if (manifest['schemaVersion'] !== TRANSFER_SCHEMA_VERSION) refuse(`its schema version is not ${TRANSFER_SCHEMA_VERSION}`);
  mustMatch(manifest, files);
  return { garden: parsed(files, 'garden.json'), records: parsed(files, 'records.json'), files };
};
