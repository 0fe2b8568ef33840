import type { Request } from 'express';
import { fail } from '../problems/problem.js';

const READS = new Set(['GET', 'HEAD', 'OPTIONS']);

const hostOf = (origin: string): string | null => (URL.canParse(origin) ? new URL(origin).host : null);

/**
 * Refuses a change that a browser sends with its cookie from another site. The browser's own word (Sec-Fetch-Site)
 * counts first; where it is missing, the Origin must be ours; where both are missing, it is no browser of ours.
 * Source: the cross-site request forgery sheet of the OWASP series (fetch metadata with Origin as the fallback).
 */
export const mustBeSameSite = (request: Request, publicOrigin: string | null): void => {
  if (READS.has(request.method)) return;
  const site = request.get('sec-fetch-site');
  if (site !== undefined) {
    if (site !== 'same-origin' && site !== 'none') fail('cross-site');
    return;
  }
  const origin = request.get('origin') ?? '';
  const ours = publicOrigin === null ? hostOf(origin) !== null && hostOf(origin) === request.get('host') : origin === publicOrigin;
  if (!ours) fail('cross-site');
};
