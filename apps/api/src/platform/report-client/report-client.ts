import { createHash } from 'node:crypto';
import { Inject, Injectable } from '@nestjs/common';
import type { DocumentRequest } from '@lathwork/model';
import { CONFIG, type Config } from '../config/config.js';
import { originOrNull } from '../http/context.js';
import { traceparentOf } from '../http/trace.js';
import { Problem } from '../problems/problem.js';

export interface MadeDocument {
  pdf: Uint8Array;
  pages: number;
  sha256: string;
  engineVersion: string;
}

const LARGEST = 64 * 1024 * 1024;

const reasonOf = async (response: Response): Promise<string> => {
  const body = (await response.json().catch(() => null)) as { title?: unknown; detail?: unknown } | null;
  const text = [body?.title, body?.detail].filter((part) => typeof part === 'string').join(': ');
  return (text || `it answered ${response.status}`).slice(0, 300);
};

/** Speaks to the report app: one finished plan in, one PDF out. */
@Injectable()
export class ReportClient {
  constructor(@Inject(CONFIG) private readonly config: Config) {}

  async make(request: DocumentRequest, signal?: AbortSignal): Promise<MadeDocument> {
    const response = await this.post(request, signal);
    if (response.status === 429 || response.status === 503) throw new Problem('report-unavailable');
    // A 4xx would be the same at the next try, so it ends the job; it is told as a problem of the document.
    if (response.status >= 400 && response.status < 500) throw new Problem('document-refused', { reason: await reasonOf(response) });
    if (!response.ok) throw new Problem('report-refused', { reason: await reasonOf(response) });
    const pdf = new Uint8Array(await response.arrayBuffer());
    return this.checked(pdf, response.headers);
  }

  private async post(request: DocumentRequest, signal?: AbortSignal): Promise<Response> {
    const limit = AbortSignal.timeout(this.config.reportTimeoutMs);
    const origin = originOrNull();
    try {
      return await fetch(new URL('/documents', this.config.reportUrl), {
        method: 'POST',
        redirect: 'error',
        headers: {
          'Content-Type': 'application/json',
          Accept: 'application/pdf, application/problem+json',
          Authorization: `Bearer ${this.config.reportSecret}`,
          ...(origin ? { 'X-Request-Id': origin.requestId, traceparent: traceparentOf(origin.trace) } : {}),
        },
        body: JSON.stringify(request),
        signal: signal ? AbortSignal.any([signal, limit]) : limit,
      });
    } catch (error) {
      throw limit.aborted ? new Problem('timed-out', { what: 'The document' }) : Object.assign(new Problem('report-unavailable'), { cause: error });
    }
  }

  /** Bytes are believed only when they are what the headers say. */
  private checked(pdf: Uint8Array, headers: Headers): MadeDocument {
    const sha256 = createHash('sha256').update(pdf).digest('hex');
    const pages = Number(headers.get('x-pages'));
    const engineVersion = headers.get('x-engine-version') ?? '';
    const isPdf = Buffer.from(pdf.subarray(0, 5)).toString('latin1') === '%PDF-';
    if (!isPdf || pdf.length > LARGEST || sha256 !== headers.get('x-sha256') || !Number.isInteger(pages) || pages < 1 || !engineVersion)
      throw new Problem('report-refused', { reason: 'its answer is not a whole PDF' });
    return { pdf, pages, sha256, engineVersion };
  }
}
