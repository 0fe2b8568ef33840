/** Fields of one CSV line, trimmed; null where a quote is left open. */
export const fieldsOf = (line: string, separator = ','): string[] | null => {
  if (!line.includes('"')) return line.split(separator).map((f) => f.trim());
  const out: string[] = [];
  let field = '';
  let inQuotes = false;
  for (let i = 0; i < line.length; i++) {
    const mark = line[i] ?? '';
    if (inQuotes && mark === '"' && line[i + 1] === '"') {
      field += '"';
      i++;
    } else if (mark === '"') inQuotes = !inQuotes;
    else if (mark === separator && !inQuotes) {
      out.push(field.trim());
      field = '';
    } else field += mark;
  }
  out.push(field.trim());
  return inQuotes ? null : out;
};

const NUMBER = /^[-+]?(?:\d{1,12}(?:\.\d{0,12})?|\.\d{1,12})(?:[eE][-+]?\d{1,2})?$/;

/** A plain decimal number; null for anything else (no "0x10", no "Infinity", no blanks inside). */
export const numberOf = (raw: string): number | null => {
  if (!NUMBER.test(raw)) return null;
  const value = Number(raw);
  return Number.isFinite(value) ? (value === 0 ? 0 : value) : null;
};

/** Rounded to so many decimals, without a negative zero: conversions would otherwise show digits that nobody measured. */
export const rounded = (value: number, decimals: number): number => {
  const scale = 10 ** decimals;
  const out = Math.round(value * scale) / scale;
  return out === 0 ? 0 : out;
};

export const celsiusOfFahrenheit = (value: number): number => rounded((value - 32) / 1.8, 2);
export const kelvinsOfFahrenheit = (value: number): number => rounded(value / 1.8, 2);

export const DAYS_IN_MONTH = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
/** Day of a year without a 29 February, from 1; the 29th itself counts as the 28th. */
export const dayOfYear = (month: number, day: number): number => {
  let days = 0;
  for (let m = 0; m < month - 1; m++) days += DAYS_IN_MONTH[m] ?? 0;
  return days + (month === 2 && day === 29 ? 28 : day);
};
