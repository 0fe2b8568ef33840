// npm run -s climate:read -- FILE [--json] [--answer NAME=VALUE] [--format ID] [--limit-mb 8]
// Tells what a weather or climate file holds, or what is wrong with it, by line. Nothing is stored. FILE may be "-".
// Exit 0: the file is one that would be taken; 2: it has faults, or the command line is wrong.
import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { parseArgs } from 'node:util';
import { setUp } from './setup.mjs';

const refuse = (message) => {
  process.stderr.write(message + '\n');
  process.exit(2);
};
const readArguments = () => {
  try {
    return parseArgs({
      allowPositionals: true,
      options: {
        json: { type: 'boolean' },
        answer: { type: 'string', multiple: true },
        format: { type: 'string' },
        'limit-mb': { type: 'string', default: '8' },
      },
    });
  } catch (e) {
    return refuse(e.message);
  }
};
const { values, positionals } = readArguments();
const [name] = positionals;
const ANSWERS = { temperatureUnit: ['celsius', 'fahrenheit'], coordinates: ['asWritten', 'interchanged'], powerMaxMin: ['dailyMean', 'monthExtreme'] };
const limitMb = Number(values['limit-mb']);
if (!name || positionals.length > 1) refuse('Name one weather or climate file, or - for standard input.');
if (!(limitMb > 0)) refuse('--limit-mb is a number of megabytes over 0.');
const answers = Object.fromEntries((values.answer ?? []).map((a) => a.split('=')));
for (const [key, value] of Object.entries(answers))
  if (!ANSWERS[key]?.includes(value))
    refuse(
      `--answer is one of ${Object.entries(ANSWERS)
        .flatMap(([k, list]) => list.map((v) => `${k}=${v}`))
        .join(', ')}.`,
    );

await setUp();
const [{ ClimateReader, FORMAT_IDS, HOURLY_VALUES, monthsOfHourlyFile }, { solarHourOf, sunPosition }] = await Promise.all([
  import('@lathwork/formats'),
  import('../libs/calc/dist/physics/sun.js'),
]);
if (values.format !== undefined && !FORMAT_IDS.includes(values.format)) refuse(`--format is one of ${FORMAT_IDS.join(', ')}.`);

const sunHeight = ({ latitudeDeg, longitudeDeg, zoneH, dayOfYear, clockH }) =>
  sunPosition({ latitudeDeg, dayOfYear, solarHour: solarHourOf(clockH, { longitudeDeg, zoneH, dayOfYear }) }).up;
const reader = new ClimateReader({
  answers,
  sunHeight,
  bytesLimit: limitMb * 1024 * 1024,
  ...(values.format === undefined ? {} : { formatId: values.format }),
});
const hash = createHash('sha256');
try {
  for await (const piece of name === '-' ? process.stdin : createReadStream(name)) {
    hash.update(piece);
    if (!reader.push(piece)) break;
  }
} catch (e) {
  refuse(`${name}: ${e.message}`);
}
const result = reader.end();
const sha256 = result.outcome === 'records' ? hash.digest('hex') : null;

const show = (value, digits = 1) => (typeof value === 'number' ? value.toFixed(digits) : '-');
const line = (text = '') => process.stdout.write(text + '\n');
const table = (heads, rows) => {
  for (const row of [heads, ...rows]) line(row.map((cell, i) => (i === 0 ? String(cell).padEnd(10) : String(cell).padStart(11))).join(''));
};
const MONTHS = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'];

const monthly = (months) =>
  table(
    ['month', 'max C', 'min C', 'rain mm', 'sun h', 'MJ/m2 day', 'frost d', 'years'],
    months.map((m, i) => [
      MONTHS[i],
      show(m.tMaxC),
      show(m.tMinC),
      show(m.precipitationMm),
      show(m.sunshineH),
      show(m.radiationMJPerM2),
      show(m.frostDaysD),
      show(m.yearsCount, 0),
    ]),
  );
const dates = (list) => list.map((d) => `${Math.round(d.chanceFrac * 100)} % ${MONTHS[d.month - 1].slice(0, 3)} ${d.day}`).join(', ');
const annual = (file) => {
  line(`Year: mean ${show(file.tMeanC)} C, rain ${show(file.precipitationMm, 0)} mm, frost on ${show(file.frostDaysD)} days`);
  for (const t of file.frost) {
    line(`Frost of ${show(t.thresholdC)} C${t.frostAllYear ? ': possible all year' : ''}`);
    line(`  still to come on or after: ${dates(t.lastSpring) || '-'}`);
    line(`  has come on or before:     ${dates(t.firstAutumn) || '-'}`);
  }
};
const SUN_WORDS = {
  'no-sun-function': 'not looked for',
  'no-radiation': 'no radiation in the file',
  'too-few-hours': 'too few sunny hours',
  'does-not-close': 'radiation does not close',
  'at-the-edge': 'no best hour within the range',
};
const hourly = (file) => {
  const { sunOffset } = file;
  line(`Hours: ${file.rowsReadCount} of ${file.slotsCount}, ${file.missingHoursCount} absent`);
  for (const gap of file.gaps.slice(0, 5))
    line(`  ${gap.hoursCount} absent after line ${gap.afterLine}, from month ${gap.month}, day ${gap.day}, hour ${gap.hourEnding}`);
  line(
    sunOffset.offsetH === null
      ? `Sun: ${SUN_WORDS[sunOffset.reason] ?? sunOffset.reason}`
      : `Sun: stands ${show(sunOffset.offsetH, 2)} h from the hour's label (misfit ${show(sunOffset.residualWPerM2)} W/m2; in the middle of the hour ${show(sunOffset.residualMidHourWPerM2)})`,
  );
  const missing = HOURLY_VALUES.filter((v) => file.missingValues[v] > 0).map((v) => `${v} ${file.missingValues[v]}`);
  if (missing.length > 0) line(`Missing values: ${missing.join(', ')}`);
  monthly(monthsOfHourlyFile(file));
};

const tell = () => {
  const { file, counted, remarks } = result;
  const { place, source } = file;
  line(`${source.variant} (${result.formatId}), ${counted.linesCount} lines, ${counted.bytesCount} bytes, ${counted.encoding}`);
  line(`${place.stationName}${place.country ? `, ${place.country}` : ''}: ${place.latitudeDeg}, ${place.longitudeDeg}, ${place.elevationM ?? 'unknown'} m`);
  line(`${source.publisher}; ${source.kind} ${source.period ?? '(period not stated)'}`);
  line(`Terms: ${source.licenceNote}`);
  line(`Credit: ${source.credit}`);
  line(`sha256 ${sha256}`);
  line();
  if (file.kind === 'monthly') monthly(file.months);
  else if (file.kind === 'annual') annual(file);
  else hourly(file);
  if (remarks.length > 0) line();
  for (const r of remarks) line(`Remark${r.line > 0 ? `, line ${r.line}` : ''}: ${r.message}${r.count > 1 ? ` (${r.count})` : ''}`);
};
const tellFaults = () => {
  const more = result.faultsCount - result.faults.length;
  line(
    `${name} is not taken (${result.formatId ?? 'no known format'}): ${result.faultsCount} fault${result.faultsCount === 1 ? '' : 's'}, last good line ${result.lastGoodLine}`,
  );
  for (const f of result.faults) {
    line(`- ${f.line > 0 ? `line ${f.line}` : 'file'}${f.column ? `, ${f.column}` : ''}: ${f.message} [${f.code}]`);
    line(`  ${f.remedy}${f.ask ? ` (${f.ask.choices.map((c) => `--answer ${f.ask.answer}=${c}`).join(' or ')})` : ''}`);
  }
  if (more > 0) line(`- and ${more} more`);
};

if (values.json) line(JSON.stringify({ sha256, ...result }, null, 1));
else if (result.outcome === 'records') tell();
else tellFaults();
process.exitCode = result.outcome === 'records' ? 0 : 2;
