import { Module, RequestMethod, type MiddlewareConsumer, type NestModule } from '@nestjs/common';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { NextFunction, Request, Response } from 'express';
import { SCOPES } from '../../apps/api/src/platform/access/scopes.js';
import { PublishedDocument } from '../../apps/api/src/platform/http/docs.controller.js';
import { startApi, type TestApi } from '../support/api-app.js';
import { contractOf, isJson, type Contract, type Json } from '../support/contract.js';
import { makeWorld, type Ids } from '../support/contract-world.js';
import type { Check, Finding } from '../support/fuzz/checks.js';
import { Fuzzer } from '../support/fuzz/fuzzer.js';

type Saboteur = (request: Request, response: Response, next: NextFunction) => void;

/** The body and the headers of an answer are changed on their way out. */
const answering = (response: Response, change: (body: Json) => unknown): void => {
  const send = response.send.bind(response);
  response.send = (text: unknown) => {
    if (typeof text !== 'string' || response.statusCode >= 300) return send(text);
    const body: unknown = JSON.parse(text);
    return send(JSON.stringify(isJson(body) ? change(body) : body));
  };
};

let key = '';
const kept = new Map<string, { body: Json; tag: string }>();

interface Sabotage {
  /** The operations that are broken, and what must be found of it. */
  breaks: readonly string[];
  finds: readonly Check[];
  does: Saboteur;
}

/** Five handlers broken on purpose, each in a way that a mistake in code could break it. */
const SABOTAGES: Readonly<Record<string, Sabotage>> = {
  'access is skipped': {
    breaks: ['listPrices'],
    finds: ['access not ignored'],
    does: (request, _response, next) => {
      if (request.method === 'GET' && request.path === '/v1/prices') request.headers.authorization = `Bearer ${key}`;
      next();
    },
  },
  'a field has another type': {
    breaks: ['getStructure'],
    finds: ['answer fits its schema'],
    does: (request, response, next) => {
      if (request.method === 'GET' && /^\/v1\/structures\/[^/]+$/.test(request.path))
        answering(response, (body) => ({ ...body, widthM: String(body['widthM']) }));
      next();
    },
  },
  'the server breaks on some values': {
    breaks: ['createPrice'],
    finds: ['no server error'],
    does: (request, _response, next) => {
      const amount = (request.body as Json | undefined)?.['packAmount'];
      if (request.method === 'POST' && request.path === '/v1/prices' && typeof amount === 'number' && amount > 1000) throw new Error('an overflow, say');
      next();
    },
  },
  'a field is missing': {
    breaks: ['getStockItem'],
    finds: ['answer fits its schema'],
    does: (request, response, next) => {
      if (request.method === 'GET' && /^\/v1\/stock\/[^/]+$/.test(request.path)) answering(response, ({ grade: _gone, ...rest }) => rest);
      next();
    },
  },
  'an old state is read': {
    breaks: ['updateSite'],
    finds: ['created is readable'],
    does: (request, response, next) => {
      if (request.method === 'GET' && /^\/v1\/sites\/[^/]+$/.test(request.path))
        answering(response, (body) => {
          const first = kept.get(request.path) ?? { body, tag: '' };
          kept.set(request.path, first);
          return first.body;
        });
      next();
    },
  },
};

let active: string | null = null;

@Module({})
class SabotageModule implements NestModule {
  configure(consumer: MiddlewareConsumer): void {
    consumer
      .apply((request: Request, response: Response, next: NextFunction) => {
        const sabotage = active === null ? undefined : SABOTAGES[active];
        if (sabotage) sabotage.does(request, response, next);
        else next();
      })
      .forRoutes({ path: '{*path}', method: RequestMethod.ALL });
  }
}

let api: TestApi;
let contract: Contract;
let ids: Ids;

beforeAll(async () => {
  api = await startApi({ jobs: true, extra: [SabotageModule] });
  contract = contractOf(api.get(PublishedDocument).text);
  ({ ids } = await makeWorld(api, contract.of));
  key = await api.keyOf(ids['garden'] ?? '', SCOPES);
}, 180_000);
afterAll(() => api.stop());

const fuzz = async (only: readonly string[], seed: number): Promise<Finding[]> =>
  (await new Fuzzer(api, contract, { ids, key }, { cases: 60, seed, only }).run()).findings.all;

describe('the fuzz is worth something', () => {
  it.each(Object.keys(SABOTAGES))('A8: it finds that %s', async (name) => {
    const { breaks, finds } = SABOTAGES[name] as Sabotage;
    active = null;
    expect(await fuzz(breaks, 5)).toEqual([]);
    active = name;
    kept.clear();
    const found = await fuzz(breaks, 5);
    active = null;
    expect(found.map(({ operation }) => operation)).toEqual(expect.arrayContaining([...breaks]));
    expect(found.map(({ check }) => check)).toEqual(expect.arrayContaining([...finds]));
  });

  it('A8: there are five ways to break a handler', () => {
    expect(Object.keys(SABOTAGES)).toHaveLength(5);
  });
});
