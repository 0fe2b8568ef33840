import type { Drawing } from './drawing-lib.js';
import type { Box, Drawings } from './drawings.js';
import type { Context } from './view/context.js';
const empty = (box: Box, alt: string): Drawing => ({ svg: `<svg class="lw" role="img" aria-label="${alt}" width="${box.wMm}mm" height="${box.hMm}mm" viewBox="0 0 ${box.wMm} ${box.hMm}"><path class="thin" d="M1 1L${box.wMm - 1} 1L${box.wMm - 1} ${box.hMm - 1}L1 ${box.hMm - 1}Z"/></svg>`, widthMm: box.wMm, heightMm: box.hMm, alt, usedLineTypes: ['thin', 'cut'], scale: null });
export const drawingsOf = (_ctx: Context): Drawings => ({
  pictorial: (b) => empty(b, 'pictorial'),
  elevation: (s, b) => empty(b, `elevation ${s}`),
  planView: (b) => empty(b, 'plan view'),
  section: (b) => empty(b, 'section'),
  anchorMap: (b) => empty(b, 'anchor map'),
  filmLayout: (b) => empty(b, 'film layout'),
  framePicture: (s, b) => empty(b, `frame ${s}`),
  cutDiagrams: (b) => [empty({ wMm: b.wMm, hMm: 15 }, 'cut board')],
  climateChart: (b) => empty(b, 'climate'),
  nightsChart: (b) => empty(b, 'nights'),
  daysChart: (b) => empty(b, 'days'),
});
