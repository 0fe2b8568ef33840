import { beyondChain, drawChain, FIRST_CHAIN_MM, gap, layoutChain } from '../dimension.js';
import { forceText, lengthPair, spokenLength } from '../lengths.js';
import { drawAnchor } from '../marks.js';
import type { Post } from '../model-types.js';
import type { AnchorMapOptions } from '../options.js';
import { Plate } from '../plate.js';
import { textWidth, type Rect } from '../primitives.js';
import { atLargestScale, firstThatFits, orNull, ring, scaleAt, sketch, within } from '../fallback.js';
import { DoesNotFitError, type Drawing, type XY } from '../types.js';
import { ENGLISH, type Words } from '../words.js';
import { drawWalls, planProjection, stationsM } from './ground-plan.js';
import { headingFor, headWidth, HOST_M } from './shelter.js';

/** What is written beside a post, from the fullest to the shortest form that the spacing of the posts leaves room for. */
type Form = 'full' | 'line' | 'number';
const HEIGHT_MM: Record<Form, number> = { full: 14.5, line: 5.2, number: 0 };
const BLANK_MM = 17;
const GAP_MM = 6;

const demandOf = (o: AnchorMapOptions, post: Post, words: Words): string => {
  const demandN = o.anchorage.posts.find((p) => p.postId === post.postId)?.demandN ?? null;
  return `${post.postId}  ${words.lift} ${demandN === null ? words.notAssessed : forceText(demandN, o.units)}`;
};

const columnMm = (o: AnchorMapOptions, form: Form, words: Words): number => {
  if (form === 'number') return 17;
  const widest = Math.max(
    ...o.shelter.geometry.posts.map((p) => textWidth(demandOf(o, p, words))),
    textWidth(words.pulled, 'small') + BLANK_MM + 1,
    textWidth(words.depth, 'small') + BLANK_MM + 1,
  );
  return widest + GAP_MM + 2;
};

interface MapLayout {
  k: number;
  form: Form;
  column: number;
  ox: number;
  oy: number;
  widthMm: number;
  heightMm: number;
  headMm: number;
}
/** Notes of a lean-to's wall side stand beyond the wall, on which its posts are held. */
const hostMm = (o: AnchorMapOptions, k: number): number => (o.shelter.structure.kind === 'leanTo' ? HOST_M * k + 1 : 0);

function layoutAt(o: AnchorMapOptions, k: number, form: Form, words: Words): MapLayout | null {
  const { widthM: w, lengthM: l } = o.shelter.structure;
  const ys = stationsM(o.shelter).map((p) => p.at.yM);
  const closest = Math.min(...ys.slice(1).map((y, i) => y - (ys[i] ?? 0))) * k;
  if (closest < HEIGHT_MM[form]) return null;
  const column = columnMm(o, form, words);
  const scale = scaleAt(k);
  const widthMm = Math.max(2 * column + w * k + hostMm(o, k), headWidth(words.anchorMap, scale, o.heading ?? true));
  const chain = layoutChain([column, column + w * k], [gap(w)], o.units, [0.5, widthMm - 0.5]);
  const below = chain.extraMm + beyondChain(chain) + 0.4;
  const head = headingFor(words.anchorMap, widthMm, scale, words, o.heading ?? true).heightMm;
  const half = Math.max(HEIGHT_MM[form] / 2, 4);
  return {
    k,
    form,
    column,
    ox: column,
    oy: head + half + l * k,
    widthMm,
    heightMm: head + half + l * k + Math.max(half + 1, FIRST_CHAIN_MM) + below,
    headMm: head,
  };
}

/** Demand, then rules to write the measured depth and the pull check on. */
function drawPostNote(plate: Plate, o: AnchorMapOptions, l: MapLayout, post: Post, at: XY, words: Words): void {
  const left = post.row === 'A';
  const x = left ? at[0] - GAP_MM : at[0] + GAP_MM + hostMm(o, l.k);
  const anchor = left ? 'end' : 'start';
  if (l.form === 'number') {
    const rect: Rect = { x: left ? x - 6 : x, y: at[1] - 1.4, w: 6, h: 2.8 };
    if (plate.isFree(rect)) plate.text(x, at[1] + 1.25, post.postId, 'small', anchor);
    return;
  }
  if (l.form === 'line') {
    plate.text(x, at[1] + 1.25, demandOf(o, post, words), 'let', anchor);
    return;
  }
  plate.text(x, at[1] - 2.6, demandOf(o, post, words), 'let', anchor);
  [words.depth, words.pulled].forEach((word, i) => {
    const y = at[1] + 2.2 + i * 4.8;
    const rule = left ? x - BLANK_MM : x + textWidth(word, 'small') + 1.2;
    plate.text(left ? x - BLANK_MM - 1 : x, y, word, 'small', anchor);
    plate.line([rule, y + 0.6], [rule + BLANK_MM, y + 0.6], 'thin');
  });
}

function drawDiagonals(plate: Plate, o: AnchorMapOptions, P: (x: number, y: number) => XY, named: boolean, words: Words): void {
  const ys = stationsM(o.shelter).map((p) => p.at.yM);
  const w = o.shelter.structure.widthM;
  const [y1, y2] = [Math.min(...ys), Math.max(...ys)];
  plate.line(P(0, y1), P(w, y2), 'axis');
  plate.line(P(w, y1), P(0, y2), 'axis');
  const whole = Math.abs(y1) < 1e-6 && Math.abs(y2 - o.shelter.structure.lengthM) < 1e-6;
  const length = whole ? o.shelter.geometry.groundDiagonalM : Math.hypot(w, y2 - y1);
  const room = Math.abs(P(w, 0)[0] - P(0, 0)[0]) - 6;
  const [first, last] = [stationsM(o.shelter)[0]?.number ?? 1, stationsM(o.shelter).at(-1)?.number ?? 1];
  const lines = [`A${first}-B${last}`, `B${first}-A${last}`, lengthPair(length, o.units)];
  const [x, y] = P(w / 2, (y1 + y2) / 2);
  const pieces = named && Math.max(...lines.map((s) => textWidth(s))) <= room ? lines : [];
  pieces.forEach((s, i) => plate.label(x, y - 4.2 + i * 4.6, s, 'let', 'middle'));
  if (pieces.length > 0) plate.label(x, y - 8.8, words.diagonal, 'small', 'middle');
}

/** Plan of the anchors: numbered posts, the lift each must hold, room to write what was measured, and the diagonals. */
export function anchorMap(o: AnchorMapOptions): Drawing {
  const words = o.words ?? ENGLISH;
  const forms: readonly Form[] = o.blanks === false ? ['line', 'number'] : ['full', 'line', 'number'];
  const scaled = (form: Form, diagonals: boolean) => (): Drawing => {
    const lay = (k: number): MapLayout | null => orNull(() => layoutAt(o, k, form, words));
    const draw = (k: number): Drawing => drawAt(o, lay(k), diagonals, words);
    return atLargestScale(o.units, (k) => within(lay(k), o.boxMm), draw, words.anchorMap);
  };
  return firstThatFits([...forms.map((form) => scaled(form, true)), scaled('number', false)], () => sketchOf(o, words));
}

const altOf = (o: AnchorMapOptions, words: Words): string => {
  const worst = o.anchorage.worstDemandN;
  return `${words.anchorMap}: ${o.shelter.geometry.posts.length} ${words.posts}, ${words.diagonal} ${spokenLength(o.shelter.geometry.groundDiagonalM, o.units)}. ${o.anchorage.worstPostId ?? ''} ${words.lift} ${worst === null ? words.notAssessed : forceText(worst, o.units)}.`;
};

function drawAt(o: AnchorMapOptions, l: MapLayout | null, diagonals: boolean, words: Words): Drawing {
  if (l === null) throw new DoesNotFitError(words.anchorMap);
  const { widthM: w } = o.shelter.structure;
  const scale = scaleAt(l.k);
  const P = planProjection(false, l.k, l.ox, l.oy);
  const plate = new Plate();
  headingFor(words.anchorMap, l.widthMm, scale, words, o.heading ?? true).draw(plate, scale);
  drawWalls(plate, o.shelter, { P, k: l.k, lying: false }, words, false);
  drawDiagonals(plate, o, P, diagonals, words);
  for (const post of o.shelter.geometry.posts) {
    const at = P(post.at.xM, post.at.yM);
    plate.circle(at, 0.9, 'poche');
    drawAnchor(plate, [at[0] + (post.row === 'A' ? -3 : 3 + hostMm(o, l.k)), at[1]]);
    drawPostNote(plate, o, l, post, at, words);
  }
  const parts = [gap(w)];
  const half = Math.max(HEIGHT_MM[l.form] / 2, 4);
  const front = P(0, 0)[1];
  drawChain(plate, layoutChain([P(0, 0)[0], P(w, 0)[0]], parts, o.units, [0.5, l.widthMm - 0.5]), {
    at: front + Math.max(FIRST_CHAIN_MM, half + 1),
    from: front + 1,
    side: 1,
  });
  return plate.finishHeld(l.widthMm, l.heightMm, altOf(o, words), scale, { fit: diagonals ? 'whole' : 'reduced' });
}

function sketchOf(o: AnchorMapOptions, words: Words): Drawing {
  const { widthM: w, lengthM: l } = o.shelter.structure;
  return sketch({
    box: o.boxMm,
    words,
    title: words.anchorMap,
    outlines: [
      ring([
        [0, 0],
        [w, 0],
        [w, l],
        [0, l],
      ]),
    ],
    facts: [
      `${lengthPair(w, o.units)} ${words.wide}`,
      `${lengthPair(l, o.units)} ${words.long}`,
      `${words.diagonal} ${lengthPair(o.shelter.geometry.groundDiagonalM, o.units)}`,
    ],
    alt: altOf(o, words),
    unplaced: o.shelter.geometry.posts.map((p) => p.postId),
  });
}
