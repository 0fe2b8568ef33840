export * from './types.js';
export * from './options.js';
export { ENGLISH, type Words } from './words.js';
export { DRAWING_CSS, LINE_MM, TEXT_MM } from './style.js';
export { textWidth } from './primitives.js';
export { markIcon } from './marks.js';
export { elevation } from './views/elevation.js';
export { planView } from './views/plan.js';
export { placeMarks, spread } from './place-labels.js';
