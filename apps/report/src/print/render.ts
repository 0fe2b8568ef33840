import type { Browser, Page } from 'puppeteer-core';

/** What the browser measured: the height each marked block takes, in millimetres. */
export type Heights = ReadonlyMap<string, number>;

export interface Overflow {
  page: number;
  name: string;
  downMm: number;
  rightMm: number;
}

export class OverflowError extends Error {
  constructor(readonly overflows: readonly Overflow[]) {
    super(
      `content is larger than its page: ${overflows.map((o) => `page ${o.page} (${o.name}) by ${o.downMm.toFixed(1)} mm down, ${o.rightMm.toFixed(1)} mm right`).join('; ')}`,
    );
  }
}

export class RenderTimeoutError extends Error {
  constructor() {
    super('the document took too long to set');
  }
}

const MM_PER_PX = 25.4 / 96;
/** Half a CSS pixel: what rounding in the browser alone can make. */
const OVERFLOW_TOLERANCE_MM = 0.15;

/** A page in a context of its own, closed to everything: no script, no network, no file; only what setContent gives it. */
async function closedPage(browser: Browser): Promise<{ page: Page; close: () => Promise<void> }> {
  const context = await browser.createBrowserContext();
  try {
    const page = await context.newPage();
    await page.setJavaScriptEnabled(false);
    await page.setRequestInterception(true);
    page.on('request', (request) => {
      // An empty answer makes the browser stay where it is; an aborted navigation would replace our page by an error page.
      const answered =
        request.isNavigationRequest() && request.frame() === page.mainFrame()
          ? request.respond({ status: 204 })
          : request.url().startsWith('data:')
            ? request.continue()
            : request.abort('blockedbyclient');
      void answered.catch(() => undefined);
    });
    await page.setOfflineMode(true);
    return { page, close: () => context.close().catch(() => undefined) };
  } catch (error) {
    await context.close().catch(() => undefined);
    throw error;
  }
}

async function withPage<T>(browser: Browser, html: string, timeoutMs: number, work: (page: Page) => Promise<T>): Promise<T> {
  const { page, close } = await closedPage(browser);
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new RenderTimeoutError()), Math.max(1, timeoutMs));
  });
  const run = async (): Promise<T> => {
    await page.setContent(html, { waitUntil: 'load', timeout: Math.max(1, timeoutMs) });
    await page.emulateMediaType('print');
    return work(page);
  };
  try {
    return await Promise.race([run(), late]);
  } catch (error) {
    if (error instanceof Error && error.name === 'TimeoutError') throw new RenderTimeoutError();
    throw error;
  } finally {
    clearTimeout(timer);
    await close();
  }
}

/** Heights of all elements that carry data-measure, with their margins. */
export async function measureHeights(browser: Browser, html: string, timeoutMs: number): Promise<Heights> {
  const pairs = await withPage(browser, html, timeoutMs, (page) =>
    page.evaluate(async () => {
      await document.fonts.ready;
      return [...document.querySelectorAll('[data-measure]')].map((element): [string, number] => [
        element.getAttribute('data-measure') ?? '',
        element.getBoundingClientRect().height,
      ]);
    }),
  );
  return new Map(pairs.map(([name, px]) => [name, px * MM_PER_PX]));
}

/** One element wider than its page makes the browser shrink every page without a word, so nothing is printed then. */
const findOverflows = (page: Page): Promise<{ page: number; name: string; down: number; right: number }[]> =>
  page.evaluate(async () => {
    await document.fonts.ready;
    return [...document.querySelectorAll('.page')].map((section, index) => {
      const own = section.getBoundingClientRect();
      let down = 0;
      let right = 0;
      for (const element of section.querySelectorAll('*')) {
        const tag = element.tagName.toLowerCase();
        if (element.closest('svg') !== null && tag !== 'svg' && tag !== 'text') continue;
        // An inline box is as tall as its font, not as its line: it may stand out without being cut.
        if (tag !== 'text' && getComputedStyle(element).display === 'inline') continue;
        const box = element.getBoundingClientRect();
        if (box.width === 0 && box.height === 0) continue;
        // The box of a letter is a little wider than its ink.
        const bearing = tag === 'text' ? 1.5 : 0;
        down = Math.max(down, box.bottom - own.bottom - bearing);
        right = Math.max(right, box.right - own.right - bearing, own.left - box.left - bearing);
      }
      return { page: index + 1, name: section.getAttribute('data-name') ?? '', down, right };
    });
  });

export async function printPdf(browser: Browser, html: string, timeoutMs: number): Promise<Uint8Array> {
  return withPage(browser, html, timeoutMs, async (page) => {
    const over = (await findOverflows(page))
      .map((o) => ({ page: o.page, name: o.name, downMm: o.down * MM_PER_PX, rightMm: o.right * MM_PER_PX }))
      .filter((o) => o.downMm > OVERFLOW_TOLERANCE_MM || o.rightMm > OVERFLOW_TOLERANCE_MM);
    if (over.length > 0) throw new OverflowError(over);
    return page.pdf({ preferCSSPageSize: true, printBackground: true, tagged: true, outline: true, timeout: Math.max(1, timeoutMs) });
  });
}
