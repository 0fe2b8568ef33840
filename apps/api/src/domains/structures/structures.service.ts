import { Injectable } from '@nestjs/common';
import type { Request } from 'express';
import type { Actor } from '../../platform/access/actor.js';
import { audit } from '../../platform/database/audit.js';
import { Database } from '../../platform/database/database.js';
import { newId } from '../../platform/database/ids.js';
import { assertMatch } from '../../platform/http/etag.js';
import { afterOf, toPage, type Page } from '../../platform/http/page.js';
import { collectAsTyped, type AsTyped } from '../../platform/http/quantity-field.js';
import type { Reply } from '../../platform/http/reply.js';
import { Idempotency } from '../../platform/idempotency/idempotency.js';
import { fail, type FieldFault } from '../../platform/problems/problem.js';
import { StalenessDoor } from '../plans/staleness.door.js';
import { archive, made, must, mustBeFreeToShare, mustBeNewest, mustNotBeArchived, nameFree, patched, shown } from '../shared/change.js';
import { ownershipOf } from '../shared/resource.js';
import type { ListQuery } from '../shared/queries.dto.js';
import { shelterOf, StructureDto, toRequest, toResponse, type StructureResponse } from './structures.dto.js';
import { StructuresRepository, type StructureFields } from './structures.repository.js';

const WHAT = 'structure';

@Injectable()
export class StructuresService {
  constructor(
    private readonly database: Database,
    private readonly idempotency: Idempotency,
    private readonly structures: StructuresRepository,
    private readonly staleness: StalenessDoor,
  ) {}

  create(actor: Actor, request: Request, body: StructureDto): Promise<Reply> {
    return this.idempotency.creating(actor, request, async (db) => {
      const id = newId();
      const fields = fieldsOf(body, id, collectAsTyped(request.body, body));
      const structure = await nameFree(WHAT, fields.name, this.structures.insert(db, ownershipOf(actor), id, fields));
      await audit(db, actor, { action: 'structure.create', objectType: WHAT, objectId: id, after: structure });
      return made('/v1/structures', toResponse(structure));
    });
  }

  async list(actor: Actor, query: ListQuery): Promise<Page<StructureResponse>> {
    const step = { after: afterOf(query), take: query.limit + 1 };
    const structures = await this.database.readSnapshot(actor, (db) => this.structures.list(db, { archived: query.archived ?? false }, step));
    return toPage(structures.map(toResponse), query.limit, (structure) => structure.id, query);
  }

  async find(actor: Actor, id: string): Promise<Reply> {
    return shown(toResponse(must(await this.database.readSnapshot(actor, (db) => this.structures.find(db, id)), WHAT)));
  }

  change(actor: Actor, id: string, ifMatch: string | undefined, patch: unknown): Promise<Reply> {
    return this.database.inTransaction(actor, async (db) => {
      const was = must(await this.structures.find(db, id), WHAT);
      assertMatch(ifMatch, was);
      mustNotBeArchived(was, WHAT);
      const { dto, asTyped } = patched(StructureDto, toRequest(was), was.asTyped, patch);
      mustBeFreeToShare(actor, was, dto.shared ?? false);
      const fields = fieldsOf(dto, id, asTyped);
      const now = mustBeNewest(await nameFree(WHAT, fields.name, this.structures.update(db, was, fields)));
      await audit(db, actor, { action: 'structure.update', objectType: WHAT, objectId: id, before: was, after: now });
      await this.staleness.structureChanged(db, actor, id);
      return shown(toResponse(now));
    });
  }

  setArchived(actor: Actor, id: string, ifMatch: string | undefined, archived: boolean): Promise<Reply> {
    return this.database.inTransaction(actor, async (db) =>
      shown(toResponse(await archive(db, actor, this.structures, { what: WHAT, id, ifMatch, archived }))),
    );
  }
}

const fieldsOf = (body: StructureDto, id: string, asTyped: AsTyped): StructureFields => {
  const contradictions = contradictionsOf(body);
  if (contradictions.length > 0) fail('inputs-contradict', { reason: contradictions.map(({ detail }) => detail).join(' ') }, contradictions);
  return {
    shared: body.shared ?? false,
    name: body.name ?? `${body.kind} ${id.slice(-6)}`,
    ...(JSON.parse(JSON.stringify(shelterOf(body))) as ReturnType<typeof shelterOf>),
    asTyped,
  };
};

// Only what no drawing could show is refused here. A door that is too tall, or rafters that do not close, are for the
// plan to tell, with the shortfall and the ways out.
const contradictionsOf = (body: StructureDto): FieldFault[] => {
  const faults: FieldFault[] = [];
  const add = (pointer: string, code: string, detail: string): void => void faults.push({ pointer, code, detail });
  if (body.eaveM >= body.ridgeM) add('/eaveM', 'eave-not-below-ridge', 'The eave must be lower than the ridge.');
  if (body.bowsAtM.some((at, i) => i > 0 && at <= (body.bowsAtM[i - 1] ?? 0)))
    add('/bowsAtM', 'not-rising', 'The stations of the bows must rise from front to back.');
  if (body.bowsAtM.some((at) => at > body.lengthM + 0.001)) add('/bowsAtM', 'beyond-the-end', 'A bow stands beyond the length of the shelter.');
  if (new Set(body.openings.map(({ openingId }) => openingId)).size < body.openings.length) add('/openings', 'repeated', 'Two openings have the same id.');
  if (body.kind === 'leanTo' && body.hostWall === null) add('/hostWall', 'required', 'A lean-to needs the wall that it leans on.');
  return faults;
};
