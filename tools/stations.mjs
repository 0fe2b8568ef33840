// Writes prisma/seed/stations.csv from the table of world station means. Run once when a newer table is at hand:
//   LATHWORK_DATA=/path/to/data node tools/stations.mjs
// It reads climate/world-station-means-2003-2021.csv there and keeps only what the climate room asks for. Figures are
// copied as they stand; an empty field stays empty and means "no record".
import { readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

const SOURCE = join(resolve(process.env['LATHWORK_DATA'] ?? join(process.cwd(), '..', 'shared', 'data')), 'climate', 'world-station-means-2003-2021.csv');
const TARGET = join('prisma', 'seed', 'stations.csv');
const MONTHS = Array.from({ length: 12 }, (_, m) => String(m + 1).padStart(2, '0'));
const MONTHLY = [
  ['tmax_c', 'tMaxC'],
  ['tmin_c', 'tMinC'],
  ['vapour_hpa', 'vapourHPa'],
  ['precip_mm', 'precipitationMm'],
  ['sun_h', 'sunshineH'],
  ['abs_min_mean_c', 'absoluteMinMeanC'],
];
const HEAD = [
  '# Monthly means of weather stations, 2003-2021. They are means of the years at hand, not official 30-year normals.',
  '# Datenbasis: Deutscher Wetterdienst, Einzelwerte gemittelt (national CLIMAT reports; GeoNutzV / CC BY 4.0).',
  '# An empty field is "no record". yearsCount is the least count of years behind any month of tMax and tMin.',
];

/** Fields of one CSV line; a quoted field may hold commas and doubled quotes. */
const fieldsOf = (line) => [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map((m) => (m[1] === undefined ? m[2] : m[1].replaceAll('""', '"')));
const quoted = (text) => (/[",]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

const [header, ...lines] = readFileSync(SOURCE, 'utf8').trim().split(/\r?\n/);
const names = fieldsOf(header);
const columns = ['stationId', 'name', 'country', 'latitudeDeg', 'longitudeDeg', 'elevationM', 'yearsCount', ...MONTHLY.flatMap(([, to]) => MONTHS.map((m) => `${to}${m}`)), 'annualExtremeMinC', 'annualExtremeMinYearsCount'];
const rows = lines.map((line) => {
  const values = fieldsOf(line);
  const get = (name) => {
    const at = names.indexOf(name);
    if (at < 0) throw new Error(`the table has no column ${name}`);
    return values[at] ?? '';
  };
  const years = String(Math.min(Number(get('min_years_tmax')), Number(get('min_years_tmin'))));
  return [
    ...['wmo_id', 'name', 'country'].map((n) => quoted(get(n))),
    ...['lat', 'lon', 'elev_m'].map(get),
    years,
    ...MONTHLY.flatMap(([from]) => MONTHS.map((m) => get(`${from}_${m}`))),
    get('annual_extreme_min_mean_c'),
    get('annual_extreme_min_years'),
  ].join(',');
});
writeFileSync(TARGET, [...HEAD, columns.join(','), ...rows].join('\n') + '\n');
console.log(`${rows.length} stations written to ${TARGET}`);
