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

  // what a garden, a pile or a plan does not allow
  'inputs-contradict': {
    status: 422,
    title: 'The figures contradict each other',
    detail: '{reason}',
    remedy: 'See "errors": measure again or correct the figure.',
  },
  'stock-claimed': {
    status: 409,
    title: 'Already promised to another build',
    detail: 'The item {tag} is already claimed.',
    remedy: 'Choose another item, or release the other claim.',
  },
  'stock-short': {
    status: 409,
    title: 'Not enough left',
    detail: 'The lot {tag} does not have that many left.',
    remedy: 'Claim fewer, or release another claim.',
  },
  'station-far': {
    status: 422,
    title: 'Far from every weather station',
    detail: 'The nearest station is {distanceKm} km away. Latitude and longitude may be swapped.',
    remedy: 'Check the coordinates: latitude first, north positive; then say the place is meant.',
  },
  'plan-not-ready': {
    status: 409,
    title: 'The plan is not finished',
    detail: 'The plan is {state}.',
    remedy: 'Wait until its state is "ready"; a failed plan says why in its problem.',
  },
  'document-not-ready': {
    status: 409,
    title: 'The document is not finished',
    detail: 'The document is {state}.',
    remedy: 'Wait until its state is "ready"; a failed document says why in its problem.',
  },
  'own-request': {
    status: 403,
    title: 'Not your own request',
    detail: 'Whoever asked for money may not decide about it.',
    remedy: 'Ask another coordinator or the treasurer.',
  },
  'over-limit': {
    status: 403,
    title: 'Beyond what you may approve',
    detail: 'You may approve up to {limitMinor} minor units of {currency}, and nothing in another currency.',
    remedy: 'Ask somebody with a higher limit, or change the limits of the garden.',
  },
  'already-decided': {
    status: 409,
    title: 'Already decided',
    detail: 'The request is {state}.',
    remedy: 'Make a new request.',
  },
  'plan-failed': { status: 422, title: 'The plan could not be computed', detail: '{reason}', remedy: 'Correct the inputs and ask for a new revision.' },
  'own-review': {
    status: 403,
    title: 'Not your own plan',
    detail: 'Whoever asked for a plan may not review it.',
    remedy: 'Ask somebody else of the garden to look at it.',
  },
  'review-blocked': {
    status: 409,
    title: 'Cannot be marked reviewed',
    detail: 'The plan has notes that must be answered first.',
    remedy: 'Answer the notes of severity "stop" and compute a new revision.',
  },
  'quota-exceeded': {
    status: 409,
    title: 'No room left',
    detail: 'The files of the garden would exceed {limit} bytes.',
    remedy: 'Ask the operator for more room.',
  },

  'job-cancelled': {
    status: 409,
    title: 'Called off',
    detail: 'The job was called off before it was done.',
    remedy: 'Ask for it again when it is wanted after all.',
  },
  'not-your-job': {
    status: 403,
    title: 'Not your job',
    detail: 'Only whoever asked for a job, or a coordinator, may call it off.',
    remedy: 'Ask one of them.',
  },
  'url-refused': {
    status: 422,
    title: 'This server will not send there',
    detail: '{reason}',
    remedy: 'Give an https address with a public name, without user, password or fragment.',
  },
  'too-many-webhooks': {
    status: 409,
    title: 'Enough webhooks',
    detail: 'A garden may have {limit} webhooks.',
    remedy: 'Remove one that is no longer needed.',
  },
  'webhook-disabled': {
    status: 409,
    title: 'The webhook is disabled',
    detail: 'Nothing is sent to a webhook that is disabled.',
    remedy: 'Set its state to "active" first.',
  },

  'picture-kind-refused': {
    status: 415,
    title: 'Not a picture that is taken',
    detail: 'This is {found}. Pictures are taken as JPEG, PNG or WebP.',
    remedy: 'Save it as JPEG. A phone that makes HEIC has a setting such as "most compatible"; a drawing can be exported as PNG.',
  },
  'picture-unusable': {
    status: 422,
    title: 'This picture cannot be used',
    detail: 'Nothing was stored: {reason}.',
    remedy: 'Open the picture, save it again as JPEG, no larger than 40 million pixels, and send that.',
  },
  'archive-refused': {
    status: 422,
    title: 'This archive is not opened',
    detail: 'Nothing was taken from it: {reason}.',
    remedy: 'Make a plain ZIP of the files alone: no links, no folders above, no encryption.',
  },
  'export-too-large': {
    status: 422,
    title: 'Too much for one file',
    detail: 'There are more than {limit} rows.',
    remedy: 'Walk through the list page by page instead.',
  },

  'document-refused': {
    status: 422,
    title: 'The document cannot be made',
    detail: 'The report app does not take this plan: {reason}',
    remedy: 'Change the options, or compute a new revision.',
  },

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
