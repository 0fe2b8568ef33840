// npm run audit:verify     Walks the history of every garden and says whether each chain holds.
// Reads the database of DATABASE_OWNER_URL, or the embedded one. Exit 0: every chain holds; 1: not, with the places.
import pg from 'pg';
import { setUp } from './setup.mjs';

await setUp();
const { readConfig } = await import('../apps/api/dist/platform/config/config.js');
const { startEmbedded } = await import('../apps/api/dist/platform/database/embedded.js');
const { verifyChains } = await import('../apps/api/dist/platform/database/audit-chain.js');

// Verifying needs no report app, so its secret is not asked for.
process.env.REPORT_SECRET ??= 'not used by this command: 0123456789';
const config = readConfig();
const embedded = config.database ? null : await startEmbedded({ dir: config.embeddedDir, durable: config.embeddedDurable });
const client = new pg.Client({ connectionString: config.database?.ownerUrl ?? embedded.ownerUrl });
let report;
try {
  await client.connect();
  report = await verifyChains(client);
} finally {
  await client.end().catch(() => undefined);
  await embedded?.stop();
}
const WORDS = { changed: 'was changed, or something before it', missing: 'is missing', unlinked: 'was never linked' };
for (const { gardenId, seq, entryId, reason } of report.faults)
  console.error(`garden ${gardenId}: entry ${seq ?? ''}${entryId ? ` (${entryId})` : ''} ${WORDS[reason]}`);
console.log(`${report.entries} entries in ${report.gardens} gardens: ${report.faults.length === 0 ? 'every chain holds' : `${report.faults.length} faults`}`);
process.exit(report.faults.length === 0 ? 0 : 1);
