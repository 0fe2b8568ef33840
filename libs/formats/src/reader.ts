import type { FileCount, FormatId, ReadOptions, ReadResult } from './climate-file.js';
import { FORMAT_DOORS } from './doors.js';
import { Faults, Remarks } from './faults.js';
import { bytesOf, DEFAULT_BYTES_LIMIT, DEFAULT_LINE_BYTES_LIMIT, LineReader } from './lines.js';
import type { LineParser } from './parser.js';
import { doorOf, HEAD_LINES, unknownOf } from './recognise.js';

const DEFAULT_FAULTS_LIMIT = 50;
const DEFAULT_PROGRESS_LINES = 1000;

/**
 * Reads one climate file that comes in pieces of any size. `push` answers false when the rest of the file is not wanted, so
 * that an upload can be ended early; `end` gives records or faults, never half of each. Nothing but the figures is kept.
 */
export class ClimateReader {
  private readonly faults: Faults;
  private readonly remarks = new Remarks();
  private readonly lines: LineReader;
  private readonly head: string[] = [];
  private parser: LineParser | null = null;
  private formatId: FormatId | null = null;
  private lastGoodLine = 0;
  private lastFaultyLine = 0;
  private result: ReadResult | null = null;

  constructor(private readonly options: ReadOptions = {}) {
    this.faults = new Faults(options.faultsLimit ?? DEFAULT_FAULTS_LIMIT);
    this.lines = new LineReader((text, number) => this.take(text, number), {
      bytesLimit: options.bytesLimit ?? DEFAULT_BYTES_LIMIT,
      lineBytesLimit: options.lineBytesLimit ?? DEFAULT_LINE_BYTES_LIMIT,
    });
    if (options.formatId !== undefined) this.start(options.formatId);
  }

  push(chunk: Uint8Array): boolean {
    return this.result === null && this.lines.push(chunk);
  }

  end(): ReadResult {
    this.result ??= this.finish();
    return this.result;
  }

  private start(formatId: FormatId): void {
    const door = FORMAT_DOORS.find((d) => d.id === formatId);
    this.formatId = formatId;
    this.parser = door?.start({ faults: this.faults, remarks: this.remarks, options: this.options }) ?? null;
  }

  private take(text: string, number: number): boolean {
    const every = this.options.progressEveryLines ?? DEFAULT_PROGRESS_LINES;
    if (number % every === 0) this.options.onProgress?.({ bytesCount: this.lines.bytesCount, linesCount: number });
    if (this.parser) return this.give(text, number);
    this.head.push(text);
    const door = doorOf(this.head);
    if (!door) return this.head.length < HEAD_LINES || this.refuse();
    this.start(door.formatId);
    const before = number - this.head.length;
    return this.head.splice(0).every((line, i) => this.give(line, before + i + 1));
  }

  private give(text: string, number: number): boolean {
    const before = this.faults.count;
    const more = this.parser?.line(text, number) ?? false;
    if (this.faults.count > before) this.lastFaultyLine = number;
    else if (text.trim() !== '') this.lastGoodLine = number;
    return more;
  }

  private refuse(): false {
    const { code, reasons, remedy } = unknownOf(this.head);
    this.faults.add({ line: 1, code, message: reasons.join('; '), remedy: remedy ?? '' });
    return false;
  }

  private finish(): ReadResult {
    this.lines.end();
    const { linesCount, endedWithNewline } = this.lines;
    const cutOff = !endedWithNewline;
    if (this.lines.fault) this.faults.add(this.lines.fault);
    else if (!this.parser && this.faults.count === 0) this.refuse();
    const stopped = this.faults.count > 0 && !this.lines.readToEnd;
    // A parser that was stopped early has seen no end of the file, so that its end cannot be judged.
    const file = this.lines.fault || stopped ? null : (this.parser?.end({ linesCount, cutOff, lastGoodLine: this.lastGoodLine }) ?? null);
    if (cutOff && this.lastFaultyLine === linesCount && linesCount > 1 && !stopped && !this.faults.list.some((f) => f.code === 'truncated'))
      this.faults.add({
        line: this.lastGoodLine,
        code: 'truncated',
        message: `the file ends within line ${linesCount}; line ${this.lastGoodLine} is the last good one`,
        remedy: 'Send the whole file again: the upload may have been cut off.',
      });
    this.remarkEncoding();
    const counted = this.counted();
    const remarks = this.remarks.list;
    if (this.faults.count === 0 && file && this.formatId) {
      this.options.onProgress?.({ bytesCount: counted.bytesCount, linesCount });
      return { outcome: 'records', formatId: this.formatId, file, remarks, counted };
    }
    if (this.faults.count === 0)
      this.faults.add({
        line: 0,
        code: 'nothing-usable',
        message: 'nothing that a plan could use is in the file',
        remedy: 'Send the whole file as it was published.',
      });
    return {
      outcome: 'faults',
      formatId: this.formatId,
      faults: this.faults.list,
      faultsCount: this.faults.count,
      lastGoodLine: this.lastGoodLine,
      remarks,
      counted,
    };
  }

  private remarkEncoding(): void {
    const { latin1LinesCount, firstLatin1Line } = this.lines;
    if (latin1LinesCount > 0) this.remarks.add('latin-1', 'lines that were not UTF-8 were read as Latin-1', { line: firstLatin1Line, count: latin1LinesCount });
  }

  private counted(): FileCount {
    const { bytesCount, linesCount, latin1LinesCount, hasUtf8 } = this.lines;
    return { bytesCount, linesCount, encoding: latin1LinesCount > 0 ? 'latin-1' : hasUtf8 ? 'utf-8' : 'ascii' };
  }
}

/** A whole file at once. */
export const readClimateFile = (file: Uint8Array | string, options: ReadOptions = {}): ReadResult => {
  const reader = new ClimateReader(options);
  reader.push(typeof file === 'string' ? bytesOf(file) : file);
  return reader.end();
};
