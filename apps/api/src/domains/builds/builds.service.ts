import { Injectable } from '@nestjs/common';
import type { Request } from 'express';
import type { Actor } from '../../platform/access/actor.js';
import { audit } from '../../platform/database/audit.js';
import { Database, type Db } from '../../platform/database/database.js';
import { newId } from '../../platform/database/ids.js';
import { assertMatch } from '../../platform/http/etag.js';
import { afterOf, toPage, type Page } from '../../platform/http/page.js';
import { collectAsTyped } from '../../platform/http/quantity-field.js';
import type { Reply } from '../../platform/http/reply.js';
import { Idempotency } from '../../platform/idempotency/idempotency.js';
import { fail, type FieldFault } from '../../platform/problems/problem.js';
import { StalenessDoor } from '../plans/staleness.door.js';
import { archive, made, must, mustBeFreeToShare, mustBeNewest, mustNotBeArchived, patched, shown } from '../shared/change.js';
import { emit } from '../shared/events.js';
import { ownershipOf } from '../shared/resource.js';
import { BuildReferences } from './builds.references.js';
import { BuildDto, toFields, toRequest, toResponse, type BuildListQuery, type BuildResponse } from './builds.dto.js';
import { BuildsRepository, type BuildFields } from './builds.repository.js';

const WHAT = 'build';

@Injectable()
export class BuildsService {
  constructor(
    private readonly database: Database,
    private readonly idempotency: Idempotency,
    private readonly builds: BuildsRepository,
    private readonly references: BuildReferences,
    private readonly staleness: StalenessDoor,
  ) {}

  create(actor: Actor, request: Request, body: BuildDto): Promise<Reply> {
    return this.idempotency.creating(actor, request, async (db) => {
      const id = newId();
      const fields = await this.checked(db, toFields(body, collectAsTyped(request.body, body)), id);
      const build = await this.builds.insert(db, ownershipOf(actor), id, fields);
      await audit(db, actor, { action: 'build.create', objectType: WHAT, objectId: build.id, after: build });
      return made('/v1/builds', toResponse(build));
    });
  }

  async list(actor: Actor, query: BuildListQuery): Promise<Page<BuildResponse>> {
    const step = { after: afterOf(query), take: query.limit + 1 };
    const filter = { archived: query.archived ?? false, siteId: query.siteId ?? null, variantOf: query.variantOf ?? null };
    const builds = await this.database.readSnapshot(actor, (db) => this.builds.list(db, filter, step));
    return toPage(builds.map(toResponse), query.limit, (build) => build.id, query);
  }

  async find(actor: Actor, id: string): Promise<Reply> {
    return shown(toResponse(must(await this.database.readSnapshot(actor, (db) => this.builds.find(db, id)), WHAT)));
  }

  change(actor: Actor, id: string, ifMatch: string | undefined, patch: unknown): Promise<Reply> {
    return this.database.inTransaction(actor, async (db) => {
      const was = must(await this.builds.find(db, id), WHAT);
      assertMatch(ifMatch, was);
      mustNotBeArchived(was, WHAT);
      const { dto, asTyped } = patched(BuildDto, toRequest(was), was.asTyped, patch);
      mustBeFreeToShare(actor, was, dto.shared ?? false);
      const now = mustBeNewest(await this.builds.update(db, was, await this.checked(db, toFields(dto, asTyped), id)));
      await audit(db, actor, { action: 'build.update', objectType: WHAT, objectId: id, before: was, after: now });
      await this.staleness.buildChanged(db, actor, id);
      await emit(db, actor.gardenId, { type: 'build.updated', object: WHAT, id, version: now.version });
      return shown(toResponse(now));
    });
  }

  setArchived(actor: Actor, id: string, ifMatch: string | undefined, archived: boolean): Promise<Reply> {
    return this.database.inTransaction(actor, async (db) => shown(toResponse(await archive(db, actor, this.builds, { what: WHAT, id, ifMatch, archived }))));
  }

  private async checked(db: Db, build: BuildFields, id: string): Promise<BuildFields> {
    const faults: FieldFault[] = await this.references.faultsOf(db, build);
    if (build.variantOf !== null) {
      const original = build.variantOf === id ? null : await this.builds.find(db, build.variantOf);
      if (!original) faults.push({ pointer: '/variantOf', code: 'not-found', detail: 'There is no such other build in this garden.' });
    }
    if (faults.length > 0) fail('validation-failed', { count: faults.length }, faults);
    // The label belongs to a variant; without one it is made up, so that two variants can be told apart.
    return { ...build, variantLabel: build.variantOf === null ? null : (build.variantLabel ?? build.name.slice(0, 80)) };
  }
}
