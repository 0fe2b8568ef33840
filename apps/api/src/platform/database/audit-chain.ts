import { createHash } from 'node:crypto';
import type pg from 'pg';

/** One entry of a garden's history with its link, as stored. `seq` is null where an entry was never linked. */
export interface ChainRow {
  seq: string | null;
  link_sha256: string | null;
  garden_id: string;
  id: string;
  at: Date;
  key_id: string | null;
  member_id: string | null;
  action: string;
  object_type: string;
  object_id: string;
  before_sha256: string | null;
  after_sha256: string | null;
  request_id: string | null;
}

export interface ChainFault {
  gardenId: string;
  /** Place in the chain, or null for an entry that stands outside of it. */
  seq: number | null;
  entryId: string | null;
  reason: 'changed' | 'missing' | 'unlinked';
}

const START = '0'.repeat(64);

/** The hash of one entry, built here from the stored fields and not by the function that the database used. */
export const linkSha256 = (former: string, seq: number, row: ChainRow): string =>
  createHash('sha256')
    .update(
      [
        former,
        seq,
        row.garden_id,
        row.id,
        row.at.toISOString(),
        row.key_id ?? '-',
        row.member_id ?? '-',
        row.action,
        row.object_type,
        row.object_id,
        row.before_sha256 ?? '-',
        row.after_sha256 ?? '-',
        row.request_id ?? '-',
      ].join('\n'),
    )
    .digest('hex');

/** Walks one garden's chain in the order of its links. Gives every place where it does not hold. */
export const chainFaults = (gardenId: string, rows: readonly ChainRow[]): ChainFault[] => {
  const faults: ChainFault[] = [];
  let former = START;
  let expected = 1;
  for (const row of rows) {
    if (row.seq === null || row.link_sha256 === null) {
      faults.push({ gardenId, seq: null, entryId: row.id, reason: 'unlinked' });
      continue;
    }
    const seq = Number(row.seq);
    for (; expected < seq; expected += 1) faults.push({ gardenId, seq: expected, entryId: null, reason: 'missing' });
    if (linkSha256(former, seq, row) !== row.link_sha256) faults.push({ gardenId, seq, entryId: row.id, reason: 'changed' });
    // Goes on from what is stored, so that one changed entry is told once and not as a fault of all that follow.
    former = row.link_sha256;
    expected = seq + 1;
  }
  return faults;
};

const ROWS = `SELECT l.seq, l.sha256 AS link_sha256, e.* FROM audit_entries e LEFT JOIN audit_links l ON l.garden_id = e.garden_id AND l.entry_id = e.id
  WHERE e.garden_id = $1 ORDER BY l.seq NULLS LAST, e.id`;

export interface ChainReport {
  gardens: number;
  entries: number;
  faults: ChainFault[];
}

/** Verifies the history of every garden, as the owner of the tables, who enters each garden in turn. Changes nothing. */
export const verifyChains = async (owner: pg.Client): Promise<ChainReport> => {
  const { rows: gardens } = await owner.query<{ id: string }>('SELECT id FROM gardens ORDER BY id');
  const report: ChainReport = { gardens: gardens.length, entries: 0, faults: [] };
  for (const { id } of gardens) {
    await owner.query('BEGIN READ ONLY');
    await owner.query("SELECT set_config('app.garden_id', $1, true)", [id]);
    const { rows } = await owner.query<ChainRow>(ROWS, [id]);
    await owner.query('COMMIT');
    report.entries += rows.length;
    report.faults.push(...chainFaults(id, rows));
  }
  return report;
};
