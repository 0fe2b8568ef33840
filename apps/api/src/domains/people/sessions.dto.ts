import { namedSchema, S } from '../../platform/http/response-schema.js';
import { ChoiceField, Shape } from '../shared/fields.js';
import { CodeField, EmailField, PasswordField } from './people.fields.js';
import type { SessionRecord } from './sessions.repository.js';

@Shape('SignInRequest')
export class SignInDto {
  @EmailField() email!: string;
  @PasswordField('The password, exactly as it was set') password!: string;
  @CodeField({ optional: true }) code?: string | null;
  @ChoiceField(['cookie', 'token'], {
    optional: true,
    description: 'cookie: for a browser, out of reach of scripts. token: in the answer, for a program that sends it as Bearer. Left out: cookie',
  })
  as?: 'cookie' | 'token' | null;
}

const SESSION = {
  id: S.id(),
  label: { ...S.text(200), description: 'What the browser or program called itself' },
  createdAt: S.moment(),
  lastSeenAt: S.moment(),
  expiresAt: S.moment(),
};

export const SessionSchema = namedSchema('Session', S.object({ ...SESSION, current: S.flag() }));

const TOKEN = { ...S.orNull(S.text(80)), description: 'Only where a token was asked for; null beside a cookie. Shown this once.' };

export const NewSessionSchema = namedSchema('NewSession', S.object({ ...SESSION, token: TOKEN }));

export const toSessionResponse = (session: SessionRecord, currentId: string) => ({
  id: session.id,
  label: session.label,
  createdAt: session.createdAt,
  lastSeenAt: session.lastSeenAt,
  expiresAt: session.expiresAt,
  current: session.id === currentId,
});
