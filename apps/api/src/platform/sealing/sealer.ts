import { createCipheriv, createDecipheriv, hkdfSync, randomBytes } from 'node:crypto';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Inject, Injectable } from '@nestjs/common';
import { CONFIG, type Config } from '../config/config.js';

const IV_LENGTH = 12;
const TAG_LENGTH = 16;

/** The secret of the data folder, made at its first use. Of two processes that begin together one makes it. */
const secretOf = (dir: string): string => {
  const file = join(dir, 'account-secret');
  mkdirSync(dir, { recursive: true });
  try {
    writeFileSync(file, randomBytes(32).toString('base64url'), { flag: 'wx', mode: 0o600 });
  } catch (error) {
    if ((error as { code?: string }).code !== 'EEXIST') throw error;
  }
  return readFileSync(file, 'utf8');
};

/**
 * Seals what the database keeps and must not know: AES-256-GCM under a key of its own for each purpose (HKDF-SHA-256).
 * What was sealed for one row does not open in the place of another: the row's id is bound in.
 */
@Injectable()
export class Sealer {
  private secret: string | null;

  constructor(@Inject(CONFIG) private readonly config: Config) {
    this.secret = config.accountSecret;
  }

  seal(purpose: string, id: string, text: string): Buffer {
    const iv = randomBytes(IV_LENGTH);
    const cipher = createCipheriv('aes-256-gcm', this.keyFor(purpose), iv, { authTagLength: TAG_LENGTH }).setAAD(Buffer.from(id));
    const sealed = Buffer.concat([cipher.update(text, 'utf8'), cipher.final()]);
    return Buffer.concat([iv, cipher.getAuthTag(), sealed]);
  }

  /** Throws when it was sealed with another secret, for another purpose or another row, or was changed. */
  open(purpose: string, id: string, bytes: Uint8Array): string {
    const decipher = createDecipheriv('aes-256-gcm', this.keyFor(purpose), bytes.subarray(0, IV_LENGTH), { authTagLength: TAG_LENGTH });
    decipher.setAAD(Buffer.from(id)).setAuthTag(bytes.subarray(IV_LENGTH, IV_LENGTH + TAG_LENGTH));
    return Buffer.concat([decipher.update(bytes.subarray(IV_LENGTH + TAG_LENGTH)), decipher.final()]).toString('utf8');
  }

  private keyFor(purpose: string): Buffer {
    this.secret ??= secretOf(this.config.dataDir);
    return Buffer.from(hkdfSync('sha256', this.secret, 'lathwork', purpose, 32));
  }
}
