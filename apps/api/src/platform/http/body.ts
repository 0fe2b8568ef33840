import type { IncomingMessage } from 'node:http';
import type { NextFunction, Request, Response } from 'express';
import { parse } from 'secure-json-parse';
import { Problem } from '../problems/problem.js';
import { JSON_LIMITS, jsonFault } from './json-guard.js';
import type { RawRoutes } from './raw-body.js';

export const MERGE_PATCH = 'application/merge-patch+json';

const wantedType = (method: string): string => (method === 'PATCH' ? MERGE_PATCH : 'application/json');

const tooLarge = (): Problem => new Problem('body-too-large', { limit: JSON_LIMITS.bytes }, [], { Connection: 'close' });

const readAll = (request: IncomingMessage): Promise<Buffer> =>
  new Promise((resolve, reject) => {
    const chunks: Buffer[] = [];
    let size = 0;
    request.on('data', (chunk: Buffer) => {
      size += chunk.length;
      if (size > JSON_LIMITS.bytes) {
        // The rest is thrown away unread, so that the answer can still be heard.
        request.removeAllListeners('data');
        request.resume();
        reject(tooLarge());
      } else chunks.push(chunk);
    });
    request.on('end', () => resolve(Buffer.concat(chunks)));
    request.on('error', reject);
    request.on('aborted', () => reject(new Problem('malformed-json', { reason: 'it was cut off' })));
  });

const decode = (bytes: Buffer): unknown => {
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new Problem('malformed-json', { reason: 'it is not UTF-8' });
  }
  const reason = jsonFault(text);
  if (reason) throw new Problem('malformed-json', { reason });
  try {
    return parse(text, { protoAction: 'error', constructorAction: 'error' }) as unknown;
  } catch {
    throw new Problem('malformed-json', { reason: 'its syntax is wrong' });
  }
};

type Reading = Request & { rawBody?: Buffer };

/** The body of a writing request: the right media type, at most 1 MiB, and JSON that means one thing only. */
const readJson = async (request: Reading): Promise<void> => {
  const length = Number(request.get('content-length') ?? 0);
  const hasBody = length > 0 || request.get('transfer-encoding') !== undefined;
  if (!hasBody) return;
  if (length > JSON_LIMITS.bytes) throw tooLarge();
  const [type, ...parameters] = (request.get('content-type') ?? '')
    .toLowerCase()
    .split(';')
    .map((part) => part.trim());
  const plain = parameters.every((one) => !one.startsWith('charset=') || /^charset="?utf-8"?$/.test(one));
  const wanted = wantedType(request.method);
  if (type !== wanted || !plain || request.get('content-encoding') !== undefined)
    throw new Problem('media-type-unsupported', { wanted }, [], request.method === 'PATCH' ? { 'Accept-Patch': MERGE_PATCH } : {});
  request.rawBody = await readAll(request);
  request.body = request.rawBody.length > 0 ? decode(request.rawBody) : undefined;
};

/** Reads every body at the entrance but those of the routes that take bytes: their handlers read them. */
export const readBody =
  (raw: RawRoutes) =>
  async (request: Reading, _response: Response, next: NextFunction): Promise<void> => {
    try {
      if (!raw.has(request)) await readJson(request);
      next();
    } catch (error) {
      next(error);
    }
  };
