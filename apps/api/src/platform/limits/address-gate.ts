import type { NextFunction, Request, Response } from 'express';
import type { RateLimits } from './rate-limits.js';

/** What must answer however many ask: whether the process lives, its numbers, and its pages for people. */
const FREE = /^\/(livez|readyz|metrics|v1\/(docs|openapi\.json|problems))(\/|$)/;

/** Before the body is read and before any credential is looked at, the address must have a permit. */
export const addressGate =
  (limits: RateLimits) =>
  (request: Request, response: Response, next: NextFunction): void => {
    if (FREE.test(request.path)) return next();
    try {
      const taken = limits.ofAddress(request, response);
      if (taken) taken.then(() => next(), next);
      else next();
    } catch (error) {
      next(error);
    }
  };
