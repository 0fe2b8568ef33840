// Writes prisma/seed/stations.csv from the table of world station means. Run once when a newer table is at hand:
//   LATHWORK_DATA=/path/to/data node tools/stations.mjs
// It reads climate/world-station-means-2003-2021.csv there and keeps only what the climate room asks for. Figures are
// copied as they stand, vapour pressure in pascals; an empty field stays empty and means "no record". The file has neither
// quotes nor commas inside a field: "Moldova, Rep. Of" is written "Moldova Rep. Of".
import { readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

const SOURCE = join(resolve(process.env['LATHWORK_DATA'] ?? join(process.cwd(), '..', 'shared', 'data')), 'climate', 'world-station-means-2003-2021.csv');
const TARGET = join('prisma', 'seed', 'stations.csv');
const MONTHS = Array.from({ length: 12 }, (_, m) => String(m + 1).padStart(2, '0'));
const MONTHLY = [
  ['tmax_c', 't_max_c'],
  ['tmin_c', 't_min_c'],
  ['vapour_hpa', 'vapour_pressure_pa'],
  ['precip_mm', 'precipitation_mm'],
  ['sun_h', 'sunshine_h'],
  ['abs_min_mean_c', 'absolute_min_mean_c'],
];
const HEAD = [
  '# Monthly means of the months 2003-03 to 2021-07, each from 12 or more years of national CLIMAT reports: 2003-2021 means, not official 30-year normals.',
  '# Source: Deutscher Wetterdienst, open data (GeoNutzV / CC BY 4.0). Credit to print: Datenbasis: Deutscher Wetterdienst, Einzelwerte gemittelt',
  '# An empty field is no record, and stays so. years_count is the least count of years behind any month of t_max_c and t_min_c.',
];

/** Fields of one CSV line; a quoted field may hold commas and doubled quotes. */
const fieldsOf = (line) => [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map((m) => (m[1] === undefined ? m[2] : m[1].replaceAll('""', '"')));
const plain = (text) => text.replaceAll(/[",]/g, '').replaceAll(/ +/g, ' ');
const inPascals = (hPa) => (hPa === '' ? '' : String(Math.round(Number(hPa) * 100)));

const [header, ...lines] = readFileSync(SOURCE, 'utf8').trim().split(/\r?\n/);
const names = fieldsOf(header);
const columns = [
  ...['id', 'name', 'country', 'latitude_deg', 'longitude_deg', 'elevation_m', 'annual_extreme_min_c', 'annual_extreme_min_years_count', 'years_count'],
  ...MONTHLY.flatMap(([, to]) => MONTHS.map((m) => `${to}_${m}`)),
];
const rows = lines.map((line) => {
  const values = fieldsOf(line);
  const get = (name) => {
    const at = names.indexOf(name);
    if (at < 0) throw new Error(`the table has no column ${name}`);
    return values[at] ?? '';
  };
  const years = String(Math.min(Number(get('min_years_tmax')), Number(get('min_years_tmin'))));
  return [
    ...['wmo_id', 'name', 'country'].map((n) => plain(get(n))),
    ...['lat', 'lon', 'elev_m', 'annual_extreme_min_mean_c', 'annual_extreme_min_years'].map(get),
    years,
    ...MONTHLY.flatMap(([from, to]) => MONTHS.map((m) => (to === 'vapour_pressure_pa' ? inPascals(get(`${from}_${m}`)) : get(`${from}_${m}`)))),
  ].join(',');
});
writeFileSync(TARGET, [...HEAD, columns.join(','), ...rows].join('\n') + '\n');
console.log(`${rows.length} stations written to ${TARGET}`);
