/** What a key may do. A route asks for one of these. */
export const SCOPES = [
  'garden:read',
  'garden:admin',
  'members:read',
  'members:write',
  'sites:read',
  'sites:write',
  'structures:read',
  'structures:write',
  'stock:read',
  'stock:write',
  'prices:read',
  'prices:write',
  'builds:read',
  'builds:write',
  'plans:read',
  'plans:write',
  'plans:review',
  'spending:read',
  'spending:write',
  'documents:read',
  'documents:write',
  'webhooks:read',
  'webhooks:write',
] as const;
export type Scope = (typeof SCOPES)[number];

export const isScope = (text: string): text is Scope => (SCOPES as readonly string[]).includes(text);
