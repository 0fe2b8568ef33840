import { formatFeetInches } from '@lathwork/units';
import type { FastenZonesOptions } from '../options.js';
import { Plate } from '../plate.js';
import { HATCH, textWidth, type HatchStyle } from '../primitives.js';
import { DoesNotFitError, type Drawing, type Fit, type XY } from '../types.js';
import { ENGLISH, type Words } from '../words.js';
import { firstThatFits, ring, sketch } from '../fallback.js';
import { lengthPair } from '../lengths.js';
import { bulgeM, profile, topAt, topM } from './shelter.js';

const STYLE: Record<'field' | 'edge' | 'corner', HatchStyle | null> = { field: null, edge: HATCH.wide, corner: HATCH.close };
/** Share of the end wall that counts as corner and as edge in the sketch; the run lengths stand in the table. */
const CORNER_SHARE = 0.14;

/** Sketch of an end wall with the zones in which battens take more screws. Not to scale; the spacing is written at each zone. */
export function fastenZones(o: FastenZonesOptions): Drawing {
  const words = o.words ?? ENGLISH;
  const { widthM } = o.shelter.structure;
  const { ridgeM } = o.shelter.geometry;
  return firstThatFits([() => drawAt(o, 'whole', words), () => drawAt(o, 'reduced', words)], () =>
    sketch({
      box: o.boxMm,
      words,
      title: words.fastening,
      outlines: [ring(profile(o.shelter).map((p): XY => [p.x, -p.z]))],
      facts: [
        ...o.fastening.zones.map((z) => zoneText(z, o, words)),
        `${lengthPair(widthM, o.units)} ${words.wide}, ${lengthPair(ridgeM, o.units)} ${words.high}`,
      ],
      alt: altOf(o, words),
      unplaced: [],
    }),
  );
}

const altOf = (o: FastenZonesOptions, words: Words): string => `${words.fastening}: ${o.fastening.zones.map((z) => zoneText(z, o, words)).join('; ')}.`;
/** Least distance of two lines of names. */
const NAME_STEP_MM = 5.2;

/** `reduced` sets the names under each other beside a sketch too low for them to stand at their own heights. */
function drawAt(o: FastenZonesOptions, fit: Fit, words: Words): Drawing {
  const plate = new Plate();
  const { widthM: w } = o.shelter.structure;
  const ridge = o.shelter.geometry.ridgeM;
  const names = o.fastening.zones.map((z) => zoneText(z, o, words));
  const nameMm = Math.max(30, ...names.map((s) => textWidth(s)));
  const bulge = bulgeM(o.shelter);
  const k = Math.min((o.boxMm.wMm - nameMm - 22) / (w + 2 * bulge), (o.boxMm.hMm - 12) / topM(o.shelter));
  if (k <= 0) throw new DoesNotFitError(words.fastening);
  const ground = (fit === 'whole' ? 4 : Math.max(4, 3 * NAME_STEP_MM - topM(o.shelter) * k)) + topM(o.shelter) * k;
  const P = (x: number, z: number): XY => [8 + (bulge + x) * k, ground - z * k];
  const clip = (x1: number, x2: number): XY[] => {
    const top = profile(o.shelter);
    const at = (x: number): number => topAt(top, x);
    const xs = [x1, ...top.map((p) => p.x).filter((x) => x > x1 && x < x2), x2];
    return [P(x1, 0), ...xs.map((x) => P(x, at(x))), P(x2, 0)];
  };
  const c = w * CORNER_SHARE;
  const areas: { zone: 'field' | 'edge' | 'corner'; from: number; to: number }[] = [
    { zone: 'corner', from: 0, to: c },
    { zone: 'edge', from: c, to: c * 2 },
    { zone: 'field', from: c * 2, to: w - c * 2 },
    { zone: 'edge', from: w - c * 2, to: w - c },
    { zone: 'corner', from: w - c, to: w },
  ];
  for (const a of areas) {
    const outline = clip(a.from, a.to);
    const style = STYLE[a.zone];
    if (style) plate.hatch(outline, style);
    plate.poly(outline, 'thin');
  }
  plate.path(
    profile(o.shelter).map((p) => P(p.x, p.z)),
    'cut',
  );
  plate.ground(2, P(w, 0)[0] + 6, ground);
  const shown = (['corner', 'edge', 'field'] as const).flatMap((zone) => o.fastening.zones.filter((z) => z.zone === zone));
  shown.forEach((z, i) => {
    const at = { corner: w - c / 2, edge: w - c * 1.5, field: w / 2 }[z.zone];
    const y = fit === 'whole' ? ground - ridge * k * (0.2 + 0.22 * i) - 1 : ground - NAME_STEP_MM * i - 1;
    const x = P(w + bulge, 0)[0] + 10;
    plate.leader([x - 1, y - 1.2], [P(at, 0)[0], fit === 'whole' ? y - 1.2 : ground - ridge * k * (0.2 + 0.22 * i)]);
    plate.text(x, y, zoneText(z, o, words), 'let');
  });
  return plate.finishHeld(o.boxMm.wMm, Math.min(o.boxMm.hMm, ground + 4), altOf(o, words), null, { fit });
}

const zoneText = (z: FastenZonesOptions['fastening']['zones'][number], o: FastenZonesOptions, words: Words): string =>
  `${words.zone[z.zone]}: ${words.screwsEvery} ${o.units === 'us' ? formatFeetInches(z.spacingMm / 1000) : `${Math.round(z.spacingMm)} mm`}`;
