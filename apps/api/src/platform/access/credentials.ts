import { Inject, Injectable } from '@nestjs/common';
import type pg from 'pg';
import type { Db } from '../database/database.js';
import { newId } from '../database/ids.js';
import { POOL } from '../database/pool.js';
import { contextOrNull } from '../http/context.js';
import type { Actor } from './actor.js';
import { isWellFormedKey, prefixOf, sameDigest, sha256, type NewKey } from './key.js';
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
    return { gardenId: row.garden_id, keyId: row.key_id, scopes: row.scopes.filter(isScope) };
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
      throw error;
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
}

/** Makes a garden with its first key, on behalf of the operator. Call it inside the operator's transaction. */
export const createGarden = async (db: Db, garden: NewGarden, first: { name: string; scopes: readonly Scope[]; key: NewKey }): Promise<{ keyId: string }> => {
  const keyId = newId();
  const { id, name, locale, currency, unitSystem, invented } = garden;
  const scopes = [...first.scopes];
  const digest = new Uint8Array(first.key.sha256);
  await db.$executeRaw`SELECT create_garden(${id}::uuid, ${name}, ${locale}, ${currency}, ${unitSystem}, ${invented},
    ${keyId}::uuid, ${first.name}, ${first.key.prefix}, ${digest}, ${scopes}, ${newId()}::uuid, ${contextOrNull()?.requestId ?? null}::text)`;
  return { keyId };
};
