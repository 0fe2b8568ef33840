import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import { Sealer } from '../../platform/sealing/sealer.js';

/** What is a member's own business. */
export interface PrivateDetails {
  phone: string | null;
  address: string | null;
  healthNotes: string | null;
  needNotes: string | null;
  photoWish: PhotoWish | null;
}

export const PHOTO_WISHES = ['noPhotos', 'askFirst', 'fine'] as const;
export type PhotoWish = (typeof PHOTO_WISHES)[number];

export type PrivateRecord = PrivateDetails & { version: number };

/** Before anything was written down. */
export const NOTHING_PRIVATE: PrivateRecord = { version: 0, phone: null, address: null, healthNotes: null, needNotes: null, photoWish: null };

const DETAILS = 'private details of a member';
const HEALTH = 'health notes of a member';

type Sealed = Omit<PrivateDetails, 'healthNotes'>;

/** Private details, sealed for the garden and the member they are of: in the place of another row they do not open. */
@Injectable()
export class PrivatesRepository {
  constructor(private readonly sealer: Sealer) {}

  async get(db: Db, gardenId: string, memberId: string): Promise<PrivateRecord> {
    const row = await db.memberPrivate.findFirst({ where: { memberId } });
    if (!row) return NOTHING_PRIVATE;
    const at = `${gardenId}/${memberId}`;
    const { phone, address, needNotes, photoWish } = JSON.parse(this.sealer.open(DETAILS, at, row.detailsSealed)) as Sealed;
    const healthNotes = row.healthSealed ? this.sealer.open(HEALTH, at, row.healthSealed) : null;
    return { version: row.version, phone, address, healthNotes, needNotes, photoWish };
  }

  /** False when somebody was quicker. */
  async put(db: Db, gardenId: string, memberId: string, was: number, details: PrivateDetails): Promise<boolean> {
    const at = `${gardenId}/${memberId}`;
    const { healthNotes, ...rest } = details;
    const data = {
      detailsSealed: new Uint8Array(this.sealer.seal(DETAILS, at, JSON.stringify(rest))),
      healthSealed: healthNotes === null ? null : new Uint8Array(this.sealer.seal(HEALTH, at, healthNotes)),
    };
    if (was === 0) return (await db.memberPrivate.createMany({ data: [{ gardenId, memberId, ...data }], skipDuplicates: true })).count === 1;
    return (await db.memberPrivate.updateMany({ where: { memberId, version: was }, data: { ...data, version: { increment: 1 } } })).count === 1;
  }

  async remove(db: Db, memberId: string): Promise<boolean> {
    return (await db.memberPrivate.deleteMany({ where: { memberId } })).count > 0;
  }

  async isMember(db: Db, id: string): Promise<boolean> {
    return (await db.member.count({ where: { id, leftAt: null } })) > 0;
  }
}
