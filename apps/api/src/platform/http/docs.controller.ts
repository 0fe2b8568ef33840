import { Controller, Get, Header, Injectable, Param } from '@nestjs/common';
import { ApiExcludeEndpoint, ApiOkResponse, ApiOperation, ApiTags } from '@nestjs/swagger';
import type { OpenAPIObject } from '@nestjs/swagger';
import { Requires } from '../access/access.decorators.js';
import { DocsPages } from '../docs/pages.js';
import { fail } from '../problems/problem.js';
import { Produces } from './answers.interceptor.js';
import { Reply } from './reply.js';

/** The OpenAPI document of this process, set once all routes are known. */
@Injectable()
export class PublishedDocument {
  document: OpenAPIObject | null = null;
  /** Exact text, the same as the committed file. */
  text = '';
  private made: DocsPages | null = null;

  /** The same for people. */
  get pages(): DocsPages {
    if (!this.document) throw new Error('the description is made when all routes are known');
    return (this.made ??= new DocsPages(this.document));
  }
}

/** A page may show its own style sheet; it may run, load and send nothing. */
export const PAGE_POLICY = "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'";

@ApiTags('documentation')
@Controller('v1')
export class DocsController {
  constructor(private readonly published: PublishedDocument) {}

  @Get('openapi.json')
  @Requires('getOpenApi')
  @ApiOperation({ operationId: 'getOpenApi', summary: 'This description, as OpenAPI 3.1' })
  @ApiOkResponse({ schema: { type: 'object' } })
  openapi(): Reply {
    return new Reply({ status: 200 }, this.published.text);
  }

  /** How it works, and all operations. */
  @Get('docs')
  @Requires('getDocs')
  @Produces('text/html')
  @Header('Content-Type', 'text/html; charset=utf-8')
  @Header('Content-Security-Policy', PAGE_POLICY)
  @ApiExcludeEndpoint()
  docs(): string {
    return this.published.pages.start();
  }

  /** The operations of one domain, with their fields and examples. */
  @Get('docs/:domain')
  @Requires('getDocs')
  @Produces('text/html')
  @Header('Content-Type', 'text/html; charset=utf-8')
  @Header('Content-Security-Policy', PAGE_POLICY)
  @ApiExcludeEndpoint()
  domain(@Param('domain') name: string): string {
    return this.published.pages.domain(name) ?? fail('route-unknown');
  }
}
