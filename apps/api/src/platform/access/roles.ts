/** What a person can be in a garden. One person may be several; what any of the roles allows is allowed. */
export const ROLES = ['member', 'coordinator', 'treasurer', 'storekeeper', 'safetyLead', 'extensionVolunteer', 'funder'] as const;
export type Role = (typeof ROLES)[number];

export const isRole = (text: string): text is Role => (ROLES as readonly string[]).includes(text);
