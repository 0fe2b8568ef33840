import { Injectable, type CallHandler, type ExecutionContext, type NestInterceptor } from '@nestjs/common';
import type { Request, Response } from 'express';
import type { Observable } from 'rxjs';
import type { Actor } from '../access/actor.js';
import { RateLimits } from './rate-limits.js';

/** Requests that start heavy work, or are heavy themselves: they have a class of their own beside those of the credential and the garden. */
const COSTLY = /^(createPlan|createDocument|create(Stock|Build)Photo|(export|import|calculate|compute|simulate)[A-Z].*)$/;

export const isCostly = (operation: string | undefined): boolean => operation !== undefined && COSTLY.test(operation);

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
    const costly = isCostly(operationOf(context.getHandler()));
    const taken = this.limits.ofActor(request, context.switchToHttp().getResponse<Response>(), request.actor, costly);
    return taken ? taken.then(() => next.handle()) : next.handle();
  }
}
