/** Small drawings of the page itself (tape, marks, signs). One user unit is one millimetre; line classes are those of the drawings. */
type Point = readonly [number, number];

const r = (value: number): number => Number(value.toFixed(3));
export const escapeMarkup = (text: string): string =>
  text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;').replace(/'/g, '&#39;');

/** An empty label makes the picture decoration: the words beside it say the same. */
export const svg = (w: number, h: number, label: string, body: string): string =>
  `<svg class="lw" ${label === '' ? 'aria-hidden="true"' : `role="img" aria-label="${escapeMarkup(label)}"`} width="${r(w)}mm" height="${r(h)}mm" viewBox="0 0 ${r(w)} ${r(h)}">${body}</svg>`;

export const line = (a: Point, b: Point, kind = 'vis'): string => `<path class="${kind}" d="M${r(a[0])} ${r(a[1])}L${r(b[0])} ${r(b[1])}"/>`;
export const path = (points: readonly Point[], kind = 'vis', close = false): string =>
  `<path class="${kind}" d="M${points.map((p) => `${r(p[0])} ${r(p[1])}`).join('L')}${close ? 'Z' : ''}"/>`;
export const rect = (x: number, y: number, w: number, h: number, kind = 'vis'): string =>
  path(
    [
      [x, y],
      [x + w, y],
      [x + w, y + h],
      [x, y + h],
    ],
    kind,
    true,
  );
export const circle = (x: number, y: number, radius: number, kind = 'vis'): string => `<circle class="${kind}" cx="${r(x)}" cy="${r(y)}" r="${r(radius)}"/>`;
export const text = (x: number, y: number, words: string, kind = '', anchor: 'start' | 'middle' | 'end' = 'start'): string =>
  `<text class="${kind}" text-anchor="${anchor}" x="${r(x)}" y="${r(y)}">${escapeMarkup(words)}</text>`;

/** Capital height of drawing lettering. */
export const LETTER_MM = 2.5;
const BOLD_CAP_MM = 2.35;

/** The paper tag tied to a thing from the pile. */
const tag = (label: string): string => {
  const w = 5.6 + Math.max(2, label.length) * BOLD_CAP_MM * 0.9;
  return svg(
    w + 0.8,
    6.8,
    '',
    path(
      [
        [2, 0.4],
        [w, 0.4],
        [w, 6.4],
        [2, 6.4],
        [0.4, 4.8],
        [0.4, 2],
      ],
      'tag',
      true,
    ) +
      circle(2.3, 3.4, 0.65) +
      text((w + 3.6) / 2, 3.4 + LETTER_MM / 2, label, 'let b', 'middle'),
  );
};

/** The plain ring of a thing to buy. */
const ring = (label: string): string => svg(8, 8, '', circle(4, 4, 3.6, 'tag') + text(4, 4 + LETTER_MM / 2, label, 'let b', 'middle'));

export const markSvg = (label: string, source: 'pile' | 'buy'): string => (source === 'pile' ? tag(label) : ring(label.slice(0, 3)));

/** The tape along the top of every page. Its striped part is exactly 100 mm, so that every page proves its own print scale. */
export function tapeSvg(widthMm: number, note: string, label: string): string {
  const y = 4.6;
  const x0 = 0.2;
  const out = [line([x0, y], [widthMm, y])];
  for (let i = 0; i < 10; i += 1) out.push(rect(x0 + i * 10, y - 1.4, 10, 1.4, i % 2 === 0 ? 'box solid' : 'box'));
  for (let x = x0 + 110; x <= widthMm; x += 10) out.push(line([x, y], [x, y - 1.4]));
  for (const x of [0, 100]) out.push(line([x0 + x, y + 0.7], [x0 + x, y - 3]));
  out.push(text(1.2, y - 2.1, '0', 'small'), text(99, y - 2.1, '100 mm', 'small', 'end'), text(widthMm - 0.4, y - 2.1, note, 'small', 'end'));
  return svg(widthMm, 5.4, label, out.join(''));
}

/** The sign is drawn; its word stands beside it as text, so the picture says nothing of its own. */
export function octagonSvg(word: string): string {
  const c = 9;
  const points = Array.from({ length: 8 }, (_, i): Point => {
    const a = ((i + 0.5) * Math.PI) / 4;
    return [c + 8.6 * Math.cos(a), c + 8.6 * Math.sin(a)];
  });
  return svg(18, 18, '', path(points, 'cut', true) + text(c, c + 1.6, word, 'head', 'middle'));
}

export const triangleSvg = (): string =>
  svg(
    10,
    9,
    '',
    path(
      [
        [5, 0.6],
        [9.6, 8.4],
        [0.4, 8.4],
      ],
      'vis',
      true,
    ) +
      line([5, 3.2], [5, 6], 'cut') +
      circle(5, 7.2, 0.45, 'solid'),
  );

/** North on a small ring: the needle points up when the top of the paper is north. */
export function northSvg(label: string, degFromUp: number): string {
  const a = (degFromUp * Math.PI) / 180;
  const at = (along: number, side = 0): Point => [9 + Math.sin(a) * along + Math.cos(a) * side, 9 - Math.cos(a) * along + Math.sin(a) * side];
  const [nx, ny] = at(7.4);
  return svg(
    18,
    18,
    label,
    circle(9, 9, 5, 'thin') +
      path([at(5), at(-4, 2.5), at(-2)], 'solid', true) +
      path([at(5), at(-4, -2.5), at(-2)], 'face', true) +
      text(nx, ny + LETTER_MM / 2, 'N', 'let b', 'middle'),
  );
}

/** A scale bar with feet above and metres below, for a view that stands without its own heading. */
export function scaleBarSvg(denominator: number, label: string, barMm = 38): string {
  const foot = 304.8 / denominator;
  const metre = 1000 / denominator;
  const feet = Math.max(1, Math.round(barMm / foot));
  const metres = Math.max(1, Math.round(barMm / metre));
  const out: string[] = [];
  for (let i = 0; i < feet; i += 1) out.push(rect(0.2 + i * foot, 3.4, foot, 1.2, i % 2 === 0 ? 'box solid' : 'box'));
  for (let i = 0; i < metres * 4; i += 1) out.push(rect(0.2 + (i * metre) / 4, 4.6, metre / 4, 1.2, i % 2 === 0 ? 'box' : 'box solid'));
  const width = Math.max(feet * foot, metres * metre) + 1;
  out.push(
    text(0, 2.6, '0', 'small'),
    text(0.2 + feet * foot, 2.6, `${feet} ft`, 'small', 'end'),
    text(0, 9, '0', 'small'),
    text(0.2 + metres * metre, 9, `${metres} m`, 'small', 'end'),
  );
  return svg(width, 9.6, label, out.join(''));
}
