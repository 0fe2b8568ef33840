import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { climateInputsOf, parseStations } from '@lathwork/formats';
import type { ClimateInputs } from '@lathwork/model';

const { stations } = parseStations(readFileSync(join(process.cwd(), 'prisma', 'seed', 'stations.csv'), 'utf8'));

const means = (stationId: string, distanceM: number): ClimateInputs => {
  const station = stations.find((s) => s.stationId === stationId);
  if (!station) throw new Error(`station ${stationId} is not in the seed file`);
  return climateInputsOf(station, distanceM);
};

/** The stations of the example gardens, at the distance of the gardens' sites. */
export const denverMeans = means('72565', 10_171);
export const stornowayMeans = means('03026', 8_073);
export const invercargillMeans = means('93845', 11_369);
/** A station of the south whose sunshine record has gaps. */
export const canberraMeans = means('94926', 0);
