import type { DocumentRequest } from '@lathwork/model';
import { planBook } from '../documents/plan-book/plan-book.js';
import { composeBody, headingsOf, measuringBody } from '../layout/compose.js';
import type { Book } from '../layout/book.js';
import { baseCss } from '../theme/base.css.js';
import { fontFacesFor, fontsFingerprint } from '../theme/fonts.js';
import { pageCss } from '../theme/page.css.js';
import { tokensCss } from '../theme/tokens.css.js';
import { finishPdf, type FinishedPdf } from './finish.js';
import { htmlDocument, visibleText } from './html.js';
import type { BoundedQueue } from './queue.js';
import { measureHeights, printPdf, RenderTimeoutError } from './render.js';
import type { BrowserSupervisor } from './supervisor.js';

export const REPORT_VERSION = '0.1.0';
const PRODUCER = `Lathwork report ${REPORT_VERSION}`;
/** What the page counters and the browser itself may set beside our text. */
const COUNTER_CHARACTERS = '0123456789\u2013 ';

export interface Rendered extends FinishedPdf {
  engineVersion: string;
}

function cssOf(book: Book, text: string): string {
  return fontFacesFor(text) + tokensCss + baseCss + book.css + pageCss(book.paper, book.footer);
}

/** The book as a closed HTML file, without a browser: the first pass, in which heights are still to be measured. */
export function measuringHtml(book: Book): string {
  const body = measuringBody(book);
  return htmlDocument({ language: book.language, title: book.title, css: cssOf(book, allText(book, body)), body });
}

const allText = (book: Book, body: string): string =>
  [visibleText(body), book.title, book.footer.left, book.footer.centre, book.footer.page, COUNTER_CHARACTERS].join(' ');

/** Takes a finished plan and gives PDF bytes. It holds no state but its browser, and asks nobody. */
export class Renderer {
  constructor(
    private readonly supervisor: BrowserSupervisor,
    private readonly queue: BoundedQueue,
    private readonly timeoutMs: number,
    private readonly now: () => number,
  ) {}

  async engineVersion(): Promise<string> {
    return `report-${REPORT_VERSION}+${(await this.supervisor.version()).replace('HeadlessChrome/', 'chromium-').replace('Chrome/', 'chromium-')}+fonts-${fontsFingerprint()}`;
  }

  render(request: DocumentRequest): Promise<Rendered> {
    return this.queue.run(() =>
      this.supervisor.use(async (browser) => {
        const deadline = this.now() + this.timeoutMs;
        const left = (): number => {
          const ms = deadline - this.now();
          if (ms <= 0) throw new RenderTimeoutError();
          return ms;
        };
        const book = planBook(request);
        const heights = await measureHeights(browser, measuringHtml(book), left());
        const { body } = composeBody(book, heights);
        const html = htmlDocument({ language: book.language, title: book.title, css: cssOf(book, allText(book, body)), body });
        const raw = await printPdf(browser, html, left());
        const finished = await finishPdf(raw, {
          title: book.title,
          language: book.language,
          datedOn: request.datedOn,
          author: book.author,
          producer: PRODUCER,
          headings: headingsOf(body),
          describeLink: book.describeLink,
        });
        return { ...finished, engineVersion: await this.engineVersion() };
      }),
    );
  }

  drained(): Promise<void> {
    return this.queue.drained();
  }
}
