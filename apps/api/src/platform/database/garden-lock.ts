import type { Db } from './database.js';

/**
 * Keeps the changes of a garden apart from whoever needs all of it at one moment, until the transaction ends. Changes share
 * the lock and take it after their last row; whoever holds it alone takes it first and waits for no row of a change. So
 * nobody who holds it waits for somebody who wants it.
 */
export const lockGarden = async (db: Db, gardenId: string, how: 'shared' | 'alone'): Promise<void> => {
  const name = `inputs of ${gardenId}`;
  if (how === 'alone') await db.$executeRaw`SELECT pg_advisory_xact_lock(hashtextextended(${name}, 11))`;
  else await db.$executeRaw`SELECT pg_advisory_xact_lock_shared(hashtextextended(${name}, 11))`;
};
