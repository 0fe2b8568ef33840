import { createHash } from 'node:crypto';
import { StreamableFile } from '@nestjs/common';
import type { Response } from 'express';
import { alreadyHas } from '../http/etag.js';
import { attachment } from './disposition.js';

export interface FileAnswer {
  name: string;
  mediaType: string;
  bytes: Uint8Array;
}

/** Gives out bytes as a file for keeping, never to be shown as a page. Their tag is their own hash. */
export const fileAnswer = (response: Response, { name, mediaType, bytes }: FileAnswer): StreamableFile | undefined => {
  const etag = `"${createHash('sha256').update(bytes).digest('hex')}"`;
  response.setHeader('ETag', etag);
  if (alreadyHas(response.req.get('if-none-match'), etag)) {
    response.status(304);
    return undefined;
  }
  return new StreamableFile(bytes, { type: mediaType, length: bytes.length, disposition: attachment(name) });
};
