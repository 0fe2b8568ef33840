import { Injectable, SetMetadata, type CallHandler, type ExecutionContext, type NestInterceptor } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import type { Request, Response } from 'express';
import { map, type Observable } from 'rxjs';
import { fail } from '../problems/problem.js';
import { alreadyHas } from './etag.js';
import { Page } from './page.js';
import { Reply } from './reply.js';

const PRODUCES = 'lathwork:produces';

/** The route answers with something else than JSON, or with one of several forms: the first where whoever asks does not mind. */
export const Produces = (...mediaTypes: readonly string[]): MethodDecorator => SetMetadata(PRODUCES, mediaTypes);

const reads = (request: Request): boolean => request.method === 'GET' || request.method === 'HEAD';

const writeReply = (value: Reply, request: Request, response: Response): string | undefined => {
  const { status, location, etag } = value.answer;
  response.set(value.headers);
  if (etag) response.set('ETag', etag);
  if (location) response.set('Location', location);
  if (etag && reads(request) && alreadyHas(request.get('if-none-match'), etag)) {
    response.status(304);
    return undefined;
  }
  response.status(status);
  if (status === 204) return undefined;
  response.type('application/json');
  return value.text;
};

const linkOf = (request: Request, cursor: string | null): string => {
  const url = new URL(request.originalUrl, 'http://local');
  if (cursor === null) url.searchParams.delete('cursor');
  else url.searchParams.set('cursor', cursor);
  return `<${url.pathname}${url.search}>`;
};

const writePage = (page: Page<unknown>, request: Request, response: Response): object => {
  const links = [`${linkOf(request, null)}; rel="first"`, ...(page.next ? [`${linkOf(request, page.next)}; rel="next"`] : [])];
  response.set('Link', links.join(', '));
  return { items: page.items, next: page.next };
};

/** Writes what the controllers return: replies with their tags, pages with their links, all else as plain JSON. */
@Injectable()
export class AnswersInterceptor implements NestInterceptor {
  constructor(private readonly reflector: Reflector) {}

  intercept(context: ExecutionContext, next: CallHandler): Observable<unknown> {
    const request = context.switchToHttp().getRequest<Request>();
    const response = context.switchToHttp().getResponse<Response>();
    const offered = this.reflector.get<string[] | undefined>(PRODUCES, context.getHandler()) ?? ['application/json'];
    if (!request.accepts(offered)) fail('not-acceptable', { offered: offered.join(', ') });
    if (offered.length > 1) response.vary('Accept');
    return next.handle().pipe(
      map((value: unknown) => {
        if (value instanceof Reply) return writeReply(value, request, response);
        return value instanceof Page ? writePage(value, request, response) : value;
      }),
    );
  }
}
