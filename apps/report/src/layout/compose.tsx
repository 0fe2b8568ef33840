import type { VNode } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { MeasureName, Tape } from '../parts/parts.js';
import { Table, type TableSpec } from '../parts/table.js';
import type { Heights } from '../print/render.js';
import { liveArea, type Orientation } from '../theme/paper.js';
import type { Book, BookPart, ContentsLine, FixedPart, FlowItem, FlowPart } from './book.js';

/** Tape and the gap under it, at the head of every page. */
const TAPE_MM = 5.4;
const BLOCK_GAP_MM = 4;
/** What rounding to whole pixels may add up to over a page of rows. */
const SLACK_MM = 1.5;

const Page = ({
  book,
  name,
  orientation,
  flow = false,
  children,
}: {
  book: Book;
  name: string;
  orientation: Orientation;
  flow?: boolean;
  children: VNode | VNode[];
}): VNode => (
  <section class={`page ${orientation}${flow ? ' flow' : ''}`} data-name={name}>
    <Tape widthMm={liveArea(book.paper, orientation).widthMm} note={book.tapeNote[orientation]} label={book.tapeLabel} />
    {children}
  </section>
);

const itemKey = (part: number, item: number): string => `p${part}/i${item}`;

/** Names of the shortenings of a page in the measuring pass. */
const shortKey = (name: string, shortening: number, page = 1): string => `${name}/s${shortening}/n${page}`;
const pagesOf = (part: FixedPart, shortening: number): number => part.pages?.(shortening) ?? 1;

const Natural = ({ book, orientation, name, children }: { book: Book; orientation: Orientation; name: string; children: VNode }): VNode => {
  const { widthMm } = liveArea(book.paper, orientation);
  return (
    <section class="page" style={`width:${widthMm}mm;break-after:auto`} data-measure={name}>
      <Tape widthMm={widthMm} note="" label="" />
      {children}
    </section>
  );
};

const upTo = (count: number): number[] => Array.from({ length: count }, (_, i) => i);

/** The measuring pass: every fixed page at its natural height, every running item and row in its column. */
export function measuringBody(book: Book): string {
  const width = `width:${liveArea(book.paper, 'portrait').widthMm}mm`;
  const listed = book.parts.flatMap((part) => (part.title === null ? [] : [{ name: part.name, title: part.title, page: 88 }]));
  const cover = upTo(book.coverShortenings).map((s) =>
    renderToString(
      <Natural book={book} orientation="portrait" name={shortKey('cover', s)}>
        {book.cover(listed, s)}
      </Natural>,
    ),
  );
  const parts = book.parts.map((part, p) => {
    if (part.kind === 'fixed') {
      return upTo(part.shortenings ?? 1)
        .flatMap((s) =>
          upTo(pagesOf(part, s)).map((n) =>
            renderToString(
              <Natural book={book} orientation={part.orientation} name={shortKey(`p${p}`, s, n + 1)}>
                <MeasureName.Provider value={shortKey(`p${p}`, s, n + 1)}>{part.render(0, s, n + 1)}</MeasureName.Provider>
              </Natural>,
            ),
          ),
        )
        .join('');
    }
    return renderToString(
      <section class="measure" style={width}>
        <div data-measure={`p${p}/head`}>{part.head(1, 2)}</div>
        <div data-measure={`p${p}/head2`}>{part.head(2, 2)}</div>
        {part.items.map((item, i) => (
          <div data-measure={itemKey(p, i)} key={i} style="display:flow-root">
            {item.kind === 'block' ? item.node : <Table spec={item.spec} measure={itemKey(p, i)} />}
          </div>
        ))}
      </section>,
    );
  });
  return [...cover, ...parts].join('');
}

const heightOf = (heights: Heights, key: string): number => {
  const height = heights.get(key);
  if (height === undefined) throw new Error(`the browser measured no height for ${key}`);
  return height;
};

type Piece = { node: VNode };

/** Packs the items of a running part into pages, rows whole, heads kept with what follows. */
class Packer {
  readonly pages: Piece[][] = [[]];
  private left: number;

  constructor(private readonly capacityMm: number) {
    this.left = capacityMm;
  }

  fits(mm: number): boolean {
    return mm <= this.left;
  }

  get isEmpty(): boolean {
    return (this.pages.at(-1) ?? []).length === 0;
  }

  turn(): void {
    if (this.isEmpty) return;
    this.pages.push([]);
    this.left = this.capacityMm;
  }

  put(node: VNode, mm: number): void {
    this.pages.at(-1)?.push({ node });
    this.left -= mm + BLOCK_GAP_MM;
  }

  /** How many of these rows still fit under a head of the given height. */
  rowsThatFit(headMm: number, rows: readonly number[]): number {
    let used = headMm;
    let count = 0;
    for (const row of rows) {
      if (used + row > this.left) break;
      used += row;
      count += 1;
    }
    return count;
  }
}

/** A group's heading is never the last row of a page. */
const backOffGroupHead = (spec: TableSpec, from: number, count: number): number => {
  let n = count;
  while (n > 0 && from + n < spec.rows.length && spec.rows[from + n - 1]?.group === true) n -= 1;
  return n;
};

function packTable(book: Book, packer: Packer, spec: TableSpec, key: string, heights: Heights): void {
  const rows = spec.rows.map((_, i) => heightOf(heights, `${key}/r${i}`));
  const foot = spec.foot === undefined ? 0 : heightOf(heights, `${key}/foot`);
  const head = heightOf(heights, key) - rows.reduce((a, b) => a + b, 0) - foot + SLACK_MM / 2;
  const widow = Math.min(3, rows.length);
  let from = 0;
  if (packer.rowsThatFit(head, rows) < widow) packer.turn();
  while (from < rows.length) {
    const rest = rows.slice(from);
    const all = packer.rowsThatFit(head + foot, rest) === rest.length;
    const most = all ? rest.length : backOffGroupHead(spec, from, Math.min(packer.rowsThatFit(head, rest), rest.length - (foot > 0 ? 1 : 0)));
    // At least three rows go over to the next page together.
    const count = all || rest.length - most >= widow || most <= widow ? most : Math.max(1, rest.length - widow);
    if (count === 0) {
      if (packer.isEmpty) throw new Error(`a row of the table "${spec.caption}" is taller than a page`);
      packer.turn();
      continue;
    }
    const mm = head + rest.slice(0, count).reduce((a, b) => a + b, 0) + (all ? foot : 0);
    packer.put(
      <Table spec={spec} from={from} to={from + count} captionText={from === 0 ? spec.caption : `${spec.caption} (${book.continued})`} withFoot={all} />,
      mm,
    );
    from += count;
    if (from < rows.length) packer.turn();
  }
}

function packFlow(book: Book, part: FlowPart, p: number, heights: Heights): Piece[][] {
  // The head of the pages that follow is longer by a word, and may take another line.
  const headMm = Math.max(heightOf(heights, `p${p}/head`), heightOf(heights, `p${p}/head2`));
  const packer = new Packer(liveArea(book.paper, 'portrait').heightMm - TAPE_MM - headMm - BLOCK_GAP_MM - SLACK_MM);
  const blockHeight = (i: number): number => (part.items[i]?.kind === 'block' ? heightOf(heights, itemKey(p, i)) : 30);
  part.items.forEach((item: FlowItem, i) => {
    if (item.kind === 'table') return packTable(book, packer, item.spec, itemKey(p, i), heights);
    const own = heightOf(heights, itemKey(p, i));
    const needed = item.keepWithNext === true && i + 1 < part.items.length ? own + BLOCK_GAP_MM + blockHeight(i + 1) : own;
    if (!packer.fits(needed)) packer.turn();
    packer.put(item.node, own);
  });
  return packer.pages;
}

interface Laid {
  part: BookPart;
  pages: VNode[];
}

/** Where a page has two columns, the figure's column may also grow as tall as the other one. */
const columnSpare = (heights: Heights, key: string): number => Math.max(0, (heights.get(`${key}/side`) ?? 0) - (heights.get(`${key}/main`) ?? 0));

/** The fullest version that fits its pages, and the height it leaves on each. If none fits, the shortest is tried and the overflow check speaks. */
function fittest(
  heights: Heights,
  name: string,
  shortenings: number,
  liveMm: number,
  pages: (shortening: number) => number = () => 1,
): { shortening: number; spare: number[] } {
  for (let s = 0; s < shortenings; s += 1) {
    const keys = upTo(pages(s)).map((n) => shortKey(name, s, n + 1));
    const spare = keys.map((key) => liveMm - heightOf(heights, key) - SLACK_MM);
    if (spare.every((mm) => mm >= 0)) return { shortening: s, spare: spare.map((mm, i) => mm + columnSpare(heights, keys[i] ?? '')) };
  }
  return { shortening: shortenings - 1, spare: [] };
}

function layFixed(book: Book, part: FixedPart, p: number, heights: Heights): VNode[] {
  const { shortening, spare } = fittest(heights, `p${p}`, part.shortenings ?? 1, liveArea(book.paper, part.orientation).heightMm, (s) => pagesOf(part, s));
  return upTo(pagesOf(part, shortening)).map((n) => (
    <Page book={book} name={part.name} orientation={part.orientation}>
      {part.render(spare[n] ?? 0, shortening, n + 1)}
    </Page>
  ));
}

function layFlow(book: Book, part: FlowPart, p: number, heights: Heights): VNode[] {
  const pages = packFlow(book, part, p, heights);
  return pages.map((pieces, i) => (
    <Page book={book} name={part.name} orientation="portrait" flow>
      {[
        <div style={`padding-bottom:${BLOCK_GAP_MM}mm`}>{part.head(i + 1, pages.length)}</div>,
        ...pieces.map((piece, k) => (
          <div key={k} style={`padding-bottom:${k + 1 < pieces.length ? BLOCK_GAP_MM : 0}mm`}>
            {piece.node}
          </div>
        )),
      ]}
    </Page>
  ));
}

export interface Composed {
  body: string;
  pages: number;
}

/** The final pages: what was measured decides where they break, and so the page numbers are known before printing. */
export function composeBody(book: Book, heights: Heights): Composed {
  const laid: Laid[] = book.parts.map((part, p) => ({
    part,
    pages: part.kind === 'fixed' ? layFixed(book, part, p, heights) : layFlow(book, part, p, heights),
  }));
  const contents: ContentsLine[] = [];
  let page = 2;
  for (const { part, pages } of laid) {
    if (part.title !== null) contents.push({ name: part.name, title: part.title, page });
    page += pages.length;
  }
  const { shortening } = fittest(heights, 'cover', book.coverShortenings, liveArea(book.paper, 'portrait').heightMm);
  const cover = (
    <Page book={book} name={book.coverName} orientation="portrait">
      {book.cover(contents, shortening)}
    </Page>
  );
  return { body: renderToString(<>{[cover, ...laid.flatMap((l) => l.pages)]}</>), pages: page - 1 };
}

/** Headings in document order, for the bookmarks. */
export const headingsOf = (body: string): string[] =>
  [...body.matchAll(/<h[1-3][^<>]*>((?:(?!<\/?h[1-3])[\s\S])*)<\/h[1-3]>/g)].map((m) =>
    (m[1] ?? '')
      .replace(/<[^<>]*>/g, '')
      .replace(/&lt;/g, '<')
      .replace(/&gt;/g, '>')
      .replace(/&quot;/g, '"')
      .replace(/&#39;/g, "'")
      .replace(/&amp;/g, '&'),
  );
