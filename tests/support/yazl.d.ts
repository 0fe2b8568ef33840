/** What the tests use of the ZIP writer, which comes without types. */
declare module 'yazl' {
  import type { Readable } from 'node:stream';
  export interface EntryOptions {
    compress?: boolean;
    mode?: number;
    mtime?: Date;
  }
  export class ZipFile {
    outputStream: Readable;
    addBuffer(content: Buffer, name: string, options?: EntryOptions): void;
    addEmptyDirectory(name: string): void;
    end(): void;
  }
}
