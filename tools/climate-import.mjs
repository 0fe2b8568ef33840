// npm run -s climate:read -- FILE [--unit celsius|fahrenheit] [--coordinates asWritten|interchanged] [--max-min dailyMean|monthExtreme] [--inputs]
// A climate file in; what was read on standard output as JSON (without the hours; with --inputs the climate of a plan).
// Faults with their lines go to standard error, all at once; exit 2 for a file that was not taken.
import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { setUp } from './setup.mjs';

const [file, ...flags] = process.argv.slice(2);
const refuse = (message) => {
  process.stderr.write(message + '\n');
  process.exit(2);
};
const flag = (name) => (flags.includes(name) ? flags[flags.indexOf(name) + 1] : undefined);
if (!file || file.startsWith('--')) refuse('Name a climate file (formats: docs/formats), or - for standard input.');

await setUp();
const [{ ClimateReader, toClimateInputs }, { solarHourOf, sunPosition }] = await Promise.all([import('@lathwork/formats'), import('@lathwork/calc')]);
const sunHeight = ({ latitudeDeg, longitudeDeg, zoneH, dayOfYear, clockH }) =>
  sunPosition({ latitudeDeg, dayOfYear, solarHour: solarHourOf(clockH, { longitudeDeg, zoneH, dayOfYear }) }).up;
const answers = Object.fromEntries(
  Object.entries({ temperatureUnit: flag('--unit'), coordinates: flag('--coordinates'), powerMaxMin: flag('--max-min') }).filter(([, v]) => v !== undefined),
);

const reader = new ClimateReader({ sunHeight, answers });
const hash = createHash('sha256');
try {
  for await (const chunk of file === '-' ? process.stdin : createReadStream(file)) {
    hash.update(chunk);
    if (!reader.push(chunk)) break;
  }
} catch (e) {
  refuse(`${file}: ${e.message}`);
}
const result = reader.end();
if (result.outcome === 'faults') {
  const lines = result.faults.map(
    (f) => `line ${f.line}${f.column ? `, ${f.column}` : ''}: ${f.message} (${f.code}). ${f.remedy}${f.ask ? ` Answers: ${f.ask.choices.join(' or ')}.` : ''}`,
  );
  refuse(`${file} was not taken; ${result.faultsCount} faults, last good line ${result.lastGoodLine}:\n- ${lines.join('\n- ')}`);
}
const figures = Object.fromEntries(Object.entries(result.file).filter(([key]) => key !== 'hours' && key !== 'series'));
const inputs = flags.includes('--inputs') && result.file.kind !== 'annual' ? toClimateInputs(result.file, { distanceM: 0 }) : undefined;
const shown = inputs ?? { formatId: result.formatId, sha256: hash.digest('hex'), counted: result.counted, file: figures, remarks: result.remarks };
process.stdout.write(JSON.stringify(shown, null, 2) + '\n');
