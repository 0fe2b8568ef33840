import 'reflect-metadata';
import { createApi } from './create-api.js';
import { parseConfig } from './platform/config/config.js';
import { PublishedDocument } from './platform/http/docs.controller.js';
import { makeLog } from './platform/logging/log.js';

const NOWHERE = 'postgresql://nobody@127.0.0.1:1/none';

/** The OpenAPI document as it is served and committed. Needs no database: nothing connects before the first request. */
export const openApiText = async (): Promise<string> => {
  const config = parseConfig({ REPORT_SECRET: 'not used: nothing is served here at all' });
  const app = await createApi({ config, addresses: { url: NOWHERE, ownerUrl: NOWHERE, queueUrl: NOWHERE }, log: makeLog('silent') });
  const { text } = app.get(PublishedDocument);
  await app.close();
  return text;
};
