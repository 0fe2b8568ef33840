import { Injectable, type CallHandler, type ExecutionContext, type NestInterceptor } from '@nestjs/common';
import type { Request, Response } from 'express';
import type { Observable } from 'rxjs';
import type { Actor } from '../access/actor.js';
import type { OperationId } from '../access/pivot.js';
import { RateLimits } from './rate-limits.js';

/** Requests that start or do heavy work: they have a class of their own beside that of the credential and the garden. */
export const COSTLY: ReadonlySet<OperationId> = new Set<OperationId>(['createPlan', 'createDocument']);

/** The operation of a handler, as the API document names it. */
const operationOf = (handler: object): string | undefined =>
  (Reflect.getMetadata('swagger/apiOperation', handler) as { operationId?: string } | undefined)?.operationId;

/** After the guard: whoever was let in must have a permit too. */
@Injectable()
export class LimitsInterceptor implements NestInterceptor {
  constructor(private readonly limits: RateLimits) {}

  intercept(context: ExecutionContext, next: CallHandler): Observable<unknown> | Promise<Observable<unknown>> {
    const request = context.switchToHttp().getRequest<Request & { actor?: Actor }>();
    if (!request.actor) return next.handle();
    const costly = (COSTLY as ReadonlySet<string | undefined>).has(operationOf(context.getHandler()));
    const taken = this.limits.ofActor(request, context.switchToHttp().getResponse<Response>(), request.actor, costly);
    return taken ? taken.then(() => next.handle()) : next.handle();
  }
}
