import { ROLES, type Role } from '../../platform/access/roles.js';
import { namedSchema, S } from '../../platform/http/response-schema.js';
import { ChoicesField, Shape } from '../shared/fields.js';
import type { InvitationRecord } from './invitations.repository.js';
import { EmailField, MailCodeField } from './people.fields.js';

/** As it is answered: the record itself, field by field. */
export type InvitationResponse = InvitationRecord;

@Shape('InvitationRequest')
export class InvitationDto {
  @EmailField() email!: string;
  @ChoicesField(ROLES, ROLES.length, { minItems: 1, description: 'What the invited person will be in the garden: one role or more' }) roles!: Role[];
}

@Shape('InvitationRedemption')
export class RedeemInvitationDto {
  @MailCodeField() code!: string;
}

export const InvitationSchema = namedSchema(
  'Invitation',
  S.object({
    id: S.id(),
    email: { ...S.orNull(S.text(254)), description: 'Null once the invitation is over' },
    roles: S.list(S.choice(...ROLES), ROLES.length),
    state: S.choice('open', 'accepted', 'revoked', 'expired'),
    invitedById: S.id(),
    acceptedMemberId: S.orNull(S.id()),
    createdAt: S.moment(),
    expiresAt: S.moment(),
  }),
);

export const JoinedSchema = namedSchema('JoinedGarden', S.object({ gardenId: S.id(), memberId: S.id(), roles: S.list(S.choice(...ROLES), ROLES.length) }));

export const toInvitationResponse = (invitation: InvitationRecord): InvitationRecord => ({
  id: invitation.id,
  email: invitation.state === 'open' ? invitation.email : null,
  roles: invitation.roles,
  state: invitation.state,
  invitedById: invitation.invitedById,
  acceptedMemberId: invitation.acceptedMemberId,
  createdAt: invitation.createdAt,
  expiresAt: invitation.expiresAt,
});
