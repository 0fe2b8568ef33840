/** Why a plan is no longer up to date, by the reason that the plan service keeps. `{subject}`: what it was about. */
export const STALE_WORDS: Readonly<Record<string, string>> = {
  siteChanged: 'the site',
  structureChanged: 'the structure',
  buildChanged: 'the build',
  priceChanged: 'the price of {subject}',
  priceAdded: 'a new price of {subject}',
  rateAdded: 'the exchange rate of {subject}',
  stockChanged: 'the item {subject}',
  claimsChanged: 'the claim on {subject}',
};

/** Plans that came in with a garden from elsewhere: nothing was changed, but nobody here worked the figures out. */
export const IMPORTED_REASON = 'imported';
export const IMPORTED_TEXT = 'This plan came in by an import. Another server worked its figures out. Make a new plan to check them.';
