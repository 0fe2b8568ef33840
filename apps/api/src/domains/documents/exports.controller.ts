import { Controller, Query, Res, type StreamableFile } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Response } from 'express';
import { CurrentActor } from '../../platform/access/access.decorators.js';
import type { Actor } from '../../platform/access/actor.js';
import { Produces } from '../../platform/http/answers.interceptor.js';
import { IdParam } from '../../platform/http/id-param.js';
import { Operation } from '../shared/operation.js';
import { CalendarQuery } from './exports.dto.js';
import { ExportsService } from './exports.service.js';

const FILE = { type: 'string', maxLength: 33_554_432 } as const;
const CSV = 'text/csv';
const ICS = 'text/calendar';
const GEOJSON = 'application/geo+json';

type File = Promise<StreamableFile | undefined>;

@ApiTags('files')
@Controller('v1')
export class ExportsController {
  constructor(private readonly exports: ExportsService) {}

  @Produces(CSV)
  @Operation('get', 'stock.csv', { id: 'exportStock', summary: 'The whole pile as CSV', answer: FILE, mediaType: CSV, problems: [422] })
  stock(@CurrentActor() actor: Actor, @Res({ passthrough: true }) response: Response): File {
    return this.exports.stock(actor, response);
  }

  @Produces(CSV)
  @Operation('get', 'prices.csv', { id: 'exportPrices', summary: 'All prices as CSV', answer: FILE, mediaType: CSV, problems: [422] })
  prices(@CurrentActor() actor: Actor, @Res({ passthrough: true }) response: Response): File {
    return this.exports.prices(actor, response);
  }

  @Produces(CSV)
  @Operation('get', 'plans/:id/materials.csv', {
    id: 'exportMaterials',
    summary: 'What a plan needs, takes from the pile and buys, as CSV',
    answer: FILE,
    mediaType: CSV,
    problems: [409],
  })
  materials(@CurrentActor() actor: Actor, @IdParam('id') id: string, @Res({ passthrough: true }) response: Response): File {
    return this.exports.materials(actor, id, response);
  }

  @Produces(ICS)
  @Operation('get', 'plans/:id/calendar.ics', {
    id: 'exportCalendar',
    summary: 'The work days of a plan as a calendar',
    answer: FILE,
    mediaType: ICS,
    problems: [409],
  })
  calendar(@CurrentActor() actor: Actor, @IdParam('id') id: string, @Query() query: CalendarQuery, @Res({ passthrough: true }) response: Response): File {
    return this.exports.calendar(actor, id, query, response);
  }

  @Produces(GEOJSON)
  @Operation('get', 'sites.geojson', { id: 'exportSites', summary: 'The sites as GeoJSON', answer: FILE, mediaType: GEOJSON, problems: [422] })
  sites(@CurrentActor() actor: Actor, @Res({ passthrough: true }) response: Response): File {
    return this.exports.sites(actor, response);
  }
}
