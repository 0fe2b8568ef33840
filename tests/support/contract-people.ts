import { generateSync } from 'otplib';
import { PEOPLE_REQUESTS } from '../../apps/api/src/examples/people.js';
import type { TestApi } from './api-app.js';
import type { Described, Json } from './contract.js';
import type { Given, Ids, Step } from './contract-world.js';
import type { HttpClient } from './http-client.js';
import { asAdmin, lastMailTo } from './people.js';

type Send = (http: HttpClient, operation: Described, ids: Ids, body?: unknown) => Promise<Given>;

const EMAIL = String(PEOPLE_REQUESTS['createAccount']?.['email']);

const SHOWN_ONCE: Readonly<Record<string, unknown>> = {
  token: 'lws_shown-once-and-kept-by-you',
  secret: 'GEZDGNBVGY3TQOJQGEZDGNBVGY3TQOJQ',
  uri: 'otpauth://totp/Lathwork:sorrel%40example.org?secret=GEZDGNBVGY3TQOJQGEZDGNBVGY3TQOJQ&issuer=Lathwork',
  recoveryCodes: ['abcd-efgh-jkmn-pqrs', 'tuvw-xyz2-3456-789a'],
};

/** What is different in every run, in the words of the examples. */
const shown = (given: Given): Given => {
  if (typeof given.body !== 'object' || given.body === null) return given;
  const body = Object.fromEntries(Object.entries(given.body as Json).map(([key, value]) => [key, value === null ? null : (SHOWN_ONCE[key] ?? value)]));
  return { ...given, body };
};

/**
 * A person's way through the API, by the very requests of the description: sign up, confirm, sign in, join the garden,
 * set and remove a second factor, change and lose the password, sign out. Only codes and the present password differ.
 */
export const peopleSteps = async (api: TestApi, of: (id: string) => Described, ids: Ids, garden: HttpClient, send: Send): Promise<Step[]> => {
  const steps: Step[] = [];
  let person = api.anyone;
  const step = async (id: string, http: HttpClient, more: Json | null = {}): Promise<Json> => {
    const given = await send(http, of(id), ids, PEOPLE_REQUESTS[id] && { ...PEOPLE_REQUESTS[id], ...more });
    if (given.status >= 300) throw new Error(`${id} answered ${given.status}: ${JSON.stringify(given.body)}`);
    steps.push({ id, given: shown(given) });
    const body = (given.body ?? {}) as Json;
    if (typeof body['token'] === 'string') person = api.as(body['token']);
    return body;
  };
  const used = new Set<string>();
  // The mail may be on its way still: the code wanted is one that has not been used.
  const mailCode = async (tries = 100): Promise<Json> => {
    const { code } = await lastMailTo(api, EMAIL);
    if ((code === '' || used.has(code)) && tries > 0) {
      await new Promise((resolve) => setTimeout(resolve, 100));
      return mailCode(tries - 1);
    }
    used.add(code);
    return { code };
  };

  await step('createAccount', api.anyone);
  await step('confirmAccount', api.anyone, await mailCode());
  await step('createSession', api.anyone);
  ids['invitation'] = String((await step('createInvitation', garden))['id']);
  ids['member'] = String((await step('redeemInvitation', person, await mailCode()))['memberId']);
  for (const id of ['getAccount', 'updateAccount', 'listAccountGardens', 'listAccountEvents', 'getFactor']) await step(id, person);

  const secret = String((await step('beginFactor', person))['secret']);
  const codeNow = (): Json => ({ code: generateSync({ secret }) });
  const codes = (await step('confirmFactor', person, codeNow()))['recoveryCodes'] as string[];
  await step('renewRecoveryCodes', person, { code: codes[0] });
  await asAdmin(api, 'UPDATE account_factors SET last_step = last_step - 10');
  await step('removeFactor', person, codeNow());

  const before = String(PEOPLE_REQUESTS['changePassword']?.['newPassword']);
  await step('changePassword', person);
  await step('createPasswordReset', api.anyone);
  await step('redeemPasswordReset', api.anyone, { ...(await mailCode()), password: before });
  const signedInAgain = async (): Promise<HttpClient> => {
    const answer = await api.anyone.request('post', '/v1/sessions').send({ email: EMAIL, password: before, as: 'token' });
    return api.as(String((answer.body as Json)['token']));
  };
  const [one] = [await signedInAgain(), await signedInAgain()];
  const list = (await step('listSessions', one))['items'] as { id: string; current: boolean }[];
  ids['session'] = list.find(({ current }) => !current)?.id ?? '';
  for (const id of ['endSession', 'endOtherSessions', 'endCurrentSession']) await step(id, one);
  // Of the invitation that was taken nothing is left to take back: the one that the description removes is another.
  ids['invitation'] = String(((await garden.post('/v1/invitations', PEOPLE_REQUESTS['createInvitation'] as object)).body as Json)['id']);
  return steps;
};
