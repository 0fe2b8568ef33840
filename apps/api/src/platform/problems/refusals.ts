/** What each refusing status means, in the words of the document. */
const REFUSALS = {
  400: 'Something in the request is not valid',
  401: 'No valid key or session',
  403: 'Not for this key, or not for the roles of this person',
  404: 'Not found in this garden',
  406: 'No such form',
  409: 'In the way of something else',
  412: 'Changed meanwhile',
  413: 'Too large',
  415: 'Media type not taken',
  422: 'Understood, and not possible',
  428: 'If-Match is required',
  429: 'Too many at once',
  500: 'Something broke here',
  503: 'Not available now',
} as const;

export type RefusalStatus = keyof typeof REFUSALS;

/** One refusing answer as the document describes it. */
export const refusal = (status: RefusalStatus, schema: Record<string, unknown> = { $ref: '#/components/schemas/Problem' }) => ({
  description: REFUSALS[status],
  content: { 'application/problem+json': { schema } },
});
