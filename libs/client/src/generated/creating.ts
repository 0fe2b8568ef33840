// Written from docs/api/openapi.json by tools/client-types/generate.mjs. Do not edit: change the API and write it again.

/** The operations that take an Idempotency-Key: a repeat with the same key makes nothing twice. */
export const CREATING: ReadonlySet<string> = new Set([
  'POST /v1/builds',
  'POST /v1/builds/{buildId}/claims',
  'POST /v1/builds/{id}/photos',
  'POST /v1/documents',
  'POST /v1/exchange-rates',
  'POST /v1/exports',
  'POST /v1/gardens',
  'POST /v1/imports',
  'POST /v1/invitations',
  'POST /v1/keys',
  'POST /v1/plans',
  'POST /v1/plans/{id}/as-built',
  'POST /v1/plans/{id}/reviews',
  'POST /v1/prices',
  'POST /v1/sites',
  'POST /v1/spending',
  'POST /v1/stock',
  'POST /v1/stock/intakes',
  'POST /v1/stock/{id}/photos',
  'POST /v1/structures',
  'POST /v1/webhooks',
  'POST /v1/webhooks/{id}/secret-rotations',
  'POST /v1/webhooks/{webhookId}/deliveries/{id}/redeliver',
  'POST /v1/webhooks/{webhookId}/test',
]);
