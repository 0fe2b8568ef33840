import { PartialType } from '@nestjs/swagger';
import { namedSchema, S } from '../../platform/http/response-schema.js';
import { PatternField, Shape, TextField } from '../shared/fields.js';
import type { AccountRecord, AccountSettings, EventRecord, MembershipRecord } from './accounts.repository.js';
import { CodeField, EmailField, MailCodeField, NewPasswordField, PasswordField } from './people.fields.js';

/** As it is answered: the record itself, field by field. */
export type MembershipResponse = MembershipRecord;

/** As it is answered: the record itself, field by field. */
export type EventResponse = EventRecord;

const NEW_PASSWORD = '8 to 256 characters, 15 or more advised; taken exactly as it is sent. Common passwords and your own name are refused.';

export class AccountSettingsDto {
  @TextField(200, { description: 'What others call you' }) name!: string;
  @PatternField(/^[a-z]{2,3}(-[A-Z]{2})?$/, 6, 'en-GB', { description: 'Language of mail and pages' }) locale!: string;
}

@Shape('SignUpRequest')
export class SignUpDto {
  @EmailField() email!: string;
  @NewPasswordField(NEW_PASSWORD) password!: string;
  @TextField(200, { description: 'What others call you' }) name!: string;
  @PatternField(/^[a-z]{2,3}(-[A-Z]{2})?$/, 6, 'en-GB', { optional: true, description: 'Language of mail and pages; left out: en' }) locale?: string | null;
  @MailCodeField({ optional: true, description: 'Code of an invitation; needed where accounts are made by invitation only' }) invitation?: string | null;
}

@Shape('ConfirmRequest', 'The code of the mail and the password of the sign-up: who reads the mail is who chose the password.')
export class ConfirmDto {
  @MailCodeField() code!: string;
  @PasswordField('The password of the sign-up') password!: string;
}

@Shape('AccountPatch', 'Merge patch (RFC 7396): only the fields to change.')
export class AccountPatchDto extends PartialType(AccountSettingsDto) {}

@Shape('PasswordChangeRequest')
export class PasswordChangeDto {
  @PasswordField('The present password') password!: string;
  @NewPasswordField(NEW_PASSWORD) newPassword!: string;
  @CodeField({ optional: true }) code?: string | null;
}

@Shape('PasswordResetRequest')
export class PasswordResetDto {
  @EmailField() email!: string;
}

@Shape('PasswordResetRedemption')
export class RedeemResetDto {
  @MailCodeField() code!: string;
  @NewPasswordField(NEW_PASSWORD) password!: string;
}

export const AccountSchema = namedSchema(
  'Account',
  S.object({
    id: S.id(),
    version: S.whole(1, 2_147_483_647),
    email: S.text(254),
    emailConfirmed: S.flag(),
    name: S.text(200),
    locale: S.text(10),
    secondFactor: S.flag(),
    createdAt: S.moment(),
    updatedAt: S.moment(),
  }),
);

export const AccountEventSchema = namedSchema(
  'AccountEvent',
  S.object({
    id: S.id(),
    at: S.moment(),
    action: { ...S.text(80), description: 'For example session.create or password.change' },
    requestId: S.orNull(S.text(64)),
  }),
);

export const AccountGardenSchema = namedSchema(
  'AccountGarden',
  S.object({ gardenId: S.id(), gardenName: S.text(200), memberId: S.id(), roles: S.list(S.text(30), 7), joinedAt: S.moment(), archived: S.flag() }),
);

export const toSettings = ({ name, locale }: AccountSettings): AccountSettings => ({ name, locale });

export const toAccountResponse = (account: AccountRecord) => ({
  id: account.id,
  version: account.version,
  email: account.email,
  emailConfirmed: account.emailConfirmed,
  name: account.name,
  locale: account.locale,
  secondFactor: account.secondFactor,
  createdAt: account.createdAt,
  updatedAt: account.updatedAt,
});

export const toEventResponse = ({ id, at, action, requestId }: EventRecord): EventRecord => ({ id, at, action, requestId });
