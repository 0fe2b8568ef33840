import { ANSWER_EXAMPLES } from './examples/generated/answers.js';
import { PARAMETER_EXAMPLES, REQUEST_EXAMPLES } from './examples/requests.js';

type Json = Record<string, unknown>;
type Content = Record<string, Json>;

const contentOf = (part: unknown): Content => (part as { content?: Content } | undefined)?.content ?? {};

const put = (content: Content, example: unknown): void => {
  for (const [type, media] of Object.entries(content)) if (type.includes('json')) media['example'] = example;
};

/** Puts the request and the answer that are kept for this operation beside their schemas. */
export const withExamples = (operation: Json & { responses: Record<string, Json> }): void => {
  const id = String(operation['operationId']);
  const request = REQUEST_EXAMPLES[id];
  if (request) put(contentOf(operation['requestBody']), request);
  for (const parameter of (operation['parameters'] as Json[] | undefined) ?? []) {
    const example = PARAMETER_EXAMPLES[`${String(parameter['in'])} ${String(parameter['name'])}`];
    if (example !== undefined) parameter['example'] = example;
  }
  for (const [status, example] of Object.entries(ANSWER_EXAMPLES[id] ?? {})) put(contentOf(operation.responses[status]), example);
};
