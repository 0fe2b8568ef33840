import { Controller, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../platform/access/access.decorators.js';
import type { Actor } from '../../platform/access/actor.js';
import { IdParam } from '../../platform/http/id-param.js';
import { PageQuery, type Page } from '../../platform/http/page.js';
import { Operation } from '../shared/operation.js';
import {
  BuildHazardsSchema,
  BuildNeedsSchema,
  BuildSummarySchema,
  BuildTotalsSchema,
  GardenTotalsSchema,
  type BuildHazards,
  type BuildNeeds,
  type BuildSummary,
  type BuildTotals,
  type GardenTotals,
} from './overview.dto.js';
import { OverviewService } from './overview.service.js';

@ApiTags('overview')
@Controller('v1')
export class OverviewController {
  constructor(private readonly overview: OverviewService) {}

  @Operation('get', 'overview/builds', {
    id: 'listBuildSummaries',
    summary: 'List every build of the garden in a few words: name, kind, state',
    answer: BuildSummarySchema,
    page: true,
  })
  summaries(@CurrentActor() actor: Actor, @Query() query: PageQuery): Promise<Page<BuildSummary>> {
    return this.overview.summaries(actor, query);
  }

  @Operation('get', 'overview/totals', {
    id: 'getGardenTotals',
    untagged: true,
    summary: 'Show sums over the garden that name nobody',
    answer: GardenTotalsSchema,
  })
  garden(@CurrentActor() actor: Actor): Promise<GardenTotals> {
    return this.overview.garden(actor);
  }

  @Operation('get', 'builds/:id/needs', {
    id: 'getBuildNeeds',
    untagged: true,
    summary: 'Show what a build needs, without what it costs',
    answer: BuildNeedsSchema,
  })
  needs(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<BuildNeeds> {
    return this.overview.needs(actor, id);
  }

  @Operation('get', 'builds/:id/hazards', {
    id: 'getBuildHazards',
    untagged: true,
    summary: 'Show the warnings of the newest plan of a build',
    answer: BuildHazardsSchema,
  })
  hazards(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<BuildHazards> {
    return this.overview.hazards(actor, id);
  }

  @Operation('get', 'builds/:id/totals', {
    id: 'getBuildTotals',
    untagged: true,
    summary: 'Show what a build costs, without what it is',
    answer: BuildTotalsSchema,
  })
  totals(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<BuildTotals> {
    return this.overview.totals(actor, id);
  }
}
