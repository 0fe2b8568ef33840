import { fromBuffer, type Entry, type ZipFile } from 'yauzl';
import { Problem } from '../problems/problem.js';

/** How much an archive may hold, whatever it says of itself. */
export const ARCHIVE_LIMITS = { entries: 1000, totalBytes: 64 * 1_048_576, entryBytes: 32 * 1_048_576, ratio: 100, nameLength: 200 } as const;

export type ArchiveLimits = { -readonly [K in keyof typeof ARCHIVE_LIMITS]: number };

export interface ArchiveFile {
  /** Relative, with forward slashes. */
  name: string;
  bytes: Buffer;
}

const refuse = (reason: string): Problem => new Problem('archive-refused', { reason });

const FILE_KIND = 0o170000;
const PLAIN_FILE = 0o100000;
const FOLDER = 0o040000;
const STORED = 0;
const DEFLATED = 8;
// A file of a few bytes may well be packed better than a large one is allowed to be.
const RATIO_FROM = 4096;

/** Why an entry's name leads somewhere it must not; null when it is a plain path below here. */
export const nameFault = (name: string, limit: number = ARCHIVE_LIMITS.nameLength): string | null => {
  if (name === '' || name.length > limit) return 'a name in it is empty or too long';
  // eslint-disable-next-line no-control-regex -- control characters are exactly what must not get into a name
  if (/[\u0000-\u001f\u007f\\]/.test(name)) return 'a name in it holds a backslash or a control character';
  if (name.startsWith('/') || /^[a-z]:/i.test(name)) return 'a name in it begins at the root';
  const parts = name.replace(/\/$/, '').split('/');
  return parts.some((part) => part === '' || part === '.' || part === '..') ? 'a name in it leads out of its folder' : null;
};

const kindFault = (entry: Entry): string | null => {
  // The upper half is the Unix mode, where the maker was Unix; nothing else is ever made of it here.
  const kind = (entry.externalFileAttributes >>> 16) & FILE_KIND;
  if (kind !== 0 && kind !== PLAIN_FILE && kind !== FOLDER) return 'it holds a link or a device';
  if ((entry.generalPurposeBitFlag & 0x1) !== 0) return 'it is encrypted';
  return entry.compressionMethod === STORED || entry.compressionMethod === DEFLATED ? null : 'it is packed in an unusual way';
};

const sizeFault = (entry: Entry, limits: ArchiveLimits): string | null => {
  if (entry.uncompressedSize > limits.entryBytes) return `a file in it is larger than ${limits.entryBytes} bytes`;
  const bomb = entry.uncompressedSize > RATIO_FROM && entry.uncompressedSize > entry.compressedSize * limits.ratio;
  return bomb ? `a file in it is packed more than ${limits.ratio} to 1` : null;
};

interface Listed {
  entry: Entry;
  name: string;
}

/** The name as it stands in the archive. The reader would put slashes for backslashes, and hide what was meant. */
const named = (entry: Entry): Listed => {
  try {
    return { entry, name: new TextDecoder('utf-8', { fatal: true }).decode(entry.fileName as unknown as Buffer) };
  } catch {
    throw refuse('a name in it is not UTF-8');
  }
};

const listed = (zip: ZipFile, limits: ArchiveLimits): Promise<Listed[]> =>
  new Promise((resolve, reject) => {
    const entries: Listed[] = [];
    zip.on('entry', (entry: Entry) => {
      try {
        entries.push(named(entry));
      } catch (error) {
        return reject(error as Problem);
      }
      if (entries.length > limits.entries) reject(refuse(`it holds more than ${limits.entries} files`));
      else zip.readEntry();
      return undefined;
    });
    zip.on('end', () => resolve(entries));
    zip.on('error', reject);
    zip.readEntry();
  });

/** All that can be said from the table of contents, before a byte is unpacked. */
const listFault = (entries: readonly Listed[], size: number, limits: ArchiveLimits): string | null => {
  const names = new Set<string>();
  let total = 0;
  for (const { entry, name } of entries) {
    const fault = nameFault(name, limits.nameLength) ?? kindFault(entry) ?? sizeFault(entry, limits);
    if (fault) return fault;
    // Two names that one disk takes for the same file hide one behind the other.
    const plain = name.normalize('NFC').toLowerCase();
    if (names.has(plain)) return 'two files in it have the same name';
    names.add(plain);
    total += entry.uncompressedSize;
  }
  if (total > limits.totalBytes) return `it holds more than ${limits.totalBytes} bytes`;
  if (total > RATIO_FROM && total > size * limits.ratio) return `it is packed more than ${limits.ratio} to 1`;
  return overlapFault(entries);
};

/** Files that share their packed bytes make much out of little; each must lie on its own. */
const overlapFault = (entries: readonly Listed[]): string | null => {
  const HEADER = 30;
  const spans = entries.map(
    ({ entry: one }) => [one.relativeOffsetOfLocalHeader, one.relativeOffsetOfLocalHeader + HEADER + one.fileNameLength + one.compressedSize] as const,
  );
  spans.sort(([a], [b]) => a - b);
  return spans.some(([start], i) => i > 0 && start < (spans[i - 1]?.[1] ?? 0)) ? 'files in it lie on top of each other' : null;
};

const unpacked = (zip: ZipFile, entry: Entry): Promise<Buffer> =>
  new Promise((resolve, reject) => {
    zip.openReadStream(entry, (error, stream) => {
      if (error || !stream) return reject(error ?? refuse('a file in it cannot be read'));
      const chunks: Buffer[] = [];
      let size = 0;
      stream.on('data', (chunk: Buffer) => {
        size += chunk.length;
        // What it says of its size may be a lie; what comes out is counted.
        if (size > entry.uncompressedSize) stream.destroy(refuse('a file in it is larger than it says'));
        else chunks.push(chunk);
      });
      stream.on('end', () => resolve(Buffer.concat(chunks)));
      stream.on('error', reject);
      return undefined;
    });
  });

const opened = (bytes: Buffer): Promise<ZipFile> =>
  new Promise((resolve, reject) => {
    fromBuffer(bytes, { lazyEntries: true, autoClose: false, validateEntrySizes: true, decodeStrings: false }, (error, zip) =>
      error || !zip ? reject(error ?? refuse('it is not a ZIP')) : resolve(zip),
    );
  });

/** The files of a ZIP, all of them or a refusal. Folders are dropped, and nothing is ever written to a disk. */
export const readArchive = async (bytes: Buffer, wanted: Partial<ArchiveLimits> = {}): Promise<ArchiveFile[]> => {
  const limits: ArchiveLimits = { ...ARCHIVE_LIMITS, ...wanted };
  try {
    const zip = await opened(bytes);
    if (zip.entryCount > limits.entries) throw refuse(`it holds more than ${limits.entries} files`);
    const entries = await listed(zip, limits);
    const fault = listFault(entries, bytes.length, limits);
    if (fault) throw refuse(fault);
    const files: ArchiveFile[] = [];
    for (const { entry, name } of entries) if (!name.endsWith('/')) files.push({ name, bytes: await unpacked(zip, entry) });
    return files;
  } catch (error) {
    throw error instanceof Problem ? error : refuse('it is broken, cut off, or no ZIP at all');
  }
};
