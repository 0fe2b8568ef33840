import { Controller, Param, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../platform/access/access.decorators.js';
import type { Actor } from '../../platform/access/actor.js';
import type { Reply } from '../../platform/http/reply.js';
import { Operation } from '../shared/operation.js';
import { NearQuery, NearStationsSchema, StationIdPipe, StationSchema, type NearStation } from './climate.dto.js';
import { ClimateService } from './climate.service.js';

@ApiTags('climate')
@Controller('v1/climate/stations')
export class ClimateController {
  constructor(private readonly climate: ClimateService) {}

  @Operation('get', '', {
    id: 'listClimateStations',
    untagged: true,
    summary: 'Find the stations nearest to a place',
    answer: NearStationsSchema,
    problems: [400],
  })
  nearest(@CurrentActor() actor: Actor, @Query() query: NearQuery): Promise<{ items: NearStation[] }> {
    return this.climate.nearest(actor, query);
  }

  @Operation('get', ':id', { id: 'getClimateStation', summary: "Show one station's climate", answer: StationSchema })
  find(@CurrentActor() actor: Actor, @Param('id', StationIdPipe) id: string): Promise<Reply> {
    return this.climate.find(actor, id);
  }
}
