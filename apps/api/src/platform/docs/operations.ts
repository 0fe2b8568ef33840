import type { AnswerOf, Content, Described, Json, Parameter } from './described.js';
import { html, prose, type Html, type Piece } from './html.js';
import { shapeName, type Shapes } from './shapes.js';

const isJsonType = (type: string): boolean => type.endsWith('json');

const shown = (value: unknown): string => JSON.stringify(value, null, 2);

const parametersOf = (parameters: readonly Parameter[], shapes: Shapes): Piece =>
  parameters.length > 0 &&
  html`<h4>Parameters</h4>
    <table class="fields">
      <thead>
        <tr>
          <th>name</th>
          <th>in</th>
          <th>value</th>
          <th>meaning</th>
        </tr>
      </thead>
      <tbody>
        ${parameters.map(
          (one) =>
            html`<tr>
              <td><code>${one.name}</code>${one.required === true && html` <span class="need" title="required">*</span>`}</td>
              <td>${one.in}</td>
              <td>${shapes.words(one.schema)}</td>
              <td>
                ${one.description && prose(one.description)}${one.schema?.['default'] !== undefined && ` ${String(one.schema['default'])} when left out.`}
              </td>
            </tr> `,
        )}
      </tbody>
    </table>`;

const HEADER_VALUES: Readonly<Record<string, string>> = {
  'Idempotency-Key': '"$(uuidgen)"',
  'If-Match': '"$ETAG"',
  Prefer: '"wait=10"',
  'Last-Event-ID': '3',
};

/** The request as one types it into a terminal. */
const commandOf = ({ method, path, parameters, body }: Described, isOpen: boolean): string => {
  const query = parameters.filter((one) => one.in === 'query' && one.required).map((one) => `${one.name}=${String(one.example ?? '')}`);
  const address = path.replaceAll(/\{(\w+)\}/g, (_whole, name: string) => `$${name.replaceAll(/([A-Z])/g, '_$1').toUpperCase()}`);
  const [type] = Object.keys(body ?? {});
  const lines = [
    `curl${method === 'get' ? '' : ` -X ${method.toUpperCase()}`} "$API${address}${query.length > 0 ? `?${query.join('&')}` : ''}"`,
    ...(isOpen ? [] : ['-H "Authorization: Bearer $KEY"']),
    ...parameters
      .filter((one) => one.in === 'header' && (one.required || one.name === 'Idempotency-Key' || one.name === 'Prefer'))
      .map((one) => `-H ${one.name}:${HEADER_VALUES[one.name] ?? '"..."'}`),
    ...(type ? [`-H "Content-Type: ${type}"`, isJsonType(type) ? '-d @request.json' : '--data-binary @file'] : []),
  ];
  return lines.join(' \\\n  ');
};

const exampleOf = (title: string, value: unknown): Piece =>
  value !== undefined &&
  html`<details>
    <summary>${title}</summary>
    <pre><code>${typeof value === 'string' ? value : shown(value)}</code></pre>
  </details>`;

const fieldsOf = (title: Piece, schema: Json | undefined, shapes: Shapes, request: boolean): Piece => {
  const table = shapes.table(schema, request);
  const name = shapeName(schema);
  if (!table) return html`<p>${title}: ${shapes.words(schema)}</p>`;
  return html`<details ${request && 'open'}>
    <summary>${title} ${name && html`<span>${name}</span>`}</summary>
    ${table}
  </details>`;
};

const bodyOf = (body: Content | null, shapes: Shapes): Piece =>
  body !== null &&
  html`<h4>Request</h4>
    ${Object.entries(body).map(
      ([type, { schema, example }]) =>
        html`<p><code>${type}</code></p>
          ${isJsonType(type) && [fieldsOf('Fields', schema, shapes, true), exampleOf('Example', example)]}`,
    )}`;

const answersOf = (answers: readonly AnswerOf[], shapes: Shapes): Piece =>
  answers.map(
    ({ status, description, headers, content }) =>
      html`<h4>Answer <span class="status">${status}</span></h4>
        ${Object.keys(content).length === 0 && html`<p>${prose(description)}</p>`}
        ${Object.entries(content).map(
          ([type, { schema, example }]) =>
            html`<p><code>${type}</code></p>
              ${isJsonType(type) && [fieldsOf('Fields', schema, shapes, false), exampleOf('Example', example)]}`,
        )}
        ${
          headers.length > 0 &&
          html`<details>
            <summary>Headers <span>${headers.map(({ name }) => name).join(', ')}</span></summary>
            <ul>
              ${headers.map(({ name, description: said }) => html`<li><code>${name}</code> ${prose(said)}</li> `)}
            </ul>
          </details>`
        }`,
  );

const refusalsOf = (answers: readonly AnswerOf[], shapes: Shapes): Piece => {
  const more = answers.flatMap(({ status, content }) => {
    const schema = content['application/problem+json']?.schema;
    return shapeName(schema) === 'Problem' || !schema ? [] : [fieldsOf(`Fields of the ${status}`, schema, shapes, false)];
  });
  return html`<h4>Refusals</h4>
    <p>
      ${answers.map(
        ({ status, description }, at) =>
          html`${at > 0 && ' · '}<a href="/v1/problems#status-${status}" title="${description}"><span class="status">${status}</span></a>`,
      )}
    </p>
    ${more}`;
};

const deprecationOf = ({ deprecated }: Described): Piece =>
  deprecated &&
  html`<p class="warn">
    Deprecated${deprecated.since && ` since ${deprecated.since}`}${deprecated.sunset && `; it goes on ${deprecated.sunset}`}.
    ${deprecated.link && html`<a href="${deprecated.link}">What to use instead</a>`}
  </p>`;

/** One operation: what it is for, who may call it, what it takes, what comes back, and how it can be refused. */
export const operationSection = (operation: Described, shapes: Shapes, isOpen: boolean): Html => {
  const { id, method, path, summary, description } = operation;
  const isRefusal = ({ status }: AnswerOf): boolean => /^[45]/.test(status);
  return html`<section id="${id}">
    <h2>${summary}</h2>
    <p class="call"><span class="m ${method}">${method.toUpperCase()}</span> <code>${path}</code></p>
    <p class="who">
      ${prose(description)} <span>Operation <code>${id}</code>.</span>
    </p>
    ${deprecationOf(operation)} ${exampleOf('Command', commandOf(operation, isOpen))} ${parametersOf(operation.parameters, shapes)}
    ${bodyOf(operation.body, shapes)}
    ${answersOf(
      operation.answers.filter((one) => !isRefusal(one)),
      shapes,
    )}
    ${refusalsOf(operation.answers.filter(isRefusal), shapes)}
  </section> `;
};
