// A year of hours read from text: 8,760 rows of 35 fields, with the sun fitted and without.
import { readClimateFile } from '@lathwork/formats';
import { solarHourOf, sunPosition } from '../../libs/calc/dist/physics/sun.js';
import { median, timed } from './timing.mjs';

const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const RAD = Math.PI / 180;
const sunHeight = ({ latitudeDeg, longitudeDeg, zoneH, dayOfYear, clockH }) =>
  Math.cos(sunPosition({ latitudeDeg, dayOfYear, solarHour: solarHourOf(clockH, { longitudeDeg, zoneH, dayOfYear }) }).zenithDeg * RAD);
const place = { latitudeDeg: 42, longitudeDeg: -88, zoneH: -6 };

const file = () => {
  const rows = [
    'LOCATION,MADE,XX,USA,MADE,725300,42.0,-88.0,-6.0,200.0',
    'DESIGN CONDITIONS,0',
    'TYPICAL/EXTREME PERIODS,0',
    'GROUND TEMPERATURES,0',
    'HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0',
    'COMMENTS 1,made',
    'COMMENTS 2,made',
    'DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31',
  ];
  let dayOfYear = 0;
  DAYS.forEach((days, m) => {
    for (let day = 1; day <= days; day++) {
      dayOfYear++;
      for (let hour = 1; hour <= 24; hour++) {
        const up = Math.max(0, sunHeight({ ...place, dayOfYear, clockH: hour - 0.5 }));
        const beam = up > 0.05 ? 600 : 0;
        const air = 10 - 10 * Math.cos((2 * Math.PI * (dayOfYear - 15)) / 365) - 4 * Math.cos((2 * Math.PI * (hour - 3)) / 24);
        rows.push(
          `1999,${m + 1},${day},${hour},0,?9?9?9?9E0?9?9?9?9?9?9?9?9?9?9?9*9?9?9?9*9*9?9*9*9,${air.toFixed(1)},${(air - 3).toFixed(1)},80,99000,0,0,280,${(beam * up + 60).toFixed(0)},${beam},60,0,0,0,0,180,3.0,5,5,16.0,77777,9,999999999,50,0.0000,0,88,0.200,0.0,1.0`,
        );
      }
    }
  });
  return Buffer.from(rows.join('\n') + '\n');
};

export async function bench(add) {
  const bytes = file();
  const read = (options) => {
    const result = readClimateFile(bytes, options);
    if (result.outcome !== 'records' || result.file.rowsReadCount !== 8760) throw new Error('the year was not read whole');
    return result.file;
  };
  if (Math.abs(read({ sunHeight }).sunOffset.offsetH + 0.5) > 0.05) throw new Error('the sun was not found at the middle of the hour');
  const plain = await timed(() => read({}), { runs: 9, warmUp: 2 });
  add({ name: 'hourly file of 8,760 rows read', value: median(plain), unit: 'ms', judge: 'value', target: { max: 1000 } });
  const fitted = await timed(() => read({ sunHeight }), { runs: 7, warmUp: 1 });
  add({ name: 'hourly file of 8,760 rows read and its sun fitted', value: median(fitted), unit: 'ms', judge: 'value', target: { max: 1000 } });
}
