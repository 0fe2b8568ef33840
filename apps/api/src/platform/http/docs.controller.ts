import { Controller, Get, Header, Injectable } from '@nestjs/common';
import { ApiExcludeEndpoint, ApiOkResponse, ApiOperation, ApiTags } from '@nestjs/swagger';
import type { OpenAPIObject } from '@nestjs/swagger';
import { Requires } from '../access/access.decorators.js';
import { Produces } from './answers.interceptor.js';
import { docsPage } from './docs-page.js';
import { Reply } from './reply.js';

/** The OpenAPI document of this process, set once all routes are known. */
@Injectable()
export class PublishedDocument {
  document: OpenAPIObject | null = null;
  /** Exact text, the same as the committed file. */
  text = '';
}

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

  /** A plain page for people. It loads nothing from anywhere. */
  @Get('docs')
  @Requires('getDocs')
  @Produces('text/html')
  @Header('Content-Type', 'text/html; charset=utf-8')
  @Header('Content-Security-Policy', "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'")
  @ApiExcludeEndpoint()
  docs(): string {
    return this.published.document ? docsPage(this.published.document) : '';
  }
}
