/** What a key may do. A route asks for one of these. */
export const SCOPES = [
  'garden:read',
  'garden:admin',
  'members:read',
  'members:write',
  'sites:read',
  'sites:write',
  'sites:exact',
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
  'exports:write',
  'imports:write',
] as const;
export type Scope = (typeof SCOPES)[number];

export const isScope = (text: string): text is Scope => (SCOPES as readonly string[]).includes(text);
