import { randomUUID } from 'node:crypto';
import type { Server } from 'node:http';
import supertest, { type Test } from 'supertest';

export const MERGE_PATCH = 'application/merge-patch+json';

/** Speaks to the API as one key or one signed-in person, the way any program would. */
export class HttpClient {
  constructor(
    private readonly server: Server,
    private readonly key: string | null,
    /** The garden that a signed-in person means. */
    private readonly gardenId: string | null = null,
  ) {}

  request(method: 'get' | 'post' | 'put' | 'patch' | 'delete' | 'head' | 'options', path: string): Test {
    const test = supertest(this.server)[method](path);
    if (this.gardenId !== null) test.set('Lathwork-Garden', this.gardenId);
    return this.key === null ? test : test.set('Authorization', `Bearer ${this.key}`);
  }

  get(path: string): Test {
    return this.request('get', path);
  }

  /** A creating request, under a new idempotency key unless one is given. */
  post(path: string, body: object = {}, idempotencyKey: string = randomUUID()): Test {
    return this.request('post', path).set('Idempotency-Key', idempotencyKey).send(body);
  }

  patch(path: string, etag: string, body: object): Test {
    return this.request('patch', path).set('If-Match', etag).set('Content-Type', MERGE_PATCH).send(JSON.stringify(body));
  }
}
