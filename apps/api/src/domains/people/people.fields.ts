import { applyDecorators } from '@nestjs/common';
import { documented } from '../../platform/http/field-rule.js';
import { PASSWORD_LENGTH } from '../../platform/passwords/rules.js';
import { PatternField, TextField } from '../shared/fields.js';
import type { Presence } from '../../platform/http/field-rule.js';

/** An address as mail servers take it, without a display name. Capital letters do not matter. */
const EMAIL = /^[A-Za-z0-9.!#$%&'*+/=?^_`{|}~-]{1,64}@[A-Za-z0-9-]{1,63}(?:\.[A-Za-z0-9-]{1,63}){1,8}$/;

export const EmailField = (presence: Presence = {}): PropertyDecorator =>
  PatternField(EMAIL, 254, 'sorrel@example.org', { description: 'Mail address, without a name', ...presence });

/** As it is looked up and stored. The pattern allows ASCII only, so that this means the same here and in the database. */
export const plainEmail = (typed: string): string => typed.toLowerCase();

/** Four bytes for each of 256 characters. What is good for a new password is checked apart, because it depends on the person. */
export const PasswordField = (description: string): PropertyDecorator => TextField(1024, { description });

/** A password that is being set. Its characters are counted as people see them, so the limits are the rule's own. */
export const NewPasswordField = (description: string): PropertyDecorator => {
  const { min, max } = PASSWORD_LENGTH;
  return applyDecorators(PasswordField(description), documented({ type: 'string', minLength: min, maxLength: max }, { description }));
};

export const CodeField = (presence: Presence = {}): PropertyDecorator =>
  TextField(40, { description: 'Six digits of the second factor, or a recovery code', ...presence });

/** A code that came by mail. */
export const MailCodeField = (presence: Presence = {}): PropertyDecorator =>
  PatternField(/^[A-Za-z0-9_-]{43}$/, 43, 'q3Xb0nYl1o7V5c2Jm8Rk4sTf6uWzA9eDgHiKpLxNvBw', { description: 'Code that came by mail', ...presence });
