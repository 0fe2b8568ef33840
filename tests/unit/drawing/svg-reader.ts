import { textWidth } from '@lathwork/drawing';

export interface Tag {
  name: string;
  attributes: Record<string, string>;
  text: string;
}

const unescape = (s: string): string =>
  s
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, '&');

/** A small strict XML check: every tag closed in order, every attribute quoted, no bare & or <. Throws with the place. */
export function readSvg(svg: string): Tag[] {
  const tags: Tag[] = [];
  const open: string[] = [];
  const pattern = /<(\/?)([a-z]+)((?:\s+[a-zA-Z-]+="[^"<]*")*)\s*(\/?)>|([^<]+)/gy;
  while (pattern.lastIndex < svg.length) {
    const from = pattern.lastIndex;
    const m = pattern.exec(svg);
    if (m === null) throw new Error(`not well formed at ${from}: ${svg.slice(from, from + 60)}`);
    const [, close, name = '', attributes = '', selfClosed, text] = m;
    const bare = (text ?? attributes).replace(/&(amp|lt|gt|quot);/g, '');
    if (bare.includes('&')) throw new Error(`bare ampersand: ${m[0].slice(0, 60)}`);
    if (text !== undefined) {
      if (open.length === 0) throw new Error('text outside the root');
      const last = tags.at(-1);
      if (last) last.text += unescape(text);
    } else if (close === '/') {
      if (open.pop() !== name) throw new Error(`wrong closing tag ${name}`);
    } else {
      tags.push({
        name,
        attributes: Object.fromEntries([...attributes.matchAll(/([a-zA-Z-]+)="([^"]*)"/g)].map((a) => [a[1] ?? '', unescape(a[2] ?? '')])),
        text: '',
      });
      if (selfClosed !== '/') open.push(name);
    }
  }
  if (open.length > 0) throw new Error(`never closed: ${open.join(' ')}`);
  return tags;
}

type Corner = readonly [number, number];
export interface Letters {
  text: string;
  corners: Corner[];
}

const SIZES: Record<string, number> = { let: 3.788, small: 3.175, head: 4.586, '': 3.528 };

/** The ink of every text: capital height above the base line, brackets below it, turned as the text is. Read from the SVG alone. */
export function lettersOf(svg: string): Letters[] {
  return readSvg(svg)
    .filter((t) => t.name === 'text')
    .map((t) => {
      const cls = t.attributes['class'] ?? '';
      const size = SIZES[cls.split(' ')[0] ?? ''] ?? 3.528;
      const w = textWidth(t.text, cls as Parameters<typeof textWidth>[1]);
      const x = Number(t.attributes['x']);
      const y = Number(t.attributes['y']);
      const anchor = t.attributes['text-anchor'] ?? 'start';
      const left = anchor === 'middle' ? -w / 2 : anchor === 'end' ? -w : 0;
      const turn = (Number(/rotate\((-?[\d.]+)/.exec(t.attributes['transform'] ?? '')?.[1] ?? 0) * Math.PI) / 180;
      const at = (dx: number, dy: number): Corner => [x + dx * Math.cos(turn) - dy * Math.sin(turn), y + dx * Math.sin(turn) + dy * Math.cos(turn)];
      return { text: t.text, corners: [at(left, -size * 0.68), at(left + w, -size * 0.68), at(left + w, size * 0.15), at(left, size * 0.15)] };
    });
}

/** Separating axes of two turned boxes. */
export function overlapping(a: Letters, b: Letters): boolean {
  for (const box of [a, b]) {
    for (const i of [0, 1]) {
      const [p, q] = [box.corners[i] ?? [0, 0], box.corners[i + 1] ?? [0, 0]];
      const axis: Corner = [q[0] - p[0], q[1] - p[1]];
      const span = (l: Letters): Corner => {
        const d = l.corners.map((c) => c[0] * axis[0] + c[1] * axis[1]);
        return [Math.min(...d), Math.max(...d)];
      };
      const [a0, a1] = span(a);
      const [b0, b1] = span(b);
      const slack = 0.02 * Math.hypot(...axis);
      if (a1 <= b0 + slack || b1 <= a0 + slack) return false;
    }
  }
  return true;
}

export function collisions(svg: string): string[] {
  const all = lettersOf(svg);
  return all.flatMap((a, i) =>
    all
      .slice(i + 1)
      .filter((b) => overlapping(a, b))
      .map((b) => `${a.text} | ${b.text}`),
  );
}

/** Letters that leave the paper. */
export function outside(svg: string, widthMm: number, heightMm: number): string[] {
  return lettersOf(svg)
    .filter((l) => l.corners.some(([x, y]) => x < -0.05 || y < -0.05 || x > widthMm + 0.05 || y > heightMm + 0.05))
    .map((l) => l.text);
}

/** Corner points of every closed path of a class. */
export const closedPaths = (svg: string, cls: string): number[][][] =>
  readSvg(svg)
    .filter((t) => t.name === 'path' && t.attributes['class'] === cls && (t.attributes['d'] ?? '').endsWith('Z'))
    .map((t) =>
      (t.attributes['d'] ?? '')
        .slice(1, -1)
        .split('L')
        .map((p) => p.split(' ').map(Number)),
    );
