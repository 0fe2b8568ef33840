// One plan, whole and by room, and the sun's position against a general-purpose library in the same run.
import { readFileSync } from 'node:fs';
import { computePlan } from '@lathwork/calc';
import { Body, Equator, Horizon, MakeTime, Observer } from 'astronomy-engine';
import { declinationDeg, sunPosition } from '../../libs/calc/dist/physics/sun.js';
import { median, paired, timed } from './timing.mjs';

const inputs = JSON.parse(readFileSync(new URL('../../docs/api/example-plan-inputs.json', import.meta.url), 'utf8'));

export async function bench(add) {
  const rooms = new Map();
  const whole = await timed(
    () => {
      const started = new Map();
      computePlan(inputs, {
        engineVersion: 'bench',
        onRoom: (room, phase) => {
          if (phase === 'start') started.set(room, performance.now());
          else rooms.set(room, [...(rooms.get(room) ?? []), performance.now() - started.get(room)]);
        },
      });
    },
    { runs: 9, warmUp: 3 },
  );
  add({ name: 'one plan computed (gable canopy, all rooms)', value: median(whole), unit: 'ms', judge: 'value', target: { max: 1500 } });
  for (const [room, times] of rooms) add({ name: `  room ${room}`, value: median(times.slice(3)), unit: 'ms', judge: 'value' });

  const observer = new Observer(39.93, -104.58, 1640);
  let checksum = 0;
  const epoch = Date.UTC(2025, 0, 1);
  add({
    name: 'sun position, 8,760 hours, against astronomy-engine',
    unit: 'ms',
    judge: 'ratio',
    target: { max: 1 },
    ...(await paired(
      () => {
        // The sum is used, so that the work cannot be optimised away.
        for (let h = 0; h < 8760; h++)
          checksum += sunPosition({ latitudeDeg: 39.93, solarHour: h % 24, declination: declinationDeg(1 + Math.floor(h / 24)) }).zenithDeg;
      },
      () => {
        for (let h = 0; h < 8760; h++) {
          const time = MakeTime(new Date(epoch + h * 3_600_000));
          const seen = Equator(Body.Sun, time, observer, true, true);
          checksum += Horizon(time, observer, seen.ra, seen.dec).altitude;
        }
      },
      { runs: 7, warmUp: 2 },
    )),
  });
  if (!Number.isFinite(checksum)) throw new Error('a sun position was not a number');
}
