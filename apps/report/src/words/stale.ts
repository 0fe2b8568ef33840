import { MATERIAL_WORDS } from './en/common.js';
import { pages } from './en/pages.js';
import { IMPORTED_REASON, IMPORTED_TEXT, STALE_WORDS } from './en/stale.js';
import { fill, listing } from './fill.js';

/** `priceAdded: film.greenhouse`, as the plan service writes it. A reason without words is printed as it came. */
function reasonText(reason: string): string {
  const at = reason.indexOf(': ');
  const [code, subject] = at < 0 ? [reason, ''] : [reason.slice(0, at), reason.slice(at + 2)];
  const wording = Object.hasOwn(STALE_WORDS, code) ? STALE_WORDS[code] : undefined;
  if (wording === undefined || (wording.includes('{subject}') && subject === '')) return reason;
  const named = Object.hasOwn(MATERIAL_WORDS, subject) ? (MATERIAL_WORDS as Record<string, string>)[subject]?.toLowerCase() : undefined;
  return fill(wording, { subject: named ?? subject });
}

/** Sentences for the cover: what has changed since the plan was made, and whether it came from elsewhere. */
export function staleTexts(reasons: readonly string[]): string[] {
  const changed = reasons.filter((r) => r !== IMPORTED_REASON);
  return [
    ...(changed.length < reasons.length ? [IMPORTED_TEXT] : []),
    ...(changed.length > 0 ? [fill(pages.cover.stale, { what: listing([...new Set(changed.map(reasonText))]) })] : []),
  ];
}
