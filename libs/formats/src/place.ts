import type { Answers, FilePlace, HourlyColumns, MonthRecord } from './climate-file.js';
import { rounded } from './csv.js';
import { askUnit, type ParserContext } from './parser.js';

/**
 * Whether figures and place can belong together. Nothing is corrected here: what cannot be is faulted, what is doubtful is
 * asked, and the sender's answer settles it.
 */
type Curve = readonly (readonly [latitudeDeg: number, annualMeanC: number])[];

/**
 * The warmest and coldest annual means, brought to sea level at 6.5 K/km, by distance from the equator: the outer values of
 * 2,104 stations (2003-2021 means) with two kelvins or more to spare. Judgement on measured data.
 */
const WARMEST: Curve = [
  [0, 34],
  [10, 37],
  [25, 37],
  [30, 36],
  [35, 34],
  [40, 29],
  [45, 24],
  [50, 20],
  [55, 16],
  [60, 13],
  [65, 11],
  [70, 8],
  [75, 5],
  [80, 0],
  [90, -5],
];
const COLDEST: Curve = [
  [0, 16],
  [10, 15],
  [20, 13],
  [25, 11],
  [30, 9],
  [35, 6],
  [40, 1],
  [45, -4],
  [50, -8],
  [55, -11],
  [60, -15],
  [65, -19],
  [70, -33],
  [90, -60],
];
const LAPSE_K_PER_M = 0.0065;
/** No station of the world table has a month with a mean highest over 46.6 or a mean lowest over 32.4. */
const WARMEST_MONTH_MAX_C = 50;
const WARMEST_MONTH_MIN_C = 38;
/** Hours between the clock and the sun at which a zone is asked about; the far west of China's one zone has 3.2. */
const ZONE_MISFIT_H = 3.6;

const along = (curve: Curve, latitudeDeg: number): number => {
  const x = Math.abs(latitudeDeg);
  for (let i = 1; i < curve.length; i++) {
    const [x0, y0] = curve[i - 1] ?? [0, 0];
    const [x1, y1] = curve[i] ?? [0, 0];
    if (x <= x1) return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
  }
  return curve.at(-1)?.[1] ?? 0;
};

/** Latitude and longitude as the sender wants them, checked against the globe. Null where a fault was added. */
export const coordinatesOf = (
  written: { latitudeDeg: number; longitudeDeg: number },
  line: number,
  context: ParserContext,
): { latitudeDeg: number; longitudeDeg: number } | null => {
  const interchanged = context.options.answers?.coordinates === 'interchanged';
  const place = interchanged ? { latitudeDeg: written.longitudeDeg, longitudeDeg: written.latitudeDeg } : written;
  if (interchanged) context.remarks.add('coordinates-interchanged', 'latitude and longitude were interchanged as the sender asked', { line });
  const latitudeFits = Math.abs(place.latitudeDeg) <= 90;
  const longitudeFits = Math.abs(place.longitudeDeg) <= 180;
  if (latitudeFits && longitudeFits) return { latitudeDeg: place.latitudeDeg, longitudeDeg: place.longitudeDeg };
  const swapWouldFit = !interchanged && Math.abs(place.longitudeDeg) <= 90 && Math.abs(place.latitudeDeg) <= 180;
  if (!latitudeFits && swapWouldFit && Math.abs(place.latitudeDeg) > 91)
    context.faults.add({
      line,
      column: 'latitude',
      code: 'maybe-swapped',
      message: `latitude ${place.latitudeDeg} and longitude ${place.longitudeDeg} look interchanged`,
      remedy: 'Say whether they are interchanged, or correct the file.',
      ask: { answer: 'coordinates', choices: ['interchanged'] },
    });
  else
    context.faults.add({
      line,
      column: latitudeFits ? 'longitude' : 'latitude',
      code: 'out-of-range',
      message: latitudeFits ? `longitude ${place.longitudeDeg} lies outside -180 to 180` : `latitude ${place.latitudeDeg} lies outside -90 to 90`,
      remedy: 'Write degrees with decimals, north and east positive.',
    });
  return null;
};

interface Means {
  annualC: number;
  warmestMaxC: number;
  warmestMinC: number;
  /** Mean of July less mean of January. */
  julyLessJanuaryK: number;
}

const average = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0) / list.length;

/** Null unless at least ten months have both temperatures, so that a mean of the year means something. */
const meansOf = (months: readonly Pick<MonthRecord, 'tMaxC' | 'tMinC' | 'tMeanC'>[]): Means | null => {
  const mean = months.map((m) => (m.tMaxC !== null && m.tMinC !== null ? (m.tMaxC + m.tMinC) / 2 : m.tMeanC));
  const known = mean.filter((t) => t !== null);
  const [january, july] = [mean[0], mean[6]];
  if (known.length < 10) return null;
  return {
    annualC: average(known),
    warmestMaxC: Math.max(...months.map((m) => m.tMaxC ?? -Infinity)),
    warmestMinC: Math.max(...months.map((m) => m.tMinC ?? -Infinity)),
    julyLessJanuaryK: typeof january === 'number' && typeof july === 'number' ? july - january : 0,
  };
};

/** Asks when a year's temperatures do not suit the place. An answered question is not asked again. */
export const judgeTemperatures = (
  place: Pick<FilePlace, 'latitudeDeg' | 'elevationM'>,
  months: readonly Pick<MonthRecord, 'tMaxC' | 'tMinC' | 'tMeanC'>[],
  context: ParserContext,
): void => {
  const means = meansOf(months);
  if (!means) return;
  const { answers } = context.options;
  const seaLevelC = means.annualC + LAPSE_K_PER_M * Math.max(0, place.elevationM ?? 0);
  const year = `annual mean ${rounded(means.annualC, 1)} at latitude ${place.latitudeDeg}`;
  if (answers?.temperatureUnit === undefined) {
    if (means.warmestMaxC > WARMEST_MONTH_MAX_C || means.warmestMinC > WARMEST_MONTH_MIN_C)
      askUnit(context, 'maybe-fahrenheit', `a month with a mean highest of ${means.warmestMaxC} and ${year}: warmer than any place in Celsius`);
    else if (seaLevelC > along(WARMEST, place.latitudeDeg))
      askUnit(context, 'maybe-fahrenheit', `${year} is warmer than any known place so far from the equator`);
    else if (seaLevelC < along(COLDEST, place.latitudeDeg)) askUnit(context, 'maybe-celsius', `${year} is colder than any known place there`);
  }
  const towardsSun = Math.sign(place.latitudeDeg) * means.julyLessJanuaryK;
  if (answers?.coordinates === undefined && Math.abs(place.latitudeDeg) >= 25 && towardsSun < -3)
    context.faults.add({
      line: 0,
      column: 'latitude',
      code: 'wrong-hemisphere',
      message: `at latitude ${place.latitudeDeg} ${means.julyLessJanuaryK > 0 ? 'July' : 'January'} is the warmer month`,
      remedy: 'Look at the sign of the latitude and whether latitude and longitude are interchanged.',
      ask: { answer: 'coordinates', choices: ['asWritten', 'interchanged'] },
    });
};

/** Asks when the clock's zone and the longitude are hours apart. */
export const judgeZone = (place: FilePlace, line: number, context: ParserContext): void => {
  if (place.zoneH === null || context.options.answers?.coordinates !== undefined) return;
  const apart = Math.abs(((((place.longitudeDeg / 15 - place.zoneH + 12) % 24) + 24) % 24) - 12);
  if (apart > ZONE_MISFIT_H)
    context.faults.add({
      line,
      column: 'longitude',
      code: 'zone-far-from-longitude',
      message: `longitude ${place.longitudeDeg} and a clock ${place.zoneH} h ahead of universal time are ${rounded(apart, 1)} h apart`,
      remedy: 'Look whether latitude and longitude are interchanged, or whether east and west are.',
      ask: { answer: 'coordinates', choices: ['asWritten', 'interchanged'] },
    });
};

type Box = readonly [south: number, north: number, west: number, east: number];
/** Where the blocks of WMO station numbers lie, by first digit or two, with room to spare; checked against 2,104 stations. */
const BLOCKS: readonly (readonly [RegExp, Box])[] = [
  [/^0[1-9]/, [14, 84, -75, 36]],
  [/^1/, [33, 57, 4, 48]],
  [/^2/, [50, 82, 17, 192]],
  [/^3/, [34, 62, 18, 170]],
  [/^4/, [-3, 55, 30, 158]],
  [/^5/, [14, 56, 70, 137]],
  [/^6[0-8]/, [-56, 41, -32, 82]],
  [/^7[0-5]/, [14, 84, 170, 310]],
  [/^7[6-9]/, [5, 35, 238, 303]],
  [/^8[0-8]/, [-68, 20, 248, 330]],
  [/^89/, [-90, -55, -180, 180]],
  [/^9[1-8]/, [-60, 35, 70, 240]],
];

/** Remarks a station number of another part of the world: seen in a file whose place had been renamed. */
export const judgeStationNumber = (place: FilePlace, line: number, context: ParserContext): void => {
  const id = place.stationId ?? '';
  if (!/^\d{5,6}$/.test(id)) return;
  const box = BLOCKS.find(([first]) => first.test(id))?.[1];
  if (!box) return;
  const [south, north, west, east] = box;
  const turns = [place.longitudeDeg, place.longitudeDeg + 360];
  if (place.latitudeDeg < south || place.latitudeDeg > north || !turns.some((x) => x >= west && x <= east))
    context.remarks.add(
      'station-number-elsewhere',
      `station number ${id} belongs to another part of the world than ${place.latitudeDeg}, ${place.longitudeDeg}`,
      { line },
    );
};

/** Mean highest and lowest of each month from hours; a day counts when at least 22 of its hours are there. */
export const monthsOfHours = (hours: HourlyColumns): { tMaxC: number | null; tMinC: number | null; tMeanC: number | null }[] => {
  const days = new Map<number, number[]>();
  hours.airC.forEach((t, i) => {
    if (t === null) return;
    const key = (hours.month[i] ?? 1) * 100 + (hours.day[i] ?? 1);
    const list = days.get(key);
    if (list) list.push(t);
    else days.set(key, [t]);
  });
  return Array.from({ length: 12 }, (_, m) => {
    const whole = [...days].filter(([key, list]) => Math.floor(key / 100) === m + 1 && list.length >= 22).map(([, list]) => list);
    if (whole.length < 20) return { tMaxC: null, tMinC: null, tMeanC: null };
    return {
      tMaxC: rounded(average(whole.map((d) => Math.max(...d))), 2),
      tMinC: rounded(average(whole.map((d) => Math.min(...d))), 2),
      tMeanC: rounded(average(whole.map(average)), 2),
    };
  });
};

const saturationHPa = (t: number): number => 6.112 * Math.exp((17.62 * t) / (243.12 + t));

/**
 * Asks when humidity says that air and dew point are Fahrenheit: the humidity that follows from the two in Celsius is then
 * far from the file's, and fits once they are converted.
 */
export const judgeHumidity = (hours: HourlyColumns, context: ParserContext): void => {
  if (context.options.answers?.temperatureUnit !== undefined) return;
  let [asCelsius, asFahrenheit, count] = [0, 0, 0];
  hours.airC.forEach((air, i) => {
    const [dew, humidity] = [hours.dewPointC[i], hours.relativeHumidityFrac[i]];
    if (air === null || typeof dew !== 'number' || typeof humidity !== 'number') return;
    const [airF, dewF] = [(air - 32) / 1.8, (dew - 32) / 1.8];
    asCelsius += Math.abs(saturationHPa(dew) / saturationHPa(air) - humidity);
    asFahrenheit += Math.abs(saturationHPa(dewF) / saturationHPa(airF) - humidity);
    count++;
  });
  if (count < 500 || asCelsius / count < 0.08 || asFahrenheit > asCelsius / 3) return;
  askUnit(
    context,
    'maybe-fahrenheit',
    `air, dew point and humidity disagree by ${rounded((100 * asCelsius) / count, 0)} % of humidity as Celsius and by ${rounded((100 * asFahrenheit) / count, 0)} % as Fahrenheit`,
  );
};

/** The answer about the unit, as a conversion of temperatures that a file gives as Celsius. */
export const unitAnswer = (answers: Answers | undefined): ((t: number) => number) =>
  answers?.temperatureUnit === 'fahrenheit' ? (t) => rounded((t - 32) / 1.8, 2) : (t) => t;
