// Short loads over loopback, two servers in turn.
import autocannon from 'autocannon';
import { median } from '../timing.mjs';

export const CONNECTIONS = 10;

/** One load. Anything but the wanted status is a failure of the bench, not a figure. */
export const load = async ({ url, seconds, status = 200, connections = CONNECTIONS, ...request }) => {
  const result = await autocannon({ url, duration: seconds, connections, ...request });
  const statuses = Object.entries(result.statusCodeStats ?? {}).map(([code, { count }]) => `${count} x ${code}`);
  if (result.errors > 0 || result.timeouts > 0 || !result.statusCodeStats?.[status] || statuses.length > 1)
    throw new Error(`${url}: ${statuses.join(', ')}, ${result.errors} errors, ${result.timeouts} timeouts`);
  return { perSecond: result.requests.average, p50Ms: result.latency.p50, p975Ms: result.latency.p97_5, p99Ms: result.latency.p99 };
};

/** A and B in turn (ABAB...), each with its own warm-up, so that what else the machine does hits both. */
export const inTurn = async (a, b, { rounds = 3, seconds = 4 } = {}) => {
  for (const one of [a, b]) await load({ ...one, seconds: 2 });
  const [as, bs] = [[], []];
  for (let round = 0; round < rounds; round++) {
    as.push(await load({ ...a, seconds }));
    bs.push(await load({ ...b, seconds }));
  }
  const of = (list, what) => median(list.map((one) => one[what]));
  return {
    perSecond: of(as, 'perSecond'),
    p99Ms: of(as, 'p99Ms'),
    barePerSecond: of(bs, 'perSecond'),
    bareP99Ms: of(bs, 'p99Ms'),
    // The median of the pairs: a slow moment of the machine spoils one pair and not the answer.
    ratio: median(as.map((one, at) => one.perSecond / bs[at].perSecond)),
  };
};
