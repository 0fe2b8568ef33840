import { Body, Controller, Get, Injectable, Module, Patch, Post, Query, Req } from '@nestjs/common';
import { ApiOperation } from '@nestjs/swagger';
import { CurrentActor, RequiresRule } from '../../apps/api/src/platform/access/access.decorators.js';
import type { Actor } from '../../apps/api/src/platform/access/actor.js';
import { audit } from '../../apps/api/src/platform/database/audit.js';
import { Database, type Db } from '../../apps/api/src/platform/database/database.js';
import { newId } from '../../apps/api/src/platform/database/ids.js';
import { assertMatch, etagOf, IfMatch } from '../../apps/api/src/platform/http/etag.js';
import { Deprecates } from '../../apps/api/src/platform/http/deprecation.js';
import { fieldRule } from '../../apps/api/src/platform/http/field-rule.js';
import { IdParam } from '../../apps/api/src/platform/http/id-param.js';
import { mergePatch } from '../../apps/api/src/platform/http/merge-patch.js';
import { afterOf, mapPage, PageQuery, toPage } from '../../apps/api/src/platform/http/page.js';
import { found } from '../../apps/api/src/platform/http/reply.js';
import { parseWhole } from '../../apps/api/src/platform/http/validate.js';
import { Idempotency, type CreatingRequest } from '../../apps/api/src/platform/idempotency/idempotency.js';
import { fail } from '../../apps/api/src/platform/problems/problem.js';

const NO_ROLES = {
  member: 'deny',
  coordinator: 'deny',
  treasurer: 'deny',
  storekeeper: 'deny',
  safetyLead: 'deny',
  extensionVolunteer: 'deny',
  funder: 'deny',
} as const;

const isText = fieldRule((value) =>
  typeof value === 'string' && value.length > 0 && value.length <= 200 ? null : { code: 'wrong-type', detail: 'Text is wanted here.' },
);
const isWhole = fieldRule((value) => (Number.isInteger(value) ? null : { code: 'wrong-type', detail: 'A whole number is wanted here.' }));

class ProbeDto {
  @isText name!: string;
  @isWhole elevationM!: number;
}

class ProbeQuery extends PageQuery {
  @fieldRule((value) => (value === undefined || typeof value === 'string' ? null : { code: 'wrong-type', detail: 'Text.' }))
  flavour?: string;
}

/** A small domain over the table of sites, only to see the platform's own promises kept. */
@Injectable()
class ProbeRepository {
  insert(db: Db, actor: Actor, dto: ProbeDto) {
    return db.site.create({
      data: {
        gardenId: actor.gardenId,
        id: newId(),
        name: dto.name,
        latitudeDeg: 0,
        longitudeDeg: 0,
        elevationM: dto.elevationM,
        timeZone: 'UTC',
        details: {},
      },
    });
  }
  find(db: Db, id: string) {
    return db.site.findFirst({ where: { id } });
  }
  list(db: Db, after: string | null, take: number) {
    return db.site.findMany({ where: after ? { id: { gt: after } } : {}, orderBy: { id: 'asc' }, take });
  }
  update(db: Db, id: string, version: number, dto: ProbeDto) {
    return db.site.updateMany({ where: { id, version }, data: { name: dto.name, elevationM: dto.elevationM, version: { increment: 1 } } });
  }
}

@Controller('v1/probe')
class ProbeController {
  constructor(
    private readonly database: Database,
    private readonly idempotency: Idempotency,
    private readonly repository: ProbeRepository,
  ) {}

  @Post()
  @RequiresRule({ access: 'sites:write', roles: NO_ROLES })
  create(@CurrentActor() actor: Actor, @Req() request: CreatingRequest, @Body() dto: ProbeDto) {
    return this.idempotency.creating(actor, request, async (db) => {
      if (dto.name === 'slow') await db.$executeRaw`SELECT pg_sleep(0.4)`;
      const row = await this.repository.insert(db, actor, dto);
      await audit(db, actor, { action: 'site.create', objectType: 'site', objectId: row.id, after: dto });
      if (dto.name === 'fails') fail('conflict', { reason: 'told to' });
      return { status: 201, body: { id: row.id, name: row.name }, location: `/v1/probe/${row.id}`, etag: etagOf(row) };
    });
  }

  @Post('secret')
  @RequiresRule({ access: 'garden:admin', roles: NO_ROLES })
  secret(@CurrentActor() actor: Actor, @Req() request: CreatingRequest) {
    return this.idempotency.creating(actor, request, () => Promise.resolve({ status: 201, body: { shownOnce: `canary-${newId()}` }, secret: true }));
  }

  @Post('operator')
  @RequiresRule({ access: 'operator', roles: NO_ROLES })
  operator(@CurrentActor() actor: Actor, @Req() request: CreatingRequest) {
    return this.idempotency.creating(actor, request, () => Promise.resolve({ status: 201, body: { made: newId() } }));
  }

  @Get()
  @RequiresRule({ access: 'sites:read', roles: NO_ROLES })
  list(@CurrentActor() actor: Actor, @Query() query: ProbeQuery) {
    return this.database.readSnapshot(actor, async (db) => {
      const rows = await this.repository.list(db, afterOf(query), query.limit + 1);
      return mapPage(
        toPage(rows, query.limit, (row) => row.id, query),
        ({ id, name }) => ({ id, name }),
      );
    });
  }

  @Get('open')
  forgotten() {
    return { never: 'seen' };
  }

  /** A route that will go away; its list has links of its own. */
  @Get('old')
  @RequiresRule({ access: 'sites:read', roles: NO_ROLES })
  @Deprecates({ since: '2026-05-01', sunset: '2026-10-31', link: '/v1/docs#deprecation' })
  @ApiOperation({ operationId: 'listOldProbes', summary: 'An old way to list' })
  old(@CurrentActor() actor: Actor, @Query() query: ProbeQuery) {
    return this.list(actor, query);
  }

  @Get('breaks')
  @RequiresRule({ access: 'sites:read', roles: NO_ROLES })
  breaks(@CurrentActor() actor: Actor) {
    return this.database.readSnapshot(actor, (db) => db.$queryRaw`SELECT id, 1 / 0 AS site FROM sites UNION ALL SELECT NULL, 1 / (SELECT 0)`);
  }

  @Get(':id')
  @RequiresRule({ access: 'sites:read', roles: NO_ROLES })
  async one(@CurrentActor() actor: Actor, @IdParam() id: string) {
    const row = await this.database.readSnapshot(actor, (db) => this.repository.find(db, id));
    return row ? found({ id, name: row.name, elevationM: row.elevationM }, etagOf(row)) : fail('not-found', { what: 'probe' });
  }

  @Patch(':id')
  @RequiresRule({ access: 'sites:write', roles: NO_ROLES })
  change(@CurrentActor() actor: Actor, @IdParam() id: string, @IfMatch() ifMatch: string | undefined, @Body() patch: object) {
    return this.database.inTransaction(actor, async (db) => {
      const row = await this.repository.find(db, id);
      if (!row) return fail('not-found', { what: 'probe' });
      assertMatch(ifMatch, row);
      const dto = parseWhole(ProbeDto, mergePatch({ name: row.name, elevationM: row.elevationM }, patch));
      const { count } = await this.repository.update(db, id, row.version, dto);
      if (count === 0) fail('version-stale');
      return found({ id, ...dto }, etagOf({ version: row.version + 1 }));
    });
  }
}

@Module({ controllers: [ProbeController], providers: [ProbeRepository] })
export class ProbeModule {}
