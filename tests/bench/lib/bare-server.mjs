// What the product is compared with: the fastest common server that does the same SQL in the same kind of transaction
// and nothing besides. It asks for no key, counts no permits, checks no body and writes no log.
// Started by api-paths.bench.mjs as a process of its own: `node bare-server.mjs`, told everything by its first message.
import { createHash, randomUUID } from 'node:crypto';
import fastify from 'fastify';
import pg from 'pg';

const SETTINGS = `SELECT set_config('app.garden_id', $1, true), set_config('app.account_id', '', true),
  set_config('app.own_member_id', '', true), set_config('app.writes_shared', 'off', true)`;

const serve = async ({ url, garden, statements, pool: max }) => {
  const pool = new pg.Pool({ connectionString: url, max });
  const app = fastify({ logger: false });

  const transaction = async (begin, work) => {
    const client = await pool.connect();
    try {
      await client.query(begin);
      await client.query(SETTINGS, [garden]);
      const result = await work(client);
      await client.query('COMMIT');
      return result;
    } catch (error) {
      await client.query('ROLLBACK');
      throw error;
    } finally {
      client.release();
    }
  };
  const READS = 'BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY';
  const named = (name, { text, values }, id) => ({ ...(name ? { name } : {}), text, values: values.map((value) => (value === '$id' ? id : value)) });

  app.get('/livez', () => ({ status: 'ok' }));
  for (const prefix of ['', '/prepared']) {
    const nameOf = (what) => (prefix ? what : null);
    app.get(`${prefix}/plan/:id`, async (request) => {
      const { rows } = await transaction(READS, (client) => client.query(named(nameOf('plan'), statements.plan, request.params.id)));
      return rows[0];
    });
    app.get(`${prefix}/result/:id`, async (request) => {
      const { rows } = await transaction(READS, (client) => client.query(named(nameOf('result'), statements.result, request.params.id)));
      return rows[0];
    });
    app.get(`${prefix}/plans`, async () => {
      const { rows } = await transaction(READS, (client) => client.query(named(nameOf('plans'), statements.plans)));
      return { items: rows.slice(0, 100) };
    });
    app.post(`${prefix}/structure`, async (request, reply) => {
      const { name, kind, shared = false, ...details } = request.body;
      const id = randomUUID();
      const made = await transaction('BEGIN', async (client) => {
        const { rows } = await client.query({
          ...(prefix ? { name: 'insert' } : {}),
          text: `INSERT INTO structures (garden_id, id, name, kind, details, shared) VALUES ($1, $2, $3, $4, $5, $6)
            RETURNING id, name, kind, details, shared, owner_member_id, version, created_at, updated_at, archived_at`,
          values: [garden, id, `${name} ${id}`, kind, details, shared],
        });
        await client.query({
          ...(prefix ? { name: 'audit' } : {}),
          text: `INSERT INTO audit_entries (garden_id, id, action, object_type, object_id, after_sha256, request_id) VALUES ($1, $2, $3, $4, $5, $6, $7)`,
          values: [garden, randomUUID(), 'structure.create', 'structure', id, createHash('sha256').update(JSON.stringify(rows[0])).digest('hex'), randomUUID()],
        });
        return rows[0];
      });
      return reply.status(201).send(made);
    });
  }
  const address = await app.listen({ host: '127.0.0.1', port: 0 });
  process.send({ address });
};

process.once('message', (told) => void serve(told));
process.on('disconnect', () => process.exit(0));
