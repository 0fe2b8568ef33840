import type { DocumentRequest } from '@lathwork/model';
import { DRAWING_CSS } from '@lathwork/drawing';
import type { Book, BookPart } from '../../layout/book.js';
import { common } from '../../words/en/common.js';
import { pages } from '../../words/en/pages.js';
import { fill } from '../../words/fill.js';
import { drawingsOf } from './drawings-of.js';
import { cardPart } from './pages/card.js';
import { coverPage, COVER_SHORTENINGS } from './pages/cover.js';
import { anchorLogPart, budgetPart, cuttingPart, filmPart, loadsPart, materialsPart } from './pages/lists.js';
import { gapsPart, safetyPart, sourcesPart, weatherPart } from './pages/notes.js';
import { frostPart } from './pages/frost.js';
import { lookPart } from './pages/look.js';
import { coldNightPart, nightsPart } from './pages/nights.js';
import { logOnAnchorSheet, sheetParts } from './pages/sheets.js';
import { sitePart } from './pages/site.js';
import { planBookCss } from './plan-book.css.js';
import { contextOf, type Context } from './view/context.js';

/** The pages in the order in which a builder needs them; a part with nothing to say is left out and named on the cover. */
function partsOf(ctx: Context): { parts: BookPart[]; leftOut: string[] } {
  const drawings = drawingsOf(ctx);
  const leftOut: string[] = [];
  const orSay = (part: BookPart | null, title: string): BookPart[] => {
    if (part === null) leftOut.push(title);
    return part === null ? [] : [part];
  };
  const sheets = sheetParts(ctx, drawings);
  const { stages } = ctx.result.schedule;
  if (stages.length === 0) leftOut.push(pages.card.title);
  const parts = [
    lookPart(ctx, drawings),
    sitePart(ctx, drawings),
    frostPart(ctx, drawings),
    ...sheets.arrangement,
    ...orSay(nightsPart(ctx, drawings), pages.nights.title),
    ...[coldNightPart(ctx, drawings)].filter((p) => p !== null),
    sheets.anchors,
    ...(logOnAnchorSheet(ctx, drawings) ? [] : orSay(anchorLogPart(ctx), pages.anchors.title)),
    loadsPart(ctx, drawings),
    ...(sheets.film === null ? [] : [sheets.film]),
    filmPart(ctx, drawings),
    ...orSay(materialsPart(ctx), pages.materials.title),
    ...orSay(cuttingPart(ctx, drawings), pages.cutting.title),
    budgetPart(ctx),
    ...stages.map((stage, i) => cardPart(ctx, drawings, stage, i === 0)),
    weatherPart(ctx),
    safetyPart(ctx),
    ...orSay(gapsPart(ctx), pages.gaps.title),
    sourcesPart(ctx),
  ];
  return { parts, leftOut };
}

function centreFoot(ctx: Context): string {
  if (ctx.request.names.invented) return common.invented;
  return ctx.request.status === 'draft' ? common.draftFoot : common.reviewedFoot;
}

/** From a request to a book: everything is decided here and in the views; the layout only sets it. */
export function planBook(request: DocumentRequest): Book {
  const ctx = contextOf(request);
  const { parts, leftOut } = partsOf(ctx);
  return {
    title: `${pages.cover.title}: ${ctx.heading}`,
    author: ctx.drawnBy,
    language: request.options.language,
    paper: request.options.paper,
    footer: {
      left: fill(common.footer, { number: request.planNumber, revision: request.inputs.revision, date: request.datedOn }),
      centre: centreFoot(ctx),
      page: common.page,
    },
    css: DRAWING_CSS + planBookCss,
    tapeNote: { portrait: common.tape, landscape: common.tapeSheet },
    tapeLabel: common.tapeLabel,
    continued: common.continued,
    coverName: 'cover',
    cover: (contents, shortening) => coverPage(ctx, contents, leftOut, shortening),
    coverShortenings: COVER_SHORTENINGS,
    parts,
    describeLink: (target) => fill(common.goTo, { target: parts.find((p) => p.name === target)?.title ?? target }),
  };
}
