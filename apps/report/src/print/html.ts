/** Text content of markup we made ourselves: what a reader will see, for the glyph check. */
export function visibleText(html: string): string {
  return html
    .replace(/<style(?:[^<]|<(?!\/?style))*<\/style>/g, '')
    .replace(/<[^<>]*>/g, ' ')
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&#39;/g, "'")
    .replace(/&amp;/g, '&');
}

const escapeText = (text: string): string => text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');

export interface HtmlParts {
  language: string;
  title: string;
  css: string;
  body: string;
}

/** The content policy is one of several layers: even markup that slipped in could load nothing. */
export const htmlDocument = ({ language, title, css, body }: HtmlParts): string =>
  `<!doctype html><html lang="${escapeText(language)}"><head><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; font-src data:; img-src data:"><title>${escapeText(title)}</title><style>${css}</style></head><body>${body}</body></html>`;
