import { Inject, Injectable } from '@nestjs/common';
import type { Request } from 'express';
import type { Actor } from '../../platform/access/actor.js';
import { createGarden } from '../../platform/access/credentials.js';
import { makeKey } from '../../platform/access/key.js';
import { givableScopes, makerOf } from '../../platform/access/key-scopes.js';
import { SCOPES } from '../../platform/access/scopes.js';
import { CONFIG, type Config } from '../../platform/config/config.js';
import { audit } from '../../platform/database/audit.js';
import { Database, type Db } from '../../platform/database/database.js';
import { newId } from '../../platform/database/ids.js';
import { assertMatch, etagOf, etagOfParts } from '../../platform/http/etag.js';
import { afterOf, toPage, type Page, type PageQuery } from '../../platform/http/page.js';
import { found, type Reply } from '../../platform/http/reply.js';
import { Idempotency } from '../../platform/idempotency/idempotency.js';
import { fail } from '../../platform/problems/problem.js';
import { must, mustBeNewest, patched, shown } from '../shared/change.js';
import { GardenSettingsDto, toFields, toKeyResponse, toNewKey, toResponse, toSettings, type GardenDto, type KeyDto } from './gardens.dto.js';
import { GardensRepository, type KeyRecord } from './gardens.repository.js';

/** Whose the first key is taken to be. It is printed as who drew a plan. */
const FIRST_KEY = 'coordinator’s key';

@Injectable()
export class GardensService {
  constructor(
    private readonly database: Database,
    private readonly idempotency: Idempotency,
    private readonly gardens: GardensRepository,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  /** The operator makes a garden and hands its first key to whoever will keep it; a person becomes its coordinator. */
  create(actor: Actor, request: Request, body: GardenDto): Promise<Reply> {
    return this.idempotency.creating(actor, request, async (db) => {
      const garden = { id: newId(), ...toFields(body) };
      const key = actor.kind === 'operator' ? makeKey() : null;
      const name = body.keyName ?? FIRST_KEY;
      const { founderId } = await createGarden(db, garden, key ? { key, name, scopes: SCOPES } : await this.founder(db, actor));
      const now = new Date().toISOString();
      const kept = { id: garden.id, version: 1, createdAt: now, updatedAt: now, archivedAt: null };
      return {
        status: 201,
        body: { garden: { ...kept, ...toFields(body) }, key: key ? toNewKey(founderId, name, key, now) : null },
        location: '/v1/gardens/current',
        etag: etagOf(kept),
        secret: true,
      };
    });
  }

  private async founder(db: Db, actor: Actor): Promise<{ accountId: string; name: string }> {
    const person = must(actor.accountId === null ? null : await this.gardens.founderOf(db, actor.accountId), 'account');
    if (!person.confirmed) fail('email-unconfirmed');
    if (person.gardenCount >= this.config.gardensPerAccount) fail('too-many-gardens', { limit: this.config.gardensPerAccount });
    return { accountId: person.accountId, name: person.name };
  }

  async current(actor: Actor): Promise<Reply> {
    return shown(toResponse(must(await this.database.readSnapshot(actor, (db) => this.gardens.current(db, actor.gardenId)), 'garden')));
  }

  change(actor: Actor, ifMatch: string | undefined, patch: unknown): Promise<Reply> {
    return this.database.inTransaction(actor, async (db) => {
      const was = must(await this.gardens.current(db, actor.gardenId), 'garden');
      assertMatch(ifMatch, was);
      const { dto } = patched(GardenSettingsDto, toSettings(was), {}, patch);
      const now = mustBeNewest(await this.gardens.update(db, was, toSettings(dto)));
      await audit(db, actor, { action: 'garden.update', objectType: 'garden', objectId: was.id, before: was, after: now });
      return shown(toResponse(now));
    });
  }

  createKey(actor: Actor, request: Request, body: KeyDto): Promise<Reply> {
    return this.idempotency.creating(actor, request, async (db) => {
      if (body.scopes.length === 0)
        fail('validation-failed', { count: 1 }, [
          { pointer: '/scopes', code: 'empty', detail: 'A key without a scope opens nothing.', remedy: 'Give it at least one scope.' },
        ]);
      const givable = givableScopes(actor);
      const beyond = body.scopes.filter((scope) => !givable.includes(scope));
      if (beyond.length > 0) fail('scope-beyond-own', { scopes: beyond.join(', ') });
      const made = makeKey();
      const expiresAt = body.expiresOn ? new Date(`${body.expiresOn}T00:00:00Z`) : null;
      const key = await this.gardens.insertKey(db, actor.gardenId, newId(), made, {
        name: body.name,
        scopes: [...new Set(body.scopes)],
        expiresAt,
        createdByMemberId: makerOf(actor),
      });
      await audit(db, actor, { action: 'key.create', objectType: 'key', objectId: key.id, after: { name: key.name, scopes: key.scopes } });
      return { status: 201, body: { ...toKeyResponse(key), key: made.key }, location: `/v1/keys/${key.id}`, etag: etagOfParts(key.id), secret: true };
    });
  }

  async listKeys(actor: Actor, query: PageQuery): Promise<Page<KeyRecord>> {
    const step = { after: afterOf(query), take: query.limit + 1 };
    const keys = await this.database.readSnapshot(actor, (db) => this.gardens.listKeys(db, step));
    return toPage(keys.map(toKeyResponse), query.limit, (key) => key.id, query);
  }

  async findKey(actor: Actor, id: string): Promise<Reply> {
    const key = must(await this.database.readSnapshot(actor, (db) => this.gardens.findKey(db, id)), 'key');
    return found(toKeyResponse(key), etagOfParts(key.id, key.revokedAt ?? 'open', key.lastUsedAt ?? 'unused'));
  }

  /** A key is taken back, not erased: what it did stays in the history. */
  async revokeKey(actor: Actor, id: string): Promise<void> {
    await this.database.inTransaction(actor, async (db) => {
      const key = must(await this.gardens.findKey(db, id), 'key');
      if (await this.gardens.revokeKey(db, id)) await audit(db, actor, { action: 'key.revoke', objectType: 'key', objectId: id, before: { name: key.name } });
    });
  }
}
