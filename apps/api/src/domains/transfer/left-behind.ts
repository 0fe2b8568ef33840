import { isJson, type Unpacked } from './archive-reading.js';
import type { Dropped } from './imports.dto.js';

const MOST = 1_000_000;

const countOf = (value: unknown): number => {
  const count = Array.isArray(value) ? value.length : value;
  return typeof count === 'number' && Number.isInteger(count) && count >= 0 ? Math.min(count, MOST) : 0;
};

/** What an archive tells of and what is never taken in elsewhere. */
const NEVER: readonly (readonly [name: string, what: string, why: string])[] = [
  ['members', 'members', 'People are invited, never moved: each decides for themselves.'],
  ['owners', 'owners', 'Things belong to this garden now, for their owners did not come along.'],
  ['keys', 'keys', 'A key opens the garden that made it.'],
  ['reviews', 'reviews', 'Nobody of this garden has looked at these plans.'],
  ['spending', 'spending', 'Who let whom spend what is the record of the other garden.'],
];

const LEFT_OUT: readonly (readonly [name: string, what: string, why: string])[] = [
  ['photosOfPeopleCount', 'photosOfPeople', 'A photo that shows people stays where they agreed to it.'],
  ['unfinishedPlansCount', 'unfinishedPlans', 'Only finished plans are packed.'],
  ['releasedClaimsCount', 'releasedClaims', 'Only what is held now is packed.'],
  ['historyEntriesCount', 'history', 'The history of a garden ends with it; here a new one begins.'],
  ['donorsCount', 'donors', 'Who gave what was told to the other garden.'],
  ['consentsCount', 'consents', 'Consent was given to the other garden.'],
  ['webhooksCount', 'webhooks', 'Addresses that are told of events are set up anew.'],
];

export const droppedOf = ({ records, files }: Unpacked): Dropped[] => {
  const leftOut = isJson(records['leftOut']) ? records['leftOut'] : {};
  const documents = [...files.keys()].filter((name) => name.startsWith('documents/')).length;
  const all: Dropped[] = [
    ...NEVER.map(([name, what, why]) => ({ what, itemsCount: countOf(records[name]), why })),
    ...LEFT_OUT.map(([name, what, why]) => ({ what, itemsCount: countOf(leftOut[name]), why })),
    { what: 'documents', itemsCount: documents, why: 'Printed plans are set anew from the plan, under the name of this garden.' },
  ];
  return all.filter(({ itemsCount }) => itemsCount > 0);
};
