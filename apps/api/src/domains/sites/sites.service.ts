import tzLookup from '@photostructure/tz-lookup';
import { Injectable } from '@nestjs/common';
import type { Request } from 'express';
import { IANAZone } from 'luxon';
import type { Actor } from '../../platform/access/actor.js';
import { audit } from '../../platform/database/audit.js';
import { Database, type Db } from '../../platform/database/database.js';
import { newId } from '../../platform/database/ids.js';
import { assertMatch, etagOf } from '../../platform/http/etag.js';
import { afterOf, toPage, type Page } from '../../platform/http/page.js';
import { outlineFault, settledOutline, type Outline, type Position } from '../../platform/http/outline-field.js';
import { collectAsTyped, type AsTyped } from '../../platform/http/quantity-field.js';
import { found, type Reply } from '../../platform/http/reply.js';
import { Idempotency } from '../../platform/idempotency/idempotency.js';
import { fail } from '../../platform/problems/problem.js';
import { ClimateRead, type Place } from '../climate/climate.read.js';
import { geodesicM } from '../climate/distance.js';
import { StalenessDoor } from '../plans/staleness.door.js';
import { archive, must, mustBeFreeToShare, mustBeNewest, mustNotBeArchived, nameFree, patched } from '../shared/change.js';
import { ownershipOf } from '../shared/resource.js';
import type { ListQuery } from '../shared/queries.dto.js';
import { etagOfSite, SiteViews } from './site-views.js';
import { groundOf, toRequest, SiteDto, type SiteResponse } from './sites.dto.js';
import { SitesRepository, type SiteFields, type SiteRecord } from './sites.repository.js';

const WHAT = 'site';
const FAR_M = 300_000;
const OUTLINE_FAR_M = 5000;

/** What a site is checked against, and what is shown of it. */
@Injectable()
export class SiteTools {
  constructor(
    readonly climate: ClimateRead,
    readonly staleness: StalenessDoor,
    readonly views: SiteViews,
  ) {}
}

@Injectable()
export class SitesService {
  constructor(
    private readonly database: Database,
    private readonly idempotency: Idempotency,
    private readonly sites: SitesRepository,
    private readonly tools: SiteTools,
  ) {}

  create(actor: Actor, request: Request, body: SiteDto): Promise<Reply> {
    return this.idempotency.creating(actor, request, async (db) => {
      await this.mustBeNearAStation(db, body, body.confirmFar === true);
      const fields = await this.fieldsOf(db, body, collectAsTyped(request.body, body));
      const site = await nameFree(WHAT, fields.name, this.sites.insert(db, ownershipOf(actor), newId(), fields));
      await audit(db, actor, { action: 'site.create', objectType: WHAT, objectId: site.id, after: site });
      const shown = await this.tools.views.one(db, actor, site);
      return { status: 201, body: shown, location: `/v1/sites/${site.id}`, etag: etagOfSite(site, shown.coordinatesExact) };
    });
  }

  async list(actor: Actor, query: ListQuery): Promise<Page<SiteResponse>> {
    const step = { after: afterOf(query), take: query.limit + 1 };
    const sites = await this.database.readSnapshot(actor, async (db) =>
      this.tools.views.of(db, actor, await this.sites.list(db, { archived: query.archived ?? false }, step)),
    );
    return toPage(sites, query.limit, (site) => site.id, query);
  }

  async find(actor: Actor, id: string): Promise<Reply> {
    return this.database.readSnapshot(actor, async (db) => this.shown(db, actor, must(await this.sites.find(db, id), WHAT)));
  }

  change(actor: Actor, id: string, ifMatch: string | undefined, patch: unknown): Promise<Reply> {
    return this.database.inTransaction(actor, async (db) => {
      const was = must(await this.sites.find(db, id), WHAT);
      assertMatch(ifMatch, await this.tagOf(db, actor, was));
      mustNotBeArchived(was, WHAT);
      const { dto, asTyped } = patched(SiteDto, toRequest(was), was.asTyped, patch);
      mustBeFreeToShare(actor, was, dto.shared ?? false);
      const moved = dto.latitudeDeg !== was.latitudeDeg || dto.longitudeDeg !== was.longitudeDeg;
      if (moved) await this.mustBeNearAStation(db, dto, dto.confirmFar === true);
      const fields = await this.fieldsOf(db, dto, asTyped);
      const now = mustBeNewest(await nameFree(WHAT, fields.name, this.sites.update(db, was, fields)));
      await audit(db, actor, { action: 'site.update', objectType: WHAT, objectId: id, before: was, after: now });
      await this.tools.staleness.siteChanged(db, actor, id);
      return this.shown(db, actor, now);
    });
  }

  setArchived(actor: Actor, id: string, ifMatch: string | undefined, archived: boolean): Promise<Reply> {
    return this.database.inTransaction(actor, async (db) => {
      const was = must(await this.sites.find(db, id), WHAT);
      assertMatch(ifMatch, await this.tagOf(db, actor, was));
      return this.shown(db, actor, await archive(db, actor, this.sites, { what: WHAT, id, ifMatch: etagOf(was), archived }));
    });
  }

  private async tagOf(db: Db, actor: Actor, site: SiteRecord): Promise<string> {
    const [exact] = await this.tools.views.exactOf(db, actor, [site]);
    return etagOfSite(site, exact === true);
  }

  private async shown(db: Db, actor: Actor, site: SiteRecord): Promise<Reply> {
    const body = await this.tools.views.one(db, actor, site);
    return found(body, etagOfSite(site, body.coordinatesExact));
  }

  // Swapped latitude and longitude are often still in range, but then the place is mostly at sea or in ice.
  private async mustBeNearAStation(db: Db, place: Place, confirmed: boolean): Promise<void> {
    const [nearest] = await this.tools.climate.nearest(db, place, 1);
    if (confirmed || (nearest && nearest.distanceM <= FAR_M)) return;
    fail('station-far', { distanceKm: nearest ? Math.round(nearest.distanceM / 1000) : 'an unknown number of' }, [
      {
        pointer: '/confirmFar',
        code: 'confirm-far',
        detail: 'The place is more than 300 km from every climate station.',
        remedy: 'Check that latitude and longitude are not swapped; if the place is right, send "confirmFar": true.',
      },
    ]);
  }

  /** A swapped pair is mostly in range and always far away; whoever sent it is told so. */
  private outlineOf(place: Place, outline: Outline | null | undefined): Outline | null {
    if (!outline) return null;
    const away = ([longitudeDeg, latitudeDeg]: Position): number => geodesicM(place.latitudeDeg, place.longitudeDeg, latitudeDeg, longitudeDeg);
    const ring = outline.coordinates[0] ?? [];
    const far = ring.some((position) => away(position) > OUTLINE_FAR_M);
    const swapped = far && ring.every(([x, y]) => Math.abs(x) <= 90 && away([y, x]) <= OUTLINE_FAR_M);
    const fault = outlineFault(outline) ?? (far ? { code: 'outline-far', detail: 'The outline reaches more than 5 km from the point of the site.' } : null);
    if (!fault) return settledOutline(outline);
    const remedy = swapped ? 'Latitude and longitude are swapped: GeoJSON has the longitude first.' : 'Draw the outline again, or correct the point.';
    return fail('inputs-contradict', { reason: 'The outline does not fit.' }, [{ pointer: '/outline', ...fault, remedy }]);
  }

  private async fieldsOf(db: Db, body: SiteDto, asTyped: AsTyped): Promise<SiteFields> {
    if (body.timeZone && !IANAZone.isValidZone(body.timeZone)) {
      fail('validation-failed', { count: 1 }, [
        { pointer: '/timeZone', code: 'not-a-zone', detail: 'No such time zone.', remedy: 'Send an IANA zone such as America/Denver, or leave it out.' },
      ]);
    }
    if (body.stationId && !(await this.tools.climate.has(db, body.stationId))) {
      fail('validation-failed', { count: 1 }, [
        { pointer: '/stationId', code: 'not-found', detail: 'There is no climate station with this id.', remedy: 'See /v1/climate/stations.' },
      ]);
    }
    return {
      name: body.name,
      latitudeDeg: body.latitudeDeg,
      longitudeDeg: body.longitudeDeg,
      elevationM: body.elevationM,
      timeZone: body.timeZone ?? tzLookup(body.latitudeDeg, body.longitudeDeg),
      stationId: body.stationId ?? null,
      outline: this.outlineOf(body, body.outline),
      shared: body.shared ?? false,
      ...groundOf(body),
      asTyped,
    };
  }
}
