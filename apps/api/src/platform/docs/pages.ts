import type { OpenAPIObject } from '@nestjs/swagger';
import { domainsOf, type Described, type Domain } from './described.js';
import { GUIDE } from './guide.js';
import { html, prose, type Html } from './html.js';
import { layout } from './layout.js';
import { operationSection } from './operations.js';
import { Shapes } from './shapes.js';

const isOpen = (document: OpenAPIObject, { path, method }: Described): boolean =>
  (document.paths[path] as Record<string, Record<string, unknown>> | undefined)?.[method]?.['x-public'] === true;

const lineOf = ({ domain, id, method, path, summary }: Described): Html =>
  html`<tr>
    <td>
      <a href="/v1/docs/${domain}#${id}"><span class="m ${method}">${method.toUpperCase()}</span> <code>${path}</code></a>
    </td>
    <td>${summary}</td>
  </tr> `;

const indexOf = (domain: Domain): Html =>
  html`<h3 id="domain-${domain.name}"><a href="/v1/docs/${domain.name}">${domain.name}</a></h3>
    <p>${prose(domain.description)}</p>
    <table class="index">
      ${domain.operations.map(lineOf)}
    </table> `;

const start = (document: OpenAPIObject, domains: readonly Domain[]): string =>
  layout({
    title: 'How it works',
    here: '/v1/docs',
    domains: domains.map(({ name }) => name),
    contents: [...GUIDE.map(({ id, name }) => ({ href: `#${id}`, name })), { href: '#operations', name: 'All operations' }],
    main: html`<h1>${document.info.title} ${document.info.version}</h1>
      <p class="lead">${prose(document.info.description)}</p>
      <p>
        These pages come from the description that the server itself follows, <a href="/v1/openapi.json">openapi.json</a> (OpenAPI 3.1): a client in your
        language can be made from it.
      </p>
      ${GUIDE.map(
        ({ id, name, body }) =>
          html`<section id="${id}">
            <h2>${name}</h2>
            ${body}
          </section>`,
      )}
      <section id="operations">
        <h2>All operations</h2>
        ${domains.map(indexOf)}
      </section>`,
  });

const domainPage = (document: OpenAPIObject, domain: Domain, domains: readonly Domain[]): string => {
  const shapes = new Shapes(document);
  return layout({
    title: domain.name,
    here: `/v1/docs/${domain.name}`,
    domains: domains.map(({ name }) => name),
    contents: domain.operations.map(({ id, summary }) => ({ href: `#${id}`, name: summary })),
    main: html`<h1>${domain.name}</h1>
      <p class="lead">${prose(domain.description)}</p>
      <p class="who">A star marks what is required. <a href="/v1/docs">How it works</a> says what holds for all operations.</p>
      ${domain.operations.map((operation) => operationSection(operation, shapes, isOpen(document, operation)))}`,
  });
};

/** The pages for people, made once from the very document that is published. */
export class DocsPages {
  private readonly made = new Map<string, string>();
  private readonly domains: readonly Domain[];

  constructor(private readonly document: OpenAPIObject) {
    this.domains = domainsOf(document);
  }

  start(): string {
    return this.kept('', () => start(this.document, this.domains));
  }

  /** The page of one domain; null when there is no such domain. */
  domain(name: string): string | null {
    const domain = this.domains.find((one) => one.name === name);
    return domain ? this.kept(name, () => domainPage(this.document, domain, this.domains)) : null;
  }

  get domainNames(): string[] {
    return this.domains.map(({ name }) => name);
  }

  private kept(name: string, make: () => string): string {
    const page = this.made.get(name) ?? make();
    this.made.set(name, page);
    return page;
  }
}
