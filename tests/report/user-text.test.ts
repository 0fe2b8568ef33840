import { afterAll, beforeAll, expect, test } from '@jest/globals';
import type { ReportApp } from '../../apps/report/src/app.js';
import { MissingGlyphError } from '../../apps/report/src/theme/fonts.js';
import { openPdf, pageTexts, reportApp, sampleRequest } from './support.js';

let app: ReportApp;
beforeAll(() => {
  app = reportApp();
});
afterAll(() => app.stop(), 30_000);

const squeeze = (text: string): string => text.normalize('NFC').replace(/\s+/g, '');

/** Names that try to leave their place: in markup, in attributes, in CSS, in PDF strings, in templates. */
const HOSTILE = [
  '<script>alert(1)</script>',
  '<img src=x onerror=alert(1)>',
  '</style><h1>big</h1>',
  '</title><b>bold</b>',
  '"><svg onload=alert(1)>',
  "' onmouseover='x",
  '&amp; &lt; &#60;',
  '{{7*7}} ${7*7} {page}',
  '") ; } body{display:none} /*',
  '\\22 \\3c x',
  '(unbalanced ) ( \\) <</JS>>',
  '%PDF-1.7 %%EOF',
  'Robert"); DROP TABLE plans;--',
  '../../etc/passwd',
  'a'.repeat(120),
  '<!-- comment --> ]]> <![CDATA[',
];
const FOREIGN = [
  'Jard\u00edn de ni\u00f1os',
  'V\u01b0\u1eddn rau Nguy\u1ec5n',
  'J\u00e8den kominot\u00e8',
  'Ogr\u00f3d \u0141\u00f3d\u017a',
  'S\u00fcdstra\u00dfe',
  '\u0421\u0430\u0434 \u0432\u0435\u0441\u043d\u0430',
  '\u039a\u03ae\u03c0\u03bf\u03c2',
];

test.each([...HOSTILE, ...FOREIGN])(
  'the name %j shows literally and changes nothing else',
  async (name) => {
    const made = await app.renderer.render(sampleRequest({ names: { build: name, site: name, drawnBy: name.slice(0, 40) } }));
    const pdf = openPdf(made.bytes);
    const texts = pageTexts(pdf);
    expect(squeeze(texts[0] ?? '')).toContain(squeeze(name));
    expect(texts[0]).toContain('Page 1 of');
    expect(pdf.getTrailer().get('Info').get('Title').asString()).toContain(name);
  },
  30_000,
);

test.each([
  ['\u5927\u7530', 'U+5927'],
  ['\u0628\u0633\u062a\u0627\u0646', 'U+0628'],
  ['\u092c\u093e\u0917', 'U+092C'],
  ['Plot \u{1f331}', 'U+1F331'],
  ['a\u202eb', 'U+202E'],
  ['z\u200bw', 'U+200B'],
])('a character the fonts lack is refused by name: %j', async (name, code) => {
  await expect(app.renderer.render(sampleRequest({ names: { build: name } }))).rejects.toThrow(MissingGlyphError);
  await expect(app.renderer.render(sampleRequest({ names: { build: name } }))).rejects.toThrow(code);
});
