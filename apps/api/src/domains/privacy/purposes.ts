/** What a member can agree to, each on its own. Nothing is agreed to until it is said, and all of it can be taken back. */
export const PURPOSES = ['exactLocation', 'photoRelease', 'contactSharing', 'healthToLeader', 'shareWithExtension', 'nameOnPrint'] as const;
export type Purpose = (typeof PURPOSES)[number];

export const isPurpose = (text: string): text is Purpose => (PURPOSES as readonly string[]).includes(text);

export interface Wording {
  version: number;
  text: string;
}

/** The words that are agreed to. Changed words get the next number; what was agreed to before stays with its own words. */
export const WORDINGS: Readonly<Record<Purpose, Wording>> = {
  exactLocation: {
    version: 1,
    text: 'The members of this garden may see the exact place of my sites. Without this they see it rounded to about a kilometre; coordinators see it exactly either way.',
  },
  photoRelease: {
    version: 1,
    text: 'Photos taken at the garden on which I can be made out may be seen by the members of this garden.',
  },
  contactSharing: {
    version: 1,
    text: 'The members of this garden may see the phone number that I have given.',
  },
  healthToLeader: {
    version: 1,
    text: 'The safety lead of this garden may read my health and access notes. They are shown to nobody else and printed nowhere.',
  },
  shareWithExtension: {
    version: 1,
    text: 'Extension volunteers who help this garden may see what I have agreed to share with its members: the exact place of my sites and my phone number.',
  },
  nameOnPrint: {
    version: 1,
    text: 'My name may stand on printed plans that I have asked for.',
  },
};
