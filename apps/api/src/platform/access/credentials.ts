import { Inject, Injectable } from '@nestjs/common';
import type pg from 'pg';
import type { Db } from '../database/database.js';
import { newId } from '../database/ids.js';
import { isReadOnly, POOL } from '../database/pool.js';
import { contextOrNull } from '../http/context.js';
import { NIL_ID, type Actor } from './actor.js';
import { isWellFormedKey, prefixOf, sameDigest, sha256, type NewKey } from './key.js';
import { isRole } from './roles.js';
import { isScope, type Scope } from './scopes.js';

const LAST_USED_STEP_MS = 60_000;

interface CredentialRow {
  garden_id: string;
  key_id: string;
  sha256: Buffer;
  scopes: string[];
  expires_at: Date | null;
  revoked_at: Date | null;
  last_used_at: Date | null;
  created_by_member_id: string | null;
  /** What the member who made the key is now. */
  maker_roles: string[] | null;
}

/** Finds who holds a key. The one question that is asked before the garden is known. */
@Injectable()
export class Credentials {
  constructor(@Inject(POOL) private readonly pool: pg.Pool) {}

  async actorOf(key: string, now = new Date()): Promise<Actor | null> {
    if (!isWellFormedKey(key)) return null;
    const { rows } = await this.pool.query<CredentialRow>({ name: 'find-credential', text: 'SELECT * FROM find_credential($1)', values: [prefixOf(key)] });
    const row = rows[0];
    if (!row || !sameDigest(sha256(key), row.sha256)) return null;
    if (row.revoked_at || (row.expires_at && row.expires_at <= now)) return null;
    if (!row.last_used_at || now.getTime() - row.last_used_at.getTime() > LAST_USED_STEP_MS) await this.touch(row.garden_id, row.key_id);
    return {
      gardenId: row.garden_id,
      kind: 'key',
      credentialId: row.key_id,
      principalId: row.created_by_member_id ?? row.key_id,
      keyId: row.key_id,
      accountId: null,
      memberId: null,
      roles: (row.maker_roles ?? []).filter(isRole),
      scopes: row.scopes.filter(isScope),
      reach: 'all',
    };
  }

  /** Notes the use of a key, at most once a minute, so that reading stays cheap. */
  private async touch(gardenId: string, keyId: string): Promise<void> {
    const client = await this.pool.connect();
    try {
      await client.query('BEGIN');
      await client.query("SELECT set_config('app.garden_id', $1, true)", [gardenId]);
      await client.query("UPDATE api_keys SET last_used_at = now() WHERE id = $1 AND (last_used_at IS NULL OR last_used_at < now() - interval '1 minute')", [
        keyId,
      ]);
      await client.query('COMMIT');
      client.release();
    } catch (error) {
      client.release(true);
      // A database that takes no changes for now still lets people read.
      if (!isReadOnly(error)) throw error;
    }
  }
}

export interface NewGarden {
  id: string;
  name: string;
  locale: string;
  currency: string;
  unitSystem: 'metric' | 'us';
  invented: boolean;
  coordinatorLimitMinor?: number | null;
  treasurerLimitMinor?: number | null;
}

/** Who gets the new garden: a key that is shown once, or a person who becomes its first coordinator. */
export type Founder = { key: NewKey; name: string; scopes: readonly Scope[] } | { accountId: string; name: string };

/** Makes a garden with its first key or its first member. Call it inside the founder's transaction. */
export const createGarden = async (db: Db, garden: NewGarden, founder: Founder): Promise<{ founderId: string }> => {
  const founderId = newId();
  const { id, name, locale, currency, unitSystem, invented } = garden;
  const requestId = contextOrNull()?.requestId ?? null;
  await db.$executeRaw`SELECT create_garden(${id}::uuid, ${name}, ${locale}, ${currency}, ${unitSystem}, ${invented}, ${newId()}::uuid, ${requestId}::text)`;
  await db.$executeRaw`SELECT set_config('app.garden_id', ${id}, true)`;
  const { coordinatorLimitMinor = null, treasurerLimitMinor = null } = garden;
  if (coordinatorLimitMinor !== null || treasurerLimitMinor !== null)
    await db.garden.updateMany({ where: { id }, data: { coordinatorLimitMinor, treasurerLimitMinor } });
  if ('key' in founder) {
    const { prefix, sha256: digest } = founder.key;
    const data = { gardenId: id, id: founderId, name: founder.name, prefix, sha256: new Uint8Array(digest), scopes: [...founder.scopes] };
    await db.apiKey.create({ data, select: { id: true } });
  } else {
    const data = { gardenId: id, id: founderId, accountId: founder.accountId, name: founder.name, roles: ['coordinator'] };
    await db.member.create({ data, select: { id: true } });
  }
  await db.$executeRaw`SELECT set_config('app.garden_id', ${NIL_ID}, true)`;
  return { founderId };
};
