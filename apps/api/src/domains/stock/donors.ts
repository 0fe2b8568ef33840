import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Sealer } from '../../platform/sealing/sealer.js';

/** Who gave a thing. It is the garden's own record, for thanks and receipts, and no other member's business. */
export interface Donor {
  name: string;
  wishesToBeNamed: boolean;
  value: { minor: number; currency: string } | null;
}

const SEAL = 'donor of a stock item';
const KEEPERS = ['coordinator', 'treasurer', 'storekeeper'] as const;

/** Who may know who gave what: those who thank, count and store. A key opens no more than whoever made it may see now. */
export const seesDonors = (actor: Actor): boolean => {
  const isKeeper = KEEPERS.some((role) => actor.roles.includes(role));
  if (actor.kind === 'person') return isKeeper;
  return actor.scopes.includes('stock:write') && (actor.principalId === actor.keyId || isKeeper);
};

/** Donors lie sealed in the details of the thing; what was sealed for one thing does not open in the place of another. */
@Injectable()
export class Donors {
  constructor(private readonly sealer: Sealer) {}

  seal(stockId: string, donor: Donor | null | undefined): string | null {
    if (!donor) return null;
    const { name, wishesToBeNamed, value } = donor;
    const plain: Donor = { name, wishesToBeNamed, value: value && { minor: value.minor, currency: value.currency } };
    return this.sealer.seal(SEAL, stockId, JSON.stringify(plain)).toString('base64url');
  }

  open({ id, donorSealed }: { id: string; donorSealed: string | null }): Donor | null {
    return donorSealed === null ? null : (JSON.parse(this.sealer.open(SEAL, id, Buffer.from(donorSealed, 'base64url'))) as Donor);
  }
}
