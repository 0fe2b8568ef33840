type Json = Readonly<Record<string, unknown>>;

const EMAIL = 'sorrel@example.org';
const PASSWORD = 'five barrows under a bridge';
const NEW_PASSWORD = 'nine thirsty cabbages in May';
const MAIL_CODE = 'q3Xb0nYl1o7V5c2Jm8Rk4sTf6uWzA9eDgHiKpLxNvBw';
const CODE = '492039';

/** The requests about people that the description shows. Codes stand for those that come by mail or from an authenticator. */
export const PEOPLE_REQUESTS: Readonly<Record<string, Json>> = {
  createAccount: { email: EMAIL, password: PASSWORD, name: 'Sorrel Hedgerow', locale: 'en' },
  confirmAccount: { code: MAIL_CODE, password: PASSWORD },
  createSession: { email: EMAIL, password: PASSWORD, as: 'token' },
  updateAccount: { name: 'Sorrel from the east field' },
  changePassword: { password: PASSWORD, newPassword: NEW_PASSWORD },
  createPasswordReset: { email: EMAIL },
  redeemPasswordReset: { code: MAIL_CODE, password: PASSWORD },
  beginFactor: { password: PASSWORD },
  confirmFactor: { code: CODE },
  renewRecoveryCodes: { password: PASSWORD, code: 'abcd-efgh-jkmn-pqrs' },
  removeFactor: { password: PASSWORD, code: CODE },
  createInvitation: { email: EMAIL, roles: ['member', 'storekeeper'] },
  redeemInvitation: { code: MAIL_CODE },
  giveConsent: { purpose: 'contactSharing', wordingVersion: 1 },
  withdrawConsent: { purpose: 'contactSharing' },
  updatePrivateDetails: { phone: '+1 555 0100', photoWish: 'askFirst' },
  eraseAccount: { password: PASSWORD },
  updateMember: { name: 'Sorrel', roles: ['member'] },
};
