import { createRequire } from 'node:module';
import type { Readable } from 'node:stream';
import { buffer } from 'node:stream/consumers';

interface ZipWriter {
  outputStream: Readable;
  addBuffer(content: Buffer, name: string, options: { compress: boolean; mtime: Date; mode: number }): void;
  end(): void;
}

// The writer comes without types of its own.
const { ZipFile } = createRequire(import.meta.url)('yazl') as { ZipFile: new () => ZipWriter };

export interface PackedFile {
  name: string;
  bytes: Buffer;
}

/** Pictures and PDFs are packed already. */
const isPacked = (name: string): boolean => /\.(jpg|pdf)$/.test(name);

/** A ZIP of these files. Two of the same contents are alike to the last byte: no file has a time of its own. */
export const zipOf = (files: readonly PackedFile[]): Promise<Buffer> => {
  const zip = new ZipFile();
  for (const { name, bytes } of files) zip.addBuffer(bytes, name, { compress: !isPacked(name), mtime: new Date('2000-01-01T00:00:00Z'), mode: 0o100644 });
  zip.end();
  return buffer(zip.outputStream);
};
