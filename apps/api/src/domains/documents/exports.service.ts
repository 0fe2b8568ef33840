import { Injectable, type StreamableFile } from '@nestjs/common';
import { WORKING_DAY_H } from '@lathwork/calc';
import type { Response } from 'express';
import type { Actor } from '../../platform/access/actor.js';
import { CSV_TYPE, toCsv, type Column } from '../../platform/csv/csv.js';
import { Database, type Db } from '../../platform/database/database.js';
import { fileNameOf } from '../../platform/files/disposition.js';
import { fileAnswer } from '../../platform/files/file-answer.js';
import { fail } from '../../platform/problems/problem.js';
import { PricesRead } from '../prices/prices.read.js';
import { SitesRead } from '../sites/sites.read.js';
import { StockRead } from '../stock/stock.read.js';
import { CALENDAR_TYPE, calendarOf } from './calendar.js';
import { DocumentSources, type NamedPlan } from './document-sources.js';
import { MATERIAL_COLUMNS, PRICE_COLUMNS, STOCK_COLUMNS } from './export-columns.js';
import type { CalendarQuery } from './exports.dto.js';
import { featuresOf, GEOJSON_TYPE } from './sites-geojson.js';

const MOST_ROWS = 20_000;

type File = StreamableFile | undefined;

/** One more than may be told of, so that what is too much is seen. */
const notTooMany = <T>(rows: readonly T[]): readonly T[] => (rows.length > MOST_ROWS ? fail('export-too-large', { limit: MOST_ROWS }) : rows);

/** What other programs read: tables, calendars and maps, each of what the asker may see. */
@Injectable()
export class ExportsService {
  constructor(
    private readonly database: Database,
    private readonly sources: DocumentSources,
    private readonly stockRead: StockRead,
    private readonly pricesRead: PricesRead,
    private readonly sitesRead: SitesRead,
  ) {}

  stock(actor: Actor, response: Response): Promise<File> {
    return this.table(actor, response, 'stock', STOCK_COLUMNS, (db) => this.stockRead.all(db, MOST_ROWS + 1));
  }

  prices(actor: Actor, response: Response): Promise<File> {
    return this.table(actor, response, 'prices', PRICE_COLUMNS, (db) => this.pricesRead.all(db, MOST_ROWS + 1));
  }

  async sites(actor: Actor, response: Response): Promise<File> {
    const sites = notTooMany(await this.database.readSnapshot(actor, (db) => this.sitesRead.all(db, actor, MOST_ROWS + 1)));
    return fileAnswer(response, { name: 'sites.geojson', mediaType: GEOJSON_TYPE, bytes: Buffer.from(JSON.stringify(featuresOf(sites))) });
  }

  async materials(actor: Actor, planId: string, response: Response): Promise<File> {
    const { buildName, finished } = await this.named(actor, planId);
    const bytes = Buffer.from(toCsv(MATERIAL_COLUMNS, finished.result.takeOff.lines));
    return fileAnswer(response, { name: fileNameOf(`${buildName} materials R${finished.plan.revision}`, 'csv'), mediaType: CSV_TYPE, bytes });
  }

  async calendar(actor: Actor, planId: string, query: CalendarQuery, response: Response): Promise<File> {
    const { buildName, siteName, finished } = await this.named(actor, planId);
    const { plan, inputs, result } = finished;
    const startsOn = query.startsOn ?? inputs.crew.startOn ?? fail('validation-failed', { count: 1 }, [NO_START]);
    const text = calendarOf({
      buildId: plan.buildId,
      revision: plan.revision,
      createdAt: plan.createdAt,
      buildName,
      siteName,
      schedule: result.schedule,
      startsOn,
      everyD: query.everyD ?? 1,
      dayH: WORKING_DAY_H,
    });
    return fileAnswer(response, { name: fileNameOf(`${buildName} R${plan.revision}`, 'ics'), mediaType: CALENDAR_TYPE, bytes: Buffer.from(text) });
  }

  private named(actor: Actor, planId: string): Promise<NamedPlan> {
    return this.database.readSnapshot(actor, (db) => this.sources.named(db, planId));
  }

  private async table<T>(actor: Actor, response: Response, name: string, columns: readonly Column<T>[], read: (db: Db) => Promise<T[]>): Promise<File> {
    const rows = notTooMany(await this.database.readSnapshot(actor, read));
    return fileAnswer(response, { name: `${name}.csv`, mediaType: CSV_TYPE, bytes: Buffer.from(toCsv(columns, rows)) });
  }
}

const NO_START = {
  pointer: '/startsOn',
  in: 'query',
  code: 'required',
  detail: 'The build does not say when its crew begins.',
  remedy: 'Send startsOn=year-month-day.',
} as const;
