import { GARDEN_PROBLEMS } from './garden-problems.js';
import { PEOPLE_PROBLEMS } from './people-problems.js';

interface Entry {
  status: number;
  title: string;
  /** Names in braces are filled from the parameters. */
  detail: string;
  /** What the caller can do about it. */
  remedy: string;
}

/** Every way the API says no, in one place: key -> status, title, what happened, what to do. Only the filter speaks HTTP. */
export const CATALOGUE = {
  // the request itself
  'malformed-json': {
    status: 400,
    title: 'The body cannot be read',
    detail: 'The body is not JSON as this API takes it: {reason}.',
    remedy: 'Correct the body; send plain JSON with each key once.',
  },
  'malformed-request': {
    status: 400,
    title: 'The request cannot be read',
    detail: 'The address or the headers of the request are broken.',
    remedy: 'Correct the request; percent signs in an address must be followed by two hexadecimal digits.',
  },
  'validation-failed': {
    status: 400,
    title: 'Some fields are not valid',
    detail: '{count} fields or parameters are not valid.',
    remedy: 'See "errors": each names its place and what is wanted.',
  },
  'malformed-id': { status: 400, title: 'Not an id', detail: 'An id in the path is not a lower-case UUID.', remedy: 'Copy the id from an earlier answer.' },
  'cursor-invalid': {
    status: 400,
    title: 'This cursor does not fit',
    detail: 'The cursor was changed, or belongs to another list or other filters.',
    remedy: 'Begin at the first page, or follow the "next" link as it stands.',
  },
  'idempotency-key-invalid': {
    status: 400,
    title: 'Idempotency-Key not usable',
    detail: 'The key must have 1 to 255 printable characters.',
    remedy: 'Send a shorter key, for example a UUID.',
  },
  unauthenticated: {
    status: 401,
    title: 'Who is asking?',
    detail: 'The request carries no key and no session that is valid now.',
    remedy: 'Send "Authorization: Bearer" with a key of the garden that has not expired or been revoked, or sign in at POST /v1/sessions.',
  },
  'scope-missing': {
    status: 403,
    title: 'This key may not do that',
    detail: 'The key lacks the scope {scope}.',
    remedy: 'Use a key that has the scope, or ask whoever manages the keys of the garden.',
  },
  'not-yours': {
    status: 403,
    title: 'Not yours to change',
    detail: 'It is shared with you, not yours: only its owner, or a coordinator when it is shared, may change it or build upon it.',
    remedy: 'Ask its owner, or make one of your own.',
  },
  ...PEOPLE_PROBLEMS,
  'operator-only': {
    status: 403,
    title: 'For the operator only',
    detail: 'This route takes the operator token, not a key of a garden.',
    remedy: 'Ask whoever runs this server.',
  },
  'route-unknown': { status: 404, title: 'No such address', detail: 'There is nothing at this address.', remedy: 'See /v1/docs for all addresses.' },
  'not-found': {
    status: 404,
    title: 'Not found',
    detail: 'There is no {what} with this id in this garden.',
    remedy: 'Check the id, and that the key belongs to the right garden.',
  },
  'method-not-allowed': {
    status: 405,
    title: 'Method not allowed',
    detail: 'This address does not take {method}.',
    remedy: 'Use one of the methods in the Allow header.',
  },
  'not-acceptable': {
    status: 406,
    title: 'No such form',
    detail: 'This address answers {offered} only.',
    remedy: 'Accept that media type, or leave the Accept header out.',
  },
  'body-too-large': { status: 413, title: 'The body is too large', detail: 'The body is larger than {limit} bytes.', remedy: 'Send less in one request.' },
  'headers-too-large': {
    status: 431,
    title: 'The headers are too large',
    detail: 'The headers of the request are larger than the server reads.',
    remedy: 'Send shorter headers; 16 kB in all are enough for every operation.',
  },
  'request-too-slow': {
    status: 408,
    title: 'The request came too slowly',
    detail: 'The request had not come whole in the time that the server waits for it.',
    remedy: 'Send it again over a better connection, or less in one request.',
  },
  'media-type-unsupported': {
    status: 415,
    title: 'Media type not taken',
    detail: 'This request needs the content type {wanted}.',
    remedy: 'Set the Content-Type header, without compression.',
  },
  'too-many-requests': { status: 429, title: 'Too many at once', detail: '{what}', remedy: 'Wait as long as Retry-After says, then try again.' },

  'rate-limited': {
    status: 429,
    title: 'Too many requests',
    detail: 'The policy "{policy}" allows {quota} requests in {windowS} seconds; they are used up.',
    remedy: 'Wait as long as Retry-After says, then go on more slowly; RateLimit and RateLimit-Policy of every answer tell what is left.',
  },
  'jobs-full': {
    status: 429,
    title: 'Enough is under way',
    detail: 'This garden already has {running} jobs at work and {waiting} waiting, counted together; there is no room for another.',
    remedy: 'Wait until one of them has ended, or cancel one that is no longer wanted; then send the same request again.',
  },

  // several people at once
  'if-match-required': {
    status: 428,
    title: 'If-Match is required',
    detail: 'A change must say which version it changes.',
    remedy: 'Read the resource, and send its ETag as If-Match.',
  },
  'version-stale': {
    status: 412,
    title: 'Changed meanwhile',
    detail: 'The resource is no longer the version named by If-Match. Nothing was changed.',
    remedy: 'Read it again, look at what changed, and repeat the change.',
  },
  'idempotency-conflict': {
    status: 422,
    title: 'Key used for something else',
    detail: 'This Idempotency-Key was used with another body.',
    remedy: 'Use a new key for a new request.',
  },
  'idempotency-running': {
    status: 409,
    title: 'Still running',
    detail: 'A request with this Idempotency-Key is still running.',
    remedy: 'Wait a moment, then repeat the same request.',
  },
  conflict: { status: 409, title: 'In the way of something else', detail: '{reason}', remedy: 'Read the current state and decide again.' },
  'name-taken': {
    status: 409,
    title: 'Name already in use',
    detail: 'This garden already has a {what} called {name}, maybe among the archived ones.',
    remedy: 'Choose another name, or restore the archived one.',
  },
  archived: { status: 409, title: 'Archived', detail: 'The {what} is archived.', remedy: 'Restore it first.' },
  'in-use': { status: 409, title: 'Still in use', detail: 'The {what} is still used by {by}.', remedy: 'Release or change that first.' },

  ...GARDEN_PROBLEMS,

  // not the caller's fault
  'report-refused': {
    status: 502,
    title: 'The document was refused',
    detail: 'The report app could not set the document: {reason}',
    remedy: 'Tell the operator; the plan itself is not lost.',
  },
  'report-unavailable': { status: 503, title: 'Documents cannot be made now', detail: 'The report app does not answer.', remedy: 'Try again later.' },
  'timed-out': { status: 503, title: 'Took too long', detail: '{what} took longer than allowed.', remedy: 'Try again later.' },
  'read-only': {
    status: 503,
    title: 'Nothing can be changed now',
    detail: 'The database takes no changes at the moment. Reading goes on.',
    remedy: 'Send the same request again later.',
  },
  'storage-full': {
    status: 503,
    title: 'No room to store anything',
    detail: 'The database has no room left. Nothing was changed.',
    remedy: 'Try again later; tell the operator if it stays.',
  },
  unavailable: { status: 503, title: 'Not available now', detail: 'The server cannot answer now.', remedy: 'Try again in a few seconds.' },
  internal: {
    status: 500,
    title: 'Something broke here',
    detail: 'The server made a mistake. It has been logged under the request id.',
    remedy: 'Try again; if it stays, tell the operator the request id.',
  },
} as const satisfies Record<string, Entry>;

export type ProblemKey = keyof typeof CATALOGUE;

export const isProblemKey = (key: string): key is ProblemKey => Object.hasOwn(CATALOGUE, key);
