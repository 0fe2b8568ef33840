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
  'garden-required': {
    status: 400,
    title: 'Which garden?',
    detail: 'A signed-in person must say which garden is meant.',
    remedy: 'Send the header Lathwork-Garden with the id of the garden; GET /v1/account/gardens lists yours.',
  },
  'cross-site': {
    status: 403,
    title: 'Sent from another site',
    detail: 'A change that a browser sends with its cookie must come from this site.',
    remedy: 'Open the page from the address of this server; programs send a key in the Authorization header instead.',
  },
  'not-a-member': {
    status: 403,
    title: 'Not a member there',
    detail: 'You are not a member of a garden with this id.',
    remedy: 'GET /v1/account/gardens lists your gardens; ask a coordinator for an invitation.',
  },
  'role-missing': {
    status: 403,
    title: 'Your role may not do that',
    detail: 'In this garden that is for: {roles}.',
    remedy: 'Ask somebody with such a role, or a coordinator to give it to you.',
  },
  'not-yours': {
    status: 403,
    title: 'Not yours to change',
    detail: 'It is shared with you, not yours: only its owner, or a coordinator when it is shared, may change it or build upon it.',
    remedy: 'Ask its owner, or make one of your own.',
  },
  'person-only': {
    status: 403,
    title: 'For a signed-in person',
    detail: 'This route is about a person’s own account; a key or the operator token does not fit.',
    remedy: 'Sign in at POST /v1/sessions.',
  },
  'garden-only': {
    status: 403,
    title: 'Only within a garden',
    detail: 'The operator token opens no garden.',
    remedy: 'Use a key of the garden, or sign in as a member.',
  },
  'sign-in-failed': {
    status: 401,
    title: 'Not signed in',
    detail: 'The mail address, the password or the code is not right.',
    remedy: 'Check all of them; POST /v1/password-resets sends a mail if the password is lost.',
  },
  'code-required': {
    status: 401,
    title: 'A code is needed too',
    detail: 'This account is opened with a code of its second factor as well.',
    remedy: 'Repeat the request with "code": six digits, or one of the recovery codes.',
  },
  'slowed-down': {
    status: 429,
    title: 'Slowed down',
    detail: 'There were too many tries. Nothing was checked this time.',
    remedy: 'Wait as long as Retry-After says, then try again.',
  },
  'quota-used-up': {
    status: 429,
    title: 'Enough for now',
    detail: 'No more than {limit} {what} are taken.',
    remedy: 'Wait as long as Retry-After says, then go on.',
  },
  'sign-up-invited-only': {
    status: 403,
    title: 'By invitation only',
    detail: 'On this server an account is made with an invitation to a garden, under the mail address it was sent to.',
    remedy: 'Send the code of the invitation as "invitation", or ask a coordinator for one.',
  },
  'code-of-mail-invalid': {
    status: 422,
    title: 'This code does not open anything',
    detail: 'The code was used already, is too old, or was never sent.',
    remedy: 'Copy the code of the newest mail, or ask for another mail.',
  },
  'password-wrong': {
    status: 403,
    title: 'Password or code not right',
    detail: 'The change needs the present password, and a code where a second factor is set.',
    remedy: 'Send both as they are now.',
  },
  'last-coordinator': {
    status: 409,
    title: 'The last coordinator',
    detail: 'A garden must keep a coordinator.',
    remedy: 'Make another member coordinator first.',
  },
  'other-address': {
    status: 403,
    title: 'Sent to another address',
    detail: 'The invitation was sent to another mail address than that of your account.',
    remedy: 'Sign in with the account of that address, or ask for an invitation to yours.',
  },
  'email-unconfirmed': {
    status: 403,
    title: 'Mail address not confirmed',
    detail: 'The mail address of the account has not been confirmed.',
    remedy: 'Open the link in the mail that was sent; POST /v1/accounts/confirm takes its token.',
  },
  'too-many-gardens': {
    status: 409,
    title: 'Enough gardens',
    detail: 'A person may make a garden while in fewer than {limit}.',
    remedy: 'Leave a garden that you no longer need, or ask the operator.',
  },
  'scope-beyond-own': {
    status: 403,
    title: 'More than you have yourself',
    detail: 'A key can be given no scope that opens nothing for whoever makes it: {scopes}.',
    remedy: 'Leave these scopes out, or ask somebody who may do that to make the key.',
  },
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
