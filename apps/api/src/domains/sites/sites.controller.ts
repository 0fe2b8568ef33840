import { Body, Controller, Query, Req } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Request } from 'express';
import { CurrentActor } from '../../platform/access/access.decorators.js';
import type { Actor } from '../../platform/access/actor.js';
import { IfMatch } from '../../platform/http/etag.js';
import type { Page } from '../../platform/http/page.js';
import type { Reply } from '../../platform/http/reply.js';
import { IdParam } from '../../platform/http/id-param.js';
import { Operation } from '../shared/operation.js';
import { ListQuery } from '../shared/queries.dto.js';
import { SiteClimateSchema, type SiteClimateResponse } from './site-climate.dto.js';
import { SiteClimateService } from './site-climate.service.js';
import { SiteDto, SitePatchDto, SiteSchema, type SiteResponse } from './sites.dto.js';
import { SitesService } from './sites.service.js';

@ApiTags('sites')
@Controller('v1')
export class SitesController {
  constructor(
    private readonly sites: SitesService,
    private readonly climate: SiteClimateService,
  ) {}

  @Operation('post', 'sites', { id: 'createSite', summary: 'Make a site', body: SiteDto, answer: SiteSchema, creating: true })
  create(@CurrentActor() actor: Actor, @Req() request: Request, @Body() body: SiteDto): Promise<Reply> {
    return this.sites.create(actor, request, body);
  }

  @Operation('get', 'sites', { id: 'listSites', summary: 'List the sites of the garden', answer: SiteSchema, page: true })
  list(@CurrentActor() actor: Actor, @Query() query: ListQuery): Promise<Page<SiteResponse>> {
    return this.sites.list(actor, query);
  }

  @Operation('get', 'sites/:id', { id: 'getSite', summary: 'Show one site', answer: SiteSchema })
  find(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<Reply> {
    return this.sites.find(actor, id);
  }

  @Operation('get', 'sites/:id/climate', {
    id: 'getSiteClimate',
    untagged: true,
    summary: 'Show the climate at a site: months, design night, frost dates, sun, each with its basis, doubt and sources',
    answer: SiteClimateSchema,
    problems: [422],
  })
  climateOf(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<SiteClimateResponse> {
    return this.climate.show(actor, id);
  }

  @Operation('patch', 'sites/:id', { id: 'updateSite', summary: 'Change a site', body: SitePatchDto, answer: SiteSchema, ifMatch: true })
  change(@CurrentActor() actor: Actor, @IdParam('id') id: string, @IfMatch() ifMatch: string | undefined, @Body() patch: object): Promise<Reply> {
    return this.sites.change(actor, id, ifMatch, patch);
  }

  @Operation('post', 'sites/:id/archive', {
    id: 'archiveSite',
    summary: 'Put a site away without losing it',
    answer: SiteSchema,
    status: 200,
    ifMatch: true,
  })
  archive(@CurrentActor() actor: Actor, @IdParam('id') id: string, @IfMatch() ifMatch: string | undefined): Promise<Reply> {
    return this.sites.setArchived(actor, id, ifMatch, true);
  }

  @Operation('post', 'sites/:id/restore', {
    id: 'restoreSite',
    summary: 'Bring an archived site back',
    answer: SiteSchema,
    status: 200,
    ifMatch: true,
  })
  restore(@CurrentActor() actor: Actor, @IdParam('id') id: string, @IfMatch() ifMatch: string | undefined): Promise<Reply> {
    return this.sites.setArchived(actor, id, ifMatch, false);
  }
}
