import { Controller, Get, Param, Req, Res } from '@nestjs/common';
import { ApiOkResponse, ApiOperation, ApiParam, ApiTags } from '@nestjs/swagger';
import type { Request, Response } from 'express';
import { Requires } from '../access/access.decorators.js';
import { problemPage, problemsPage } from '../docs/problem-pages.js';
import { Produces } from '../http/answers.interceptor.js';
import { PAGE_POLICY, PublishedDocument } from '../http/docs.controller.js';
import { CATALOGUE, isProblemKey, type ProblemKey } from './catalogue.js';
import { fail } from './problem.js';

const describe = (key: ProblemKey) => {
  const { status, title, detail, remedy } = CATALOGUE[key];
  return { type: `/v1/problems/${key}`, status, title, detail, remedy };
};

const text = (maxLength: number) => ({ type: 'string', maxLength });
const ENTRY = {
  type: 'object',
  required: ['type', 'status', 'title', 'detail', 'remedy'],
  properties: { type: text(100), status: { type: 'integer', minimum: 400, maximum: 599 }, title: text(200), detail: text(500), remedy: text(500) },
};

const PAGE = { 'text/html': { schema: { type: 'string', maxLength: 1_000_000 } } };
const FORMS = ['application/json', 'text/html'] as const;

/** What the `type` of every problem leads to: data for programs, a page for people. */
@ApiTags('problems')
@Controller('v1/problems')
export class ProblemsController {
  constructor(private readonly published: PublishedDocument) {}

  @Get()
  @Requires('listProblems')
  @Produces(...FORMS)
  @ApiOperation({ operationId: 'listProblems', summary: 'Every problem this API can answer with' })
  @ApiOkResponse({
    content: {
      'application/json': { schema: { type: 'object', required: ['items'], properties: { items: { type: 'array', maxItems: 200, items: ENTRY } } } },
      ...PAGE,
    } as never,
  })
  list(@Req() request: Request, @Res({ passthrough: true }) response: Response) {
    if (wantsPage(request)) return asPage(response, problemsPage(this.published.pages.domainNames));
    return { items: (Object.keys(CATALOGUE) as ProblemKey[]).map(describe) };
  }

  @Get(':key')
  @Requires('getProblem')
  @Produces(...FORMS)
  @ApiOperation({ operationId: 'getProblem', summary: 'What one problem means and what can be done about it' })
  @ApiParam({ name: 'key', schema: { type: 'string', enum: Object.keys(CATALOGUE) } })
  @ApiOkResponse({ content: { 'application/json': { schema: ENTRY }, ...PAGE } as never })
  one(@Param('key') key: string, @Req() request: Request, @Res({ passthrough: true }) response: Response) {
    if (!isProblemKey(key)) return fail('route-unknown');
    return wantsPage(request) ? asPage(response, problemPage(key, this.published.pages.domainNames)) : describe(key);
  }
}

/** Browsers ask for HTML before anything else; a program that does not say gets data. */
const wantsPage = (request: Request): boolean => request.accepts([...FORMS]) === 'text/html';

const asPage = (response: Response, page: string): string => {
  response.type('text/html').set('Content-Security-Policy', PAGE_POLICY);
  return page;
};
