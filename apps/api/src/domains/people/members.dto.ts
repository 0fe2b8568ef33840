import { PartialType } from '@nestjs/swagger';
import { ROLES, type Role } from '../../platform/access/roles.js';
import { PageQuery } from '../../platform/http/page.js';
import { namedSchema, S } from '../../platform/http/response-schema.js';
import { ChoicesField, Shape, TextField } from '../shared/fields.js';
import { SwitchQuery } from '../shared/queries.dto.js';
import type { MemberRecord, MemberSettings } from './members.repository.js';

/** As it is answered: the record itself, field by field. */
export type MemberResponse = MemberRecord;

export class MemberSettingsDto {
  @TextField(200, { description: 'What the garden calls the member' }) name!: string;
  @ChoicesField(ROLES, ROLES.length, { minItems: 1, description: 'What the member is in the garden: one role or more' }) roles!: Role[];
}

@Shape('MemberPatch', 'Merge patch (RFC 7396): only the fields to change.')
export class MemberPatchDto extends PartialType(MemberSettingsDto) {}

export class MembersQuery extends PageQuery {
  @SwitchQuery('Show former members too') former?: boolean;
}

export const MemberSchema = namedSchema(
  'Member',
  S.object({
    id: S.id(),
    version: S.whole(1, 2_147_483_647),
    name: S.text(200),
    roles: S.list(S.choice(...ROLES), ROLES.length),
    createdAt: S.moment(),
    updatedAt: S.moment(),
    leftAt: S.orNull(S.moment()),
  }),
);

export const toMemberSettings = ({ name, roles }: MemberSettings): MemberSettings => ({ name, roles });

export const toMemberResponse = (member: MemberRecord): MemberRecord => ({
  id: member.id,
  version: member.version,
  name: member.name,
  roles: member.roles,
  createdAt: member.createdAt,
  updatedAt: member.updatedAt,
  leftAt: member.leftAt,
});
