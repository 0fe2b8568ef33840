/** Paths of every number in a value that is not finite. An honest null is left alone; NaN and infinity are not. */
export const notFinite = (value: unknown, at = ''): string[] => {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${at} is ${value}`];
  if (Array.isArray(value)) return value.flatMap((v, i) => notFinite(v, `${at}[${i}]`));
  if (typeof value === 'object' && value !== null) return Object.entries(value).flatMap(([key, v]) => notFinite(v, `${at}.${key}`));
  return [];
};
