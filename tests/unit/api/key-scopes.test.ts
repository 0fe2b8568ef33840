import { describe, expect, it } from '@jest/globals';
import { OPERATOR, type Actor } from '../../../apps/api/src/platform/access/actor.js';
import { makeKey, makeSessionToken, isSessionToken, isWellFormedKey } from '../../../apps/api/src/platform/access/key.js';
import { givableScopes, makerOf, scopesOf } from '../../../apps/api/src/platform/access/key-scopes.js';
import { SCOPES } from '../../../apps/api/src/platform/access/scopes.js';

const key = (over: Partial<Actor>): Actor => ({ ...OPERATOR, kind: 'key', keyId: 'k', principalId: 'k', scopes: ['sites:read'], ...over });

describe('what a key may be given', () => {
  it('S15: by a person only what their roles open', () => {
    expect(scopesOf(['funder'])).not.toContain('garden:admin');
    expect(scopesOf(['funder'])).not.toContain('sites:write');
    expect(scopesOf(['treasurer'])).toEqual(expect.arrayContaining(['prices:write', 'garden:read']));
    expect(scopesOf(['treasurer'])).not.toContain('garden:admin');
    expect(scopesOf(['coordinator'])).toEqual(expect.arrayContaining(['garden:admin', 'members:write', 'plans:review']));
    expect(scopesOf([])).toEqual([]);
    for (const role of ['member', 'storekeeper'] as const) expect(SCOPES).toEqual(expect.arrayContaining([...scopesOf([role])]));
  });

  it('S15: by a key only what it has itself, whatever roles stand behind it', () => {
    expect(givableScopes(key({ roles: ['coordinator'] }))).toEqual(['sites:read']);
  });

  it('S15: the member behind a key answers for the keys it makes; the first key of a garden has none', () => {
    expect(makerOf(key({}))).toBeNull();
    expect(makerOf(key({ principalId: 'member' }))).toBe('member');
    expect(makerOf({ ...OPERATOR, kind: 'person', memberId: 'member', principalId: 'member' })).toBe('member');
    expect(makerOf(OPERATOR)).toBeNull();
  });

  it('S15: a session is never taken for a key, nor a key for a session', () => {
    expect([isSessionToken(makeKey().key), isWellFormedKey(makeKey().key)]).toEqual([false, true]);
    expect([isSessionToken(makeSessionToken().key), isWellFormedKey(makeSessionToken().key)]).toEqual([true, false]);
  });
});
