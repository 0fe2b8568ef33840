import { CATALOGUE, type ProblemKey } from '../problems/catalogue.js';
import { html, prose, type Html } from './html.js';
import { layout } from './layout.js';

const KEYS = Object.keys(CATALOGUE) as ProblemKey[];

const STATUS_WORDS: Readonly<Record<number, string>> = {
  400: 'Something in the request is not valid',
  401: 'Nobody known is asking',
  403: 'Whoever asks may not do that',
  404: 'It is not there',
  405: 'The address does not take this method',
  406: 'No such form',
  408: 'Too slow',
  409: 'Something else is in the way',
  412: 'It was changed meanwhile',
  413: 'Too large',
  415: 'The body is of another kind',
  422: 'Understood, and not possible',
  428: 'A version must be named',
  429: 'Too many, or too soon',
  431: 'Too long headers',
  500: 'The server failed',
  502: 'Another server failed',
  503: 'Not now',
};

/** A message with places to be filled in: {count} fields are not valid. */
const detailOf = (text: string): Html => html`${text.split(/(\{\w+\})/).map((part) => (/^\{\w+\}$/.test(part) ? html`<code>${part}</code>` : part))}`;

const tableOf = (status: number): Html =>
  html`<section id="status-${status}">
    <h2>${status} · ${STATUS_WORDS[status] ?? 'Refused'}</h2>
    <table class="fields">
      ${KEYS.filter((key) => CATALOGUE[key].status === status).map(
        (key) =>
          html`<tr>
            <td>
              <a href="/v1/problems/${key}"><code>${key}</code></a>
            </td>
            <td>${detailOf(CATALOGUE[key].detail)}</td>
            <td>${prose(CATALOGUE[key].remedy)}</td>
          </tr> `,
      )}
    </table>
  </section> `;

/** All problems, by status. */
export const problemsPage = (domains: readonly string[]): string => {
  const statuses = [...new Set(KEYS.map((key) => CATALOGUE[key].status))].sort((a, b) => a - b);
  return layout({
    title: 'Problems',
    here: '/v1/problems',
    domains,
    contents: statuses.map((status) => ({ href: `#status-${status}`, name: `${status} ${STATUS_WORDS[status] ?? ''}` })),
    main: html`<h1>Problems</h1>
      <p class="lead">Every way in which this API says no, what it means, and what can be done about it.</p>
      <p>The <code>type</code> of a refusal is the address of its page. Programs get this list as JSON. <a href="/v1/docs#refusals">How refusals look</a></p>
      ${statuses.map(tableOf)}`,
  });
};

/** One problem: what the `type` of a refusal leads to. */
export const problemPage = (key: ProblemKey, domains: readonly string[]): string => {
  const { status, title, detail, remedy } = CATALOGUE[key];
  const others = KEYS.filter((one) => one !== key && CATALOGUE[one].status === status);
  return layout({
    title,
    here: '/v1/problems',
    domains,
    main: html`<h1>${title}</h1>
      <p class="call"><span class="status">${status}</span> <code>/v1/problems/${key}</code></p>
      <h2>What happened</h2>
      <p>${detailOf(detail)}</p>
      <h2>What to do</h2>
      <p>${prose(remedy)}</p>
      ${
        others.length > 0 &&
        html`<h2>Others with ${status}</h2>
          <ul>
            ${others.map(
              (one) =>
                html`<li>
                  <a href="/v1/problems/${one}"><code>${one}</code></a> ${CATALOGUE[one].title}
                </li> `,
            )}
          </ul>`
      }
      <p><a href="/v1/problems">All problems</a></p>`,
  });
};
