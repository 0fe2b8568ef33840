import { applyDecorators } from '@nestjs/common';
import { documented, fieldRule, passStandIns } from '../../platform/http/field-rule.js';
import { namedSchema, S } from '../../platform/http/response-schema.js';
import { textFault } from '../shared/fields.js';
import { FlagQuery, SwitchQuery } from '../shared/queries.dto.js';
import type { PhotoRecord, PhotoSubject } from './photos.repository.js';

/** As it is answered: the record itself, field by field. */
export type PhotoOf = PhotoSubject;

const CaptionQuery = (): PropertyDecorator =>
  applyDecorators(
    passStandIns({ optional: true }),
    fieldRule((value) => textFault(value, 200)),
    documented({ type: 'string', minLength: 1, maxLength: 200 }, { description: 'What the photo shows', optional: true, parameter: true }),
  );

/** What is said beside the bytes of a photo. Whether people can be told apart on it must be said; there is no default. */
export class NewPhotoQuery {
  @FlagQuery('Whether people can be made out on it') showsPeople!: boolean;
  @SwitchQuery('Whether everybody shown has agreed to it being seen in the garden, and that is kept on file') releaseOnFile?: boolean;
  @CaptionQuery() caption?: string;
}

export interface PhotoResponse {
  id: string;
  caption: string | null;
  mediaType: 'image/jpeg';
  widthPixelCount: number;
  heightPixelCount: number;
  byteCount: number;
  showsPeople: boolean;
  releaseOnFile: boolean;
  createdAt: string;
  links: { self: string; file: string };
}

export const PhotoSchema = namedSchema(
  'Photo',
  S.object({
    id: S.id(),
    caption: S.orNull(S.text(200)),
    mediaType: S.choice('image/jpeg'),
    widthPixelCount: S.whole(1, 16_384),
    heightPixelCount: S.whole(1, 16_384),
    byteCount: S.whole(1, 67_108_864),
    showsPeople: S.flag(),
    releaseOnFile: S.flag(),
    createdAt: S.moment(),
    links: S.object({ self: S.text(200), file: S.text(200) }),
  }),
);

export const folderOf = ({ kind, id }: PhotoSubject): string => `/v1/${kind === 'build' ? 'builds' : 'stock'}/${id}/photos`;

export const toResponse = (subject: PhotoSubject, photo: PhotoRecord): PhotoResponse => ({
  id: photo.id,
  caption: photo.caption,
  mediaType: 'image/jpeg',
  widthPixelCount: photo.widthPixelCount,
  heightPixelCount: photo.heightPixelCount,
  byteCount: photo.byteCount,
  showsPeople: photo.showsPeople,
  releaseOnFile: photo.releaseOnFile,
  createdAt: photo.createdAt,
  links: { self: `${folderOf(subject)}/${photo.id}`, file: `${folderOf(subject)}/${photo.id}/file` },
});
