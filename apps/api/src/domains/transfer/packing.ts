import { createHash } from 'node:crypto';
import { fail } from '../../platform/problems/problem.js';
import { zipOf, type PackedFile } from '../../platform/uploads/zip.js';
import { TRANSFER_SCHEMA_VERSION } from './garden-file.js';

/** As much as a file may weigh in the store. */
export const MOST_BYTES = 64 * 1_048_576;

export const jsonFile = (name: string, value: unknown): PackedFile => ({ name, bytes: Buffer.from(`${JSON.stringify(value, null, 1)}\n`) });

/** An archive with a first file that says what it is, and of every other file how long it is and what it hashes to. */
export const pack = async (format: string, about: object, files: readonly PackedFile[]): Promise<Buffer> => {
  const list = files.map(({ name, bytes }) => ({ name, byteCount: bytes.length, sha256: createHash('sha256').update(bytes).digest('hex') }));
  const zip = await zipOf([jsonFile('manifest.json', { format, schemaVersion: TRANSFER_SCHEMA_VERSION, ...about, files: list }), ...files]);
  return zip.length > MOST_BYTES ? fail('archive-too-large', { limit: MOST_BYTES }) : zip;
};
