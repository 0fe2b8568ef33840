import { namedSchema, S } from '../../platform/http/response-schema.js';
import { PatternField, Shape } from '../shared/fields.js';
import { CodeField, PasswordField } from './people.fields.js';

@Shape('SecondFactorRequest')
export class BeginFactorDto {
  @PasswordField('The present password') password!: string;
}

@Shape('SecondFactorConfirmation')
export class ConfirmFactorDto {
  @PatternField(/^\d{6}$/, 6, '492039', { description: 'The code that the authenticator shows now' }) code!: string;
}

@Shape('SecondFactorProof')
export class FactorProofDto {
  @PasswordField('The present password') password!: string;
  @CodeField() code!: string;
}

export const FactorSchema = namedSchema(
  'SecondFactor',
  S.object({ state: { ...S.choice('none', 'begun', 'set'), description: 'begun: waits for the first code' }, recoveryCodesLeftCount: S.whole(0, 10) }),
);

export const BegunFactorSchema = namedSchema(
  'BegunSecondFactor',
  S.object({
    secret: { ...S.text(64), description: 'Shared secret in base 32, to be typed by hand. Shown this once.' },
    uri: { ...S.text(500), description: 'The same for an authenticator app, to be shown as a QR code' },
  }),
);

const CODES = { ...S.list(S.text(40), 10), description: 'To be written down: each opens the account once in place of a code. Shown this once.' };

export const RecoveryCodesSchema = namedSchema('RecoveryCodes', S.object({ recoveryCodes: CODES }));

export const SetFactorSchema = namedSchema(
  'SetSecondFactor',
  S.object({
    recoveryCodes: CODES,
    id: S.id(),
    label: S.text(200),
    createdAt: S.moment(),
    lastSeenAt: S.moment(),
    expiresAt: S.moment(),
    token: { ...S.orNull(S.text(80)), description: 'Token of the new session, if the former was held as one; else null and a new cookie' },
  }),
);
