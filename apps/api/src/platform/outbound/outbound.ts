import { lookup } from 'node:dns/promises';
import { isIP, type LookupFunction } from 'node:net';
import type { TLSSocket } from 'node:tls';
import { Inject, Injectable } from '@nestjs/common';
import { Agent, buildConnector, request } from 'undici';
import { CONFIG, type Config } from '../config/config.js';
import { isLoopbackAddress, isPublicAddress } from './addresses.js';
import { readTarget, type Target, type TargetRules } from './target.js';

export const OUTBOUND_LIMITS = { timeoutMs: 15_000, answerBytes: 64 * 1024 } as const;

/** Why nothing came back. None of it tells what lies behind an address that was refused. */
export type OutboundFailure = 'refused' | 'unresolved' | 'unreachable' | 'insecure' | 'timedOut';

export class OutboundError extends Error {
  constructor(
    readonly failure: OutboundFailure,
    readonly reason: string,
    cause?: unknown,
  ) {
    super(`${failure}: ${reason}`, { cause });
  }
}

export interface OutboundAnswer {
  status: number;
  /** At most 64 kB; what follows is not read. */
  body: Buffer;
  cut: boolean;
}

/** What a test puts in the place of the world. */
export interface World {
  resolve(host: string): Promise<string[]>;
  isAllowed(address: string): boolean;
  /** Certificates that are trusted beside the usual ones. */
  ca?: string;
}

const realWorld: World = {
  resolve: async (host) => (await lookup(host, { all: true, verbatim: true })).map(({ address }) => address),
  isAllowed: isPublicAddress,
};

/** Answers every question with the addresses that were checked: between check and use nothing is asked again. */
const pinned = (addresses: readonly string[]): LookupFunction =>
  ((_host: string, options: { all?: boolean }, done: (error: null, address: unknown, family?: number) => void) => {
    const [first = ''] = addresses;
    if (options.all)
      done(
        null,
        addresses.map((address) => ({ address, family: isIP(address) })),
      );
    else done(null, first, isIP(first));
  }) as LookupFunction;

const plain = (address: string | undefined): string => (address ?? '').replace(/^::ffff:(?=\d+\.)/i, '');

const isCertificateFault = (error: unknown): boolean => {
  const { code = '' } = (error ?? {}) as { code?: string };
  return /^(CERT_|ERR_TLS|UNABLE_TO_|DEPTH_ZERO|SELF_SIGNED|ERR_SSL)/.test(code);
};

/**
 * The only way from this server to an address that a user gave. The name is resolved once, every address it has must be
 * a public one, and the connection goes to one of those very addresses, under the name in the certificate. Redirects
 * are answers like any other. No proxy of the environment is used.
 */
@Injectable()
export class Outbound {
  private readonly rules: TargetRules;
  private world: World = realWorld;

  constructor(@Inject(CONFIG) config: Config) {
    this.rules = { ports: config.outboundPorts, loopback: config.outboundLoopback };
  }

  /** For tests. */
  inWorld(world: Partial<World>): this {
    this.world = { ...realWorld, ...world };
    return this;
  }

  /** Why this server would not call an address, as far as it can be told without asking anybody; null when it would. */
  objection(text: string): string | null {
    const target = readTarget(text, this.rules);
    if (typeof target === 'string') return target;
    return isIP(target.host) === 0 || this.mayCall(target, target.host) ? null : 'It is not a public address.';
  }

  async post(text: string, headers: Readonly<Record<string, string>>, body: string, timeoutMs: number = OUTBOUND_LIMITS.timeoutMs): Promise<OutboundAnswer> {
    const limit = AbortSignal.timeout(timeoutMs);
    const target = readTarget(text, this.rules);
    if (typeof target === 'string') throw new OutboundError('refused', target);
    try {
      const addresses = await withLimit(this.addressesOf(target), limit);
      return await this.send(target, addresses, { headers, body, limit });
    } catch (error) {
      if (error instanceof OutboundError) throw error;
      if (limit.aborted) throw new OutboundError('timedOut', `No whole answer within ${timeoutMs / 1000} s.`, error);
      throw new OutboundError(isCertificateFault(error) ? 'insecure' : 'unreachable', 'The connection failed.', error);
    }
  }

  private mayCall(target: Target, address: string): boolean {
    return target.loopback ? isLoopbackAddress(address) : this.world.isAllowed(address);
  }

  private async addressesOf(target: Target): Promise<string[]> {
    const found = isIP(target.host) === 0 ? await this.world.resolve(target.host).catch(() => []) : [target.host];
    if (found.length === 0) throw new OutboundError('unresolved', 'The name has no address.');
    // One address inside is enough to refuse them all: which of them is taken is not for the name's owner to choose.
    if (!found.every((address) => this.mayCall(target, address))) throw new OutboundError('refused', 'It is not a public address.');
    return found;
  }

  private async send(
    target: Target,
    addresses: string[],
    sent: { headers: Readonly<Record<string, string>>; body: string; limit: AbortSignal },
  ): Promise<OutboundAnswer> {
    const agent = new Agent({ connect: this.connector(addresses), pipelining: 0, connections: 1, maxHeaderSize: 16_384 });
    try {
      const answer = await request(target.url, { method: 'POST', headers: sent.headers, body: sent.body, signal: sent.limit, dispatcher: agent });
      return { status: answer.statusCode, ...(await firstBytes(answer.body)) };
    } finally {
      await agent.destroy();
    }
  }

  /** Connects to a checked address only, and looks at the other end once more before anything is said. */
  private connector(addresses: string[]): buildConnector.connector {
    const connect = buildConnector({
      lookup: pinned(addresses),
      timeout: OUTBOUND_LIMITS.timeoutMs,
      allowH2: false,
      maxCachedSessions: 0,
      ...(this.world.ca ? { ca: this.world.ca } : {}),
    });
    return (options, done) =>
      connect(options, (error, socket) => {
        if (error) return done(error, null);
        const other = plain((socket as TLSSocket).remoteAddress);
        if (addresses.some((address) => plain(address) === other)) return done(null, socket);
        socket.destroy();
        done(new OutboundError('refused', 'The connection led somewhere else.'), null);
      });
  }
}

const withLimit = <T>(work: Promise<T>, limit: AbortSignal): Promise<T> =>
  new Promise((resolve, reject) => {
    const onLimit = (): void => reject(new Error('time is over'));
    if (limit.aborted) onLimit();
    limit.addEventListener('abort', onLimit, { once: true });
    work.then(resolve, reject).finally(() => limit.removeEventListener('abort', onLimit));
  });

const firstBytes = async (body: AsyncIterable<Buffer>): Promise<{ body: Buffer; cut: boolean }> => {
  const chunks: Buffer[] = [];
  let length = 0;
  for await (const chunk of body) {
    chunks.push(chunk);
    length += chunk.length;
    // Leaving the loop destroys the stream, and with it the connection.
    if (length > OUTBOUND_LIMITS.answerBytes) break;
  }
  return { body: Buffer.concat(chunks).subarray(0, OUTBOUND_LIMITS.answerBytes), cut: length > OUTBOUND_LIMITS.answerBytes };
};
