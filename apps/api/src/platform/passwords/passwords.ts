import { randomBytes } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { hash, parseOptions, verify } from '@node-rs/argon2';
import { Problem } from '../problems/problem.js';

/**
 * Argon2id with 46 MiB, one pass, one lane: the least that both the OWASP password sheet and the appendix of ASVS 5.0
 * take. The salt is the library's own: 16 random bytes for each hash.
 */
export const ARGON2 = { memoryCost: 47_104, timeCost: 1, parallelism: 1 } as const;

const ARGON2ID = 2;
/** Each takes 46 MiB, and a thread of the four that also read files and look up names: one of those stays free. */
const AT_ONCE = 3;
/** Who would stand behind so many others waits several seconds and is better told so. */
const WAITING = 40;

export interface Verdict {
  right: boolean;
  /** The stored hash is weaker than what is made today: hash the password again while it is known. */
  outdated: boolean;
}

const isOutdated = (stored: string): boolean => {
  const { algorithm, memoryCost, timeCost, parallelism } = parseOptions(stored);
  return Number(algorithm) !== ARGON2ID || memoryCost < ARGON2.memoryCost || timeCost < ARGON2.timeCost || parallelism < ARGON2.parallelism;
};

/** Hashes and checks passwords, a few at a time. */
@Injectable()
export class Passwords {
  private running = 0;
  private readonly queue: (() => void)[] = [];
  /** Checked in place of the hash of somebody who is not there, so that both answers take the same time. */
  private decoy: Promise<string> | null = null;

  hash(password: string): Promise<string> {
    return this.inTurn(() => hash(password, ARGON2));
  }

  /** Without a stored hash the answer is no, and as late as any other. */
  async verify(stored: string | null, password: string): Promise<Verdict> {
    const against = stored ?? (await this.standIn());
    const right = await this.inTurn(() => verify(against, password));
    return stored === null ? { right: false, outdated: false } : { right, outdated: right && isOutdated(stored) };
  }

  /** Made before the first sign-in, or that one would be late and give itself away. */
  async warmUp(): Promise<void> {
    await this.standIn();
  }

  private standIn(): Promise<string> {
    this.decoy ??= this.hash(randomBytes(24).toString('base64url'));
    return this.decoy;
  }

  private async inTurn<T>(work: () => Promise<T>): Promise<T> {
    if (this.running >= AT_ONCE) {
      if (this.queue.length >= WAITING) throw new Problem('unavailable', {}, [], { 'Retry-After': '5' });
      await new Promise<void>((resolve) => this.queue.push(resolve));
    } else this.running += 1;
    try {
      return await work();
    } finally {
      // The place goes to the next in line, or becomes free.
      const next = this.queue.shift();
      if (next) next();
      else this.running -= 1;
    }
  }
}
