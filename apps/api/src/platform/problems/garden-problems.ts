/** The refusals about what a garden, a pile, a plan or its money does not allow; a part of the catalogue. */
export const GARDEN_PROBLEMS = {
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
  'archive-too-large': {
    status: 422,
    title: 'Too much for one archive',
    detail: 'The archive would be larger than {limit} bytes.',
    remedy: 'Ask for the export without files, and fetch photos and documents one by one.',
  },
  'import-refused': {
    status: 422,
    title: 'This archive is not taken in',
    detail: 'Nothing was taken from it: {reason}.',
    remedy: 'Send an archive as POST /v1/exports makes it, unchanged.',
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
} as const;
