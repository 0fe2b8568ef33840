import { Injectable } from '@nestjs/common';
import { fileTypeFromBuffer } from 'file-type';
import sharp from 'sharp';
import type { RawBody } from '../http/raw-body.js';
import { fail, Problem } from '../problems/problem.js';
import { frameOf, type PictureFrame, type PictureType } from './picture-frame.js';

export const PICTURE_TYPES: readonly PictureType[] = ['image/jpeg', 'image/png', 'image/webp'];

export const PICTURE_LIMITS = { pixels: 40_000_000, sidePixels: 16_384, longestKept: 2560, decodeS: 10, atOnce: 2, waiting: 8 } as const;

export interface Picture {
  bytes: Buffer;
  mediaType: 'image/jpeg';
  widthPixelCount: number;
  heightPixelCount: number;
}

const NAMES: Readonly<Record<string, string>> = {
  'image/heic': 'a HEIC picture',
  'image/heif': 'a HEIF picture',
  'image/avif': 'an AVIF picture',
  'image/gif': 'a GIF',
  'image/svg+xml': 'an SVG drawing',
  'image/apng': 'an animated PNG',
  'application/xml': 'a text, maybe an SVG drawing',
  'application/zip': 'a ZIP archive',
  'application/pdf': 'a PDF',
};

/** The body of a request that brings a picture. A HEIC or an SVG is told what it is and what can be done. */
export const PICTURE_BODY: RawBody = {
  mediaTypes: PICTURE_TYPES,
  limit: 5_000_000,
  refusal: (mediaType) => (mediaType.startsWith('image/') ? new Problem('picture-kind-refused', { found: NAMES[mediaType] ?? mediaType.slice(0, 60) }) : null),
};

const looksLikeText = (bytes: Buffer): boolean => /^[\s\ufeff]*</.test(bytes.toString('utf8', 0, 256));

const isTaken = (type: string | undefined): type is PictureType => (PICTURE_TYPES as readonly string[]).includes(type ?? '');

/** What the bytes are, by their own first bytes; what they were called does not count. */
const typeOf = async (bytes: Buffer): Promise<PictureType> => {
  const found = (await fileTypeFromBuffer(bytes))?.mime;
  if (isTaken(found)) return found;
  const name = found ? (NAMES[found] ?? `a file of the type ${found}`) : looksLikeText(bytes) ? NAMES['application/xml'] : 'nothing that is known here';
  return fail('picture-kind-refused', { found: name ?? '' });
};

// The marks by which other programs find their file inside this one, wherever it begins.
const FOREIGN = ['PK\u0003\u0004', 'PK\u0005\u0006', '%PDF-', '<?php', '<script', '<svg', '<html', '<!doctype', 'Rar!', '7z\u00bc\u00af', '\u007fELF'];

/**
 * One file that is two things is taken for the other by somebody. Cameras do add to a JPEG: smaller copies, a short film,
 * filling. That is let pass and thrown away; another program's file is refused, and so is anything after a PNG or WebP.
 */
const mustBeOneThing = (type: PictureType, bytes: Buffer, { end }: PictureFrame): void => {
  const tail = bytes.subarray(end).toString('latin1').toLowerCase();
  const foreign = FOREIGN.some((mark) => tail.includes(mark.toLowerCase()));
  const filling = /^[\0\s]*$/.test(tail);
  if (foreign || (type !== 'image/jpeg' && !filling)) fail('picture-unusable', { reason: 'another file hangs behind the picture' });
};

const mustFit = ({ widthPixelCount: width, heightPixelCount: height }: PictureFrame): void => {
  const { pixels, sidePixels } = PICTURE_LIMITS;
  if (width < 1 || height < 1) fail('picture-unusable', { reason: 'it has no size' });
  if (width * height > pixels || Math.max(width, height) > sidePixels)
    fail('picture-unusable', {
      reason: `it is ${width} by ${height} pixels; at most ${pixels / 1_000_000} million in all and ${sidePixels} along a side are taken`,
    });
};

/** A fresh JPEG of what is seen: upright, on white, no longer than is kept, and nothing of what came along with it. */
const redrawn = async (bytes: Buffer): Promise<Picture> => {
  const { pixels, longestKept, decodeS } = PICTURE_LIMITS;
  const { data, info } = await sharp(bytes, { limitInputPixels: pixels, failOn: 'error', sequentialRead: true, pages: 1 })
    .timeout({ seconds: decodeS })
    .rotate()
    .resize({ width: longestKept, height: longestKept, fit: 'inside', withoutEnlargement: true })
    .flatten({ background: '#ffffff' })
    .toColourspace('srgb')
    .jpeg({ quality: 82, mozjpeg: false })
    .toBuffer({ resolveWithObject: true });
  return { bytes: data, mediaType: 'image/jpeg', widthPixelCount: info.width, heightPixelCount: info.height };
};

/** Takes pictures in. Only few are decoded at once: forty million pixels fill a good part of a small machine. */
@Injectable()
export class Pictures {
  private running = 0;
  private readonly queue: (() => void)[] = [];

  /** The picture as it is kept, or a refusal that says why. The pixels are counted before any of them is decoded. */
  async takeIn(bytes: Buffer): Promise<Picture> {
    const type = await typeOf(bytes);
    const frame = frameOf(type, bytes) ?? fail('picture-unusable', { reason: 'it is cut off, broken, or animated' });
    mustFit(frame);
    mustBeOneThing(type, bytes, frame);
    await this.enter();
    try {
      return await redrawn(bytes);
    } catch {
      return fail('picture-unusable', { reason: 'it cannot be decoded' });
    } finally {
      this.leave();
    }
  }

  private async enter(): Promise<void> {
    if (this.running < PICTURE_LIMITS.atOnce) {
      this.running += 1;
      return;
    }
    if (this.queue.length >= PICTURE_LIMITS.waiting) fail('too-many-requests', { what: 'Enough pictures are being worked on.' });
    // Whoever leaves hands the place over, so the count stays.
    await new Promise<void>((resolve) => this.queue.push(resolve));
  }

  private leave(): void {
    const next = this.queue.shift();
    if (next) next();
    else this.running -= 1;
  }
}
