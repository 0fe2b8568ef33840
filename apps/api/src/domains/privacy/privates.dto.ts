import { PartialType } from '@nestjs/swagger';
import { namedSchema, S } from '../../platform/http/response-schema.js';
import { ChoiceField, Shape, TextField } from '../shared/fields.js';
import { PHOTO_WISHES, type PhotoWish, type PrivateDetails, type PrivateRecord } from './privates.repository.js';

export class PrivateDetailsDto implements PrivateDetails {
  @TextField(40, { nullable: true, description: 'Seen by the garden only with the consent contactSharing' }) phone!: string | null;
  @TextField(400, { nullable: true, description: 'Seen by nobody else' }) address!: string | null;
  @TextField(2000, { nullable: true, description: 'Health or access notes; the safety lead reads them with the consent healthToLeader, and nobody else ever' })
  healthNotes!: string | null;
  @TextField(2000, { nullable: true, description: 'Income or need, for yourself; seen by nobody else' }) needNotes!: string | null;
  @ChoiceField(PHOTO_WISHES, { nullable: true, description: 'Shown to the garden, so that it can be kept' }) photoWish!: PhotoWish | null;
}

@Shape('PrivateDetailsPatch', 'Merge patch (RFC 7396): only the fields to change.')
export class PrivateDetailsPatchDto extends PartialType(PrivateDetailsDto) {}

export const PrivateDetailsSchema = namedSchema(
  'PrivateDetails',
  S.object({
    version: { ...S.whole(0, 2_147_483_647), description: '0: nothing was written down yet' },
    phone: S.orNull(S.text(40)),
    address: S.orNull(S.text(400)),
    healthNotes: S.orNull(S.text(2000)),
    needNotes: S.orNull(S.text(2000)),
    photoWish: S.orNull(S.choice(...PHOTO_WISHES)),
  }),
);

export interface SharedDetails {
  memberId: string;
  phone: string | null;
  healthNotes: string | null;
  photoWish: PhotoWish | null;
  photoRelease: boolean;
}

export const SharedDetailsSchema = namedSchema(
  'SharedDetails',
  S.object({
    memberId: S.id(),
    phone: { ...S.orNull(S.text(40)), description: 'null: none, or not shared' },
    healthNotes: { ...S.orNull(S.text(2000)), description: 'For the safety lead, with consent; null: none, or not shared' },
    photoWish: S.orNull(S.choice(...PHOTO_WISHES)),
    photoRelease: { ...S.flag(), description: 'Whether photos that show the member may be seen in the garden' },
  }),
);

export const toDetails = (from: PrivateDetails): PrivateDetails => ({
  phone: from.phone,
  address: from.address,
  healthNotes: from.healthNotes,
  needNotes: from.needNotes,
  photoWish: from.photoWish,
});

export const toPrivateResponse = (record: PrivateRecord): PrivateRecord => ({ version: record.version, ...toDetails(record) });
