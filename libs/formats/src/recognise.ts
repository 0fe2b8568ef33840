import type { FormatId } from './climate-file.js';
import { FORMAT_DOORS } from './doors.js';
import { shown } from './faults.js';
import { bytesOf, decodeLine, notText } from './lines.js';

/** Lines that are looked at before a file is given up as unknown. */
export const HEAD_LINES = 40;
/** Bytes of a file's beginning that are enough to recognise any of the formats. */
export const HEAD_BYTES_ENOUGH = 64 * 1024;

export interface Recognition {
  formatId: FormatId | null;
  /** Why it is this format, or why it is none. */
  reasons: string[];
  /** Where it is known and not read, or not text: what to send instead. */
  remedy: string | null;
}

/** Formats that are often at hand and have no importer: naming them helps more than "not recognised". */
const KNOWN_NOT_READ: readonly (readonly [RegExp, string, string])[] = [
  [/^time\(UTC\),/m, 'PVGIS hourly CSV', 'Choose the EPW output of the same tool.'],
  [/^Source,Location ID,/m, 'NSRDB CSV', 'Choose the EPW or TMY3 form of the station.'],
  [/^"?GHCN_ID"?,/m, 'U.S. climate normals by variable', 'Download the by-station file of the one station.'],
  [/"?(?:HLY|DLY)-[A-Z]+-/, 'hourly or daily U.S. climate normals', 'Download the monthly and the annual/seasonal by-station files.'],
  [/^ ?\d{5} .{22} [A-Z]{2} +-?\d+ [NS] /m, 'TMY2 fixed-width hours', 'Send the TMY3 or EPW file of the station.'],
  [/^\s*\{\s*"type"\s*:\s*"Feature/, 'GeoJSON without a climatology', 'Send a monthly climatology, or a CSV of our own form.'],
];

/** The door that the first lines fit, or null. */
export const doorOf = (head: readonly string[]): { formatId: FormatId; reason: string } | null => {
  for (const door of FORMAT_DOORS) {
    const reason = door.fits(head);
    if (reason !== null) return { formatId: door.id, reason };
  }
  return null;
};

/** Why first lines fit no format. */
export const unknownOf = (head: readonly string[]): Recognition & { code: 'not-recognised' | 'format-not-read' | 'web-page' } => {
  const text = head.map((l) => l.slice(0, 2000)).join('\n');
  if (/^\s*(?:<!doctype\s+html|<html)/i.test(text))
    return { formatId: null, code: 'web-page', reasons: ['the file is a web page'], remedy: 'Open the link again and save the data, not the page around it.' };
  const known = KNOWN_NOT_READ.find(([pattern]) => pattern.test(text));
  if (known) return { formatId: null, code: 'format-not-read', reasons: [`this looks like ${known[1]}, which is not read`], remedy: known[2] };
  const first = head.find((l) => l.trim() !== '') ?? '';
  return {
    formatId: null,
    code: 'not-recognised',
    reasons: [
      `the first line is "${shown(first.trim(), 60)}", and no known header follows in ${head.length} lines`,
      `formats that are read: ${FORMAT_DOORS.map((d) => d.id).join(', ')}`,
    ],
    remedy: 'Send a file of one of the formats that are read, as it was published, or write the figures into a CSV of our own form.',
  };
};

/** What a file is by its first bytes or text; `HEAD_BYTES_ENOUGH` of them are enough. */
export const recognise = (head: Uint8Array | string): Recognition => {
  const bytes = typeof head === 'string' ? bytesOf(head) : head;
  const archive = notText(bytes);
  if (archive) return { formatId: null, reasons: [`this is ${archive.name}, not a text file`], remedy: archive.remedy };
  if (bytes.includes(0))
    return { formatId: null, reasons: ['there are zero bytes: this is not a text file'], remedy: 'Save the data as plain text (CSV, UTF-8) and send that.' };
  if (bytes.length === 0) return { formatId: null, reasons: ['the file is empty'], remedy: 'Send the file again.' };
  const lines = decodeLine(bytes)
    .text.replace(/^(?:\uFEFF|\u00EF\u00BB\u00BF)/, '')
    .split(/\r\n|\n|\r/)
    .slice(0, HEAD_LINES);
  const door = doorOf(lines);
  if (door) return { formatId: door.formatId, reasons: [door.reason], remedy: null };
  const { reasons, remedy } = unknownOf(lines);
  return { formatId: null, reasons, remedy };
};
