import { Html, html, type Piece } from './html.js';
import { STYLE } from './style.js';

export interface Place {
  href: string;
  name: string;
}

interface Layout {
  title: string;
  /** Of these pages the one that is shown. */
  here: string;
  domains: readonly string[];
  /** What stands on this page. */
  contents?: readonly Place[];
  main: Piece;
}

const MORE: readonly Place[] = [
  { href: '/v1/problems', name: 'All problems' },
  { href: '/v1/openapi.json', name: 'openapi.json' },
];

const linksOf = (title: string, places: readonly Place[], here: string): Html =>
  html`<p>${title}</p>
    <ul>
      ${places.map(({ href, name }) => html`<li><a href="${href}" ${href === here && new Html('aria-current="page"')}>${name}</a></li> `)}
    </ul>`;

/** Every page has the same frame: on the left where one is and what else there is, on the right the matter. On a phone the left comes last. */
export const layout = ({ title, here, domains, contents = [], main }: Layout): string => {
  const pages = [{ href: '/v1/docs', name: 'How it works' }, ...MORE];
  const parts = domains.map((name) => ({ href: `/v1/docs/${name}`, name }));
  const page = html`<html lang="en">
    <head>
      <meta charset="utf-8" />
      <meta name="viewport" content="width=device-width, initial-scale=1" />
      <title>${title} · Lathwork API</title>
      <style>
        ${new Html(STYLE)}
      </style>
    </head>
    <body>
      <a class="skip" href="#main">To the matter</a>
      <p class="jump"><a href="/v1/docs">Lathwork API</a> <a href="#pages">All pages</a></p>
      <div class="page">
        <nav class="side" id="pages" aria-label="Pages">
          <a class="name" href="/v1/docs">Lathwork API</a>
          ${contents.length > 0 && linksOf('On this page', contents, '')} ${linksOf('Pages', pages, here)} ${linksOf('Operations', parts, here)}
        </nav>
        <main id="main">${main}</main>
      </div>
    </body>
  </html>`;
  return `<!doctype html>${page.text}`;
};
