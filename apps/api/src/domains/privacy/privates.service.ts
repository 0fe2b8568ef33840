import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { audit } from '../../platform/database/audit.js';
import { Database } from '../../platform/database/database.js';
import { assertMatch } from '../../platform/http/etag.js';
import type { Reply } from '../../platform/http/reply.js';
import { fail } from '../../platform/problems/problem.js';
import { must, patched, shown } from '../shared/change.js';
import { ConsentsRead } from './consents.read.js';
import { selfOf } from './consents.service.js';
import { PrivateDetailsDto, toDetails, toPrivateResponse, type SharedDetails } from './privates.dto.js';
import { PrivatesRepository } from './privates.repository.js';

@Injectable()
export class PrivatesService {
  constructor(
    private readonly database: Database,
    private readonly privates: PrivatesRepository,
    private readonly consents: ConsentsRead,
  ) {}

  async show(actor: Actor): Promise<Reply> {
    return shown(toPrivateResponse(await this.database.readSnapshot(actor, (db) => this.privates.get(db, actor.gardenId, selfOf(actor)))));
  }

  change(actor: Actor, ifMatch: string | undefined, patch: unknown): Promise<Reply> {
    const memberId = selfOf(actor);
    return this.database.inTransaction(actor, async (db) => {
      const was = await this.privates.get(db, actor.gardenId, memberId);
      assertMatch(ifMatch, was);
      const { dto } = patched(PrivateDetailsDto, toDetails(was), {}, patch);
      if (!(await this.privates.put(db, actor.gardenId, memberId, was.version, toDetails(dto)))) fail('version-stale');
      // Not even a hash of the contents: what few would write can be guessed from its hash.
      await audit(db, actor, { action: 'member.private-details', objectType: 'member', objectId: memberId });
      return shown(toPrivateResponse({ version: was.version + 1, ...toDetails(dto) }));
    });
  }

  async remove(actor: Actor): Promise<void> {
    const memberId = selfOf(actor);
    await this.database.inTransaction(actor, async (db) => {
      if (await this.privates.remove(db, memberId)) await audit(db, actor, { action: 'member.private-details', objectType: 'member', objectId: memberId });
    });
  }

  /** Of another member: what that member has agreed to share with somebody who is what the asker is here. */
  shared(actor: Actor, memberId: string): Promise<SharedDetails> {
    return this.database.inTransaction(actor, async (db) => {
      must((await this.privates.isMember(db, memberId)) || null, 'member');
      const agreed = async (purpose: 'contactSharing' | 'healthToLeader' | 'photoRelease'): Promise<boolean> =>
        (await this.consents.givenBy(db, actor, [memberId], purpose)).has(memberId);
      const [contact, health, release] = [await agreed('contactSharing'), await agreed('healthToLeader'), await agreed('photoRelease')];
      const details = await this.privates.get(db, actor.gardenId, memberId);
      const healthNotes = health && actor.roles.includes('safetyLead') ? details.healthNotes : null;
      // Who read somebody's health notes can be asked later.
      if (healthNotes !== null) await audit(db, actor, { action: 'member.health-notes-read', objectType: 'member', objectId: memberId });
      return { memberId, phone: contact ? details.phone : null, healthNotes, photoWish: details.photoWish, photoRelease: release };
    });
  }
}
