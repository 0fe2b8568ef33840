import { temperature } from '../lengths.js';
import type { UnitSystem } from '../types.js';

/** `outside −25 °C to 7 °C`; null when there is nothing to say. */
export function spokenRangeOf(name: string, values: readonly (number | null)[], units: UnitSystem): string | null {
  const known = values.filter((v): v is number => v !== null);
  if (known.length === 0) return null;
  return `${name} ${temperature(Math.min(...known), units)} to ${temperature(Math.max(...known), units)}`;
}
