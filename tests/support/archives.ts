import { buffer } from 'node:stream/consumers';
import { ZipFile, type EntryOptions } from 'yazl';

export type Packed = readonly [name: string, content: string | Buffer, options?: EntryOptions];

/** A ZIP of these files. */
export const zipOf = async (files: readonly Packed[]): Promise<Buffer> => {
  const zip = new ZipFile();
  for (const [name, content, options] of files) zip.addBuffer(Buffer.from(content), name, options);
  zip.end();
  return buffer(zip.outputStream);
};

/** The same archive with every name of one text replaced by another of the same length: what no honest writer would write. */
export const renamed = (zip: Buffer, from: string, to: string): Buffer => {
  if (Buffer.byteLength(from) !== Buffer.byteLength(to)) throw new Error('both names must have the same length');
  return Buffer.from(zip.toString('latin1').replaceAll(Buffer.from(from).toString('latin1'), Buffer.from(to).toString('latin1')), 'latin1');
};

/** The central directory entries changed in place: `at` is the offset within each entry. */
export const withField = (zip: Buffer, at: number, write: (entry: Buffer, index: number) => void): Buffer => {
  const copy = Buffer.from(zip);
  let index = 0;
  for (let from = copy.indexOf('PK\u0001\u0002', 0, 'latin1'); from >= 0; from = copy.indexOf('PK\u0001\u0002', from + 4, 'latin1'))
    write(copy.subarray(from + at), index++);
  return copy;
};
