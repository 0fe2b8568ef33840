import type { VNode } from 'preact';
import type { DocumentOptions } from '@lathwork/model';
import type { TableSpec } from '../parts/table.js';
import type { Footer } from '../theme/page.css.js';
import type { Orientation } from '../theme/paper.js';

/** A piece of a running part: a block that is never split, or a table that may be split between rows. */
export type FlowItem = { kind: 'block'; node: VNode; keepWithNext?: boolean } | { kind: 'table'; spec: TableSpec };

interface PartBase {
  name: string;
  /** Title in the contents, or null to leave it out there. */
  title: string | null;
}

/**
 * One page, or a fixed number of them. `render` is given the spare height of the page, which goes to its figure, and the
 * number of the shortening: 0 says everything, each further one leaves out more of what stands elsewhere in the book, or
 * spreads what may not be left out over one page more.
 */
export interface FixedPart extends PartBase {
  kind: 'fixed';
  orientation: Orientation;
  shortenings?: number;
  /** How many pages this shortening takes; one if not given. */
  pages?: (shortening: number) => number;
  render: (spareMm: number, shortening: number, page: number) => VNode;
}

/** As many pages as it takes. `head` stands on each of them; `part` counts from 1. */
export interface FlowPart extends PartBase {
  kind: 'flow';
  head: (part: number, parts: number) => VNode;
  items: readonly FlowItem[];
}

export type BookPart = FixedPart | FlowPart;

export interface ContentsLine {
  name: string;
  title: string;
  page: number;
}

export interface Book {
  title: string;
  author: string;
  language: string;
  paper: DocumentOptions['paper'];
  footer: Footer;
  css: string;
  tapeNote: Record<Orientation, string>;
  tapeLabel: string;
  continued: string;
  /** The cover comes first; it is made last, when the page numbers are known. */
  cover: (contents: readonly ContentsLine[], shortening: number) => VNode;
  coverShortenings: number;
  coverName: string;
  parts: readonly BookPart[];
  describeLink: (target: string) => string;
}
