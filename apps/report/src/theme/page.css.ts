import type { DocumentOptions } from '@lathwork/model';
import { liveArea, MARGINS, paperSize, type Orientation } from './paper.js';

export interface Footer {
  left: string;
  centre: string;
  /** "Page {page} of {pages}" in the document's language. */
  page: string;
}

/** A string for CSS `content`: quotes, back slashes, angle brackets and line ends go as code points, so no text can leave the string or the style element. */
export const cssString = (text: string): string =>
  `"${[...text].map((c) => (/["\\<>\n\r\f&]/.test(c) ? `\\${(c.codePointAt(0) ?? 0).toString(16)} ` : c)).join('')}"`;

const FOOT = 'font:500 9.5pt "Source Sans 3";vertical-align:top;padding-top:1.4mm;white-space:nowrap';

function pageCounter(template: string): string {
  return template
    .split(/(\{pages?\})/)
    .filter((part) => part !== '')
    .map((part) => (part === '{page}' ? 'counter(page)' : part === '{pages}' ? 'counter(pages)' : cssString(part)))
    .join(' ');
}

function namedPage(paper: DocumentOptions['paper'], orientation: Orientation, footer: Footer): string {
  const sheet = paperSize(paper, orientation);
  const m = MARGINS[orientation];
  const live = liveArea(paper, orientation);
  return [
    `@page ${orientation}{size:${sheet.widthMm}mm ${sheet.heightMm}mm;margin:${m.top}mm ${m.right}mm ${m.bottom}mm ${m.left}mm;`,
    `@bottom-left{content:${cssString(footer.left)};${FOOT}}`,
    `@bottom-center{content:${cssString(footer.centre)};${FOOT};font-weight:700}`,
    `@bottom-right{content:${pageCounter(footer.page)};${FOOT}}}`,
    `.${orientation}{page:${orientation};width:${live.widthMm.toFixed(2)}mm;height:${live.heightMm.toFixed(2)}mm}`,
  ].join('');
}

/** Paper, margins and the running foot. A4 and Letter, upright and on the side. */
export const pageCss = (paper: DocumentOptions['paper'], footer: Footer): string =>
  namedPage(paper, 'portrait', footer) + namedPage(paper, 'landscape', footer);
