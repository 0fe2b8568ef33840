// The sun at true instants against a general-purpose library, a year made from monthly means, and the climate room.
import { readFileSync } from 'node:fs';
import { computeClimate, syntheticYear } from '@lathwork/calc';
import { Body, Equator, Horizon, MakeTime, Observer } from 'astronomy-engine';
import { sunAtInstant } from '../../libs/calc/dist/physics/sun-instant.js';
import { median, paired, timed } from './timing.mjs';

const { site, climate } = JSON.parse(readFileSync(new URL('../../docs/api/example-plan-inputs.json', import.meta.url), 'utf8'));
const HOURS = 8760;

export async function bench(add) {
  const observer = new Observer(site.latitudeDeg, site.longitudeDeg, site.elevationM);
  const epoch = Date.UTC(2025, 0, 1);
  const firstDay = epoch / 86_400_000 + 2_440_587.5;
  let checksum = 0;
  add({
    name: 'sun at 8,760 instants, against astronomy-engine',
    unit: 'ms',
    judge: 'ratio',
    target: { max: 1 },
    ...(await paired(
      () => {
        // The sum is used, so that the work cannot be optimised away.
        for (let h = 0; h < HOURS; h++)
          checksum += sunAtInstant({ julian: firstDay + h / 24, latitudeDeg: site.latitudeDeg, longitudeDeg: site.longitudeDeg }).zenithDeg;
      },
      () => {
        for (let h = 0; h < HOURS; h++) {
          const time = MakeTime(new Date(epoch + h * 3_600_000));
          const seen = Equator(Body.Sun, time, observer, true, true);
          checksum += Horizon(time, observer, seen.ra, seen.dec).altitude;
        }
      },
      { runs: 7, warmUp: 2 },
    )),
  });

  let seed = 0;
  const years = await timed(
    () => {
      const year = syntheticYear({ site, climate, seed: ++seed });
      if (!('airC' in year)) throw new Error('the example site has a month missing');
      checksum += year.airC[4380];
    },
    { runs: 25, warmUp: 5 },
  );
  add({ name: 'a year of 8,760 hours made from monthly means', value: median(years), unit: 'ms', judge: 'value', target: { max: 20 } });

  const room = await timed(() => (checksum += computeClimate({ site, climate }).result.degreeDays.heatingKD), { runs: 25, warmUp: 5 });
  add({ name: 'climate room, free horizon', value: median(room), unit: 'ms', judge: 'value', target: { max: 20 } });
  const obstacles = Array.from({ length: 10 }, (_, i) => ({ bearingDeg: 90 + 18 * i, distanceM: 20 + i, widthM: 8, heightM: 4 + i }));
  const shaded = await timed(() => (checksum += computeClimate({ site: { ...site, obstacles }, climate }).result.sunHours[5].clearedH), {
    runs: 25,
    warmUp: 5,
  });
  add({ name: 'climate room, ten obstacles round the plot', value: median(shaded), unit: 'ms', judge: 'value', target: { max: 40 } });
  if (!Number.isFinite(checksum)) throw new Error('a figure was not a number');
}
