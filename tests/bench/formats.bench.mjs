// Reading climate files: a year of hours as a whole and with the sun found, the widest file of normals, the longest series.
import { ClimateReader, readClimateFile } from '@lathwork/formats';
import { solarHourOf, sunPosition } from '../../libs/calc/dist/physics/sun.js';
import { median, timed } from './timing.mjs';

const PLACE = { latitudeDeg: 45, longitudeDeg: 8, zoneH: 1 };
const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const sunHeight = ({ latitudeDeg, longitudeDeg, zoneH, dayOfYear, clockH }) =>
  sunPosition({ latitudeDeg, dayOfYear, solarHour: solarHourOf(clockH, { longitudeDeg, zoneH, dayOfYear }) }).up;

/** A year of 8,760 rows as wide as a published one, whose radiation closes at the middle of the hour. */
const yearOfHours = () => {
  const rows = [];
  let dayOfYear = 0;
  DAYS.forEach((days, m) => {
    for (let day = 1; day <= days; day++) {
      dayOfYear++;
      for (let hour = 1; hour <= 24; hour++) {
        const up = Math.max(0, sunHeight({ ...PLACE, dayOfYear, clockH: hour - 0.5 }));
        const beam = up > 0 ? Math.round(200 + 600 * up) : 0;
        const diffuse = Math.round(120 * up);
        const air = 12 - 11 * Math.cos((2 * Math.PI * (dayOfYear - 15)) / 365) + 5 * Math.sin((2 * Math.PI * (hour - 9)) / 24);
        rows.push(
          `2018,${m + 1},${day},${hour},60,?9?9?9?9E0?9?9?9?9?9?9?9?9?9?9?9*9?9?9?9*9*9?9*9*9,${air.toFixed(1)},${(air - 4).toFixed(1)},75,99000,0,1300,300,` +
            `${Math.round(diffuse + beam * up)},${beam},${diffuse},0,0,0,0,180,2.1,5,4,20.0,77777,9,999999999,150,0.0620,0,88,0.200,0.0,1.0`,
        );
      }
    }
  });
  return [
    `LOCATION,Bench,-,XYZ,made up,unknown,${PLACE.latitudeDeg},${PLACE.longitudeDeg},${PLACE.zoneH},250`,
    ...[
      'DESIGN CONDITIONS,0',
      'TYPICAL/EXTREME PERIODS,0',
      'GROUND TEMPERATURES,0',
      'HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0',
      'COMMENTS 1,none',
      'COMMENTS 2,none',
    ],
    'DATA PERIODS,1,1,Data,Sunday,1/1,12/31',
    ...rows,
    '',
  ].join('\r\n');
};

/** 150 years of months, as long as the longest historic station. */
const historicStation = () =>
  [
    'Bench',
    'Location: 146400E 933200N, Lat 58.214 Lon -6.318, 15 metres amsl',
    '   yyyy  mm   tmax    tmin      af    rain     sun',
    '              degC    degC    days      mm   hours',
    ...Array.from({ length: 1800 }, (_, k) => `   ${1871 + Math.floor(k / 12)}  ${1 + (k % 12)}   12.5     5.1       2    64.1*   31.2#`),
    '',
  ].join('\n');

const read = (bytes, options) => {
  const reader = new ClimateReader(options);
  // As an upload brings it: pieces of 64 kB.
  for (let at = 0; at < bytes.length; at += 65_536) if (!reader.push(bytes.subarray(at, at + 65_536))) break;
  const result = reader.end();
  if (result.outcome !== 'records') throw new Error(JSON.stringify(result.faults[0]));
  return result.file;
};

export async function bench(add) {
  const hours = Buffer.from(yearOfHours());
  const file = read(hours, { sunHeight });
  if (file.sunOffset.offsetH !== -0.5 || file.rowsReadCount !== 8760) throw new Error(`the year was not read right: ${JSON.stringify(file.sunOffset)}`);
  add({
    name: `hourly file of 8,760 rows (${(hours.length / 1e6).toFixed(1)} MB), without the sun`,
    value: median(await timed(() => read(hours), { runs: 7, warmUp: 2 })),
    unit: 'ms',
    judge: 'value',
    target: { max: 1000 },
  });
  add({
    name: 'the same with the sun found by closure',
    value: median(await timed(() => read(hours, { sunHeight }), { runs: 7, warmUp: 2 })),
    unit: 'ms',
    judge: 'value',
    target: { max: 1000 },
  });
  const station = historicStation();
  add({
    name: 'historic station of 1,800 months',
    value: median(await timed(() => readClimateFile(station), { runs: 9, warmUp: 2 })),
    unit: 'ms',
    judge: 'value',
  });
  const junk = Buffer.alloc(8 * 1024 * 1024 + 1, 'x\n');
  add({
    name: '8 MB of lines of no known format, refused',
    value: median(await timed(() => refused(junk), { runs: 7, warmUp: 2 })),
    unit: 'ms',
    judge: 'value',
    target: { max: 200 },
  });
}

const refused = (bytes) => {
  if (readClimateFile(bytes).outcome !== 'faults') throw new Error('junk was taken for a climate file');
};
