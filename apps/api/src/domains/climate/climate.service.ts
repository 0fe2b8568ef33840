import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database } from '../../platform/database/database.js';
import { etagOfParts } from '../../platform/http/etag.js';
import { found, type Reply } from '../../platform/http/reply.js';
import { must } from '../shared/change.js';
import { toNearStation, toStationResponse, type NearQuery, type NearStation } from './climate.dto.js';
import { ClimateRead } from './climate.read.js';
import { ClimateRepository } from './climate.repository.js';

const DEFAULT_LIMIT = 5;

@Injectable()
export class ClimateService {
  constructor(
    private readonly database: Database,
    private readonly read: ClimateRead,
    private readonly stations: ClimateRepository,
  ) {}

  async nearest(actor: Actor, query: NearQuery): Promise<{ items: NearStation[] }> {
    const near = await this.database.readSnapshot(actor, (db) => this.read.nearest(db, query.place(), query.limit ?? DEFAULT_LIMIT));
    return { items: near.map((at) => toNearStation(at, query.elevationM ?? null)) };
  }

  async find(actor: Actor, id: string): Promise<Reply> {
    const station = must(await this.database.readSnapshot(actor, (db) => this.stations.find(db, id)), 'climate station');
    return found(toStationResponse(station), etagOfParts(station.stationId, station.period));
  }
}
