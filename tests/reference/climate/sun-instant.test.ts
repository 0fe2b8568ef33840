import { createRequire } from 'node:module';
import type * as Astronomy from 'astronomy-engine';
import { referenceTable, type ReferenceCheck } from '../../support/reference.js';
import { seededGenerator } from '../../../libs/calc/src/physics/sampling.js';
import { hourAngleDeg, julianDay, refractionDeg, sunAtInstant, sunInSpace, sunTimes } from '../../../libs/calc/src/physics/sun-instant.js';

const astronomy = createRequire(import.meta.url)('astronomy-engine') as typeof Astronomy;

/*
 * Left out: sol-spa-B (latitude of the sun on the ecliptic, taken as nought), sol-spa-delta_psi and sol-spa-delta_eps (the two
 * parts of nutation, of which one term is used), sol-spa-topo_delta and sol-spa-topo_H (parallax is put into the height at once).
 */
const SPA = 'NREL SPA reference case (NREL/TP-560-34302, appendix A.5), as pinned in pvlib tests/test_spa.py, commit 6382338';
const PVLIB = 'pvlib-python test suite, commit 6382338';
const published = { room: 'climate' as const, kind: 'published' as const };
const hundredth = { abs: 0.01, why: 'stated accuracy of the method, a hundredth of a degree' };

const golden = { latitudeDeg: 39.742476, longitudeDeg: -105.1786 };
const julian = julianDay({ year: 2003, month: 10, day: 17, hourUtc: 19 + 30 / 60 + 30 / 3600 });
const space = sunInSpace(julian);
const seen = () => sunAtInstant({ julian, ...golden });

const clock = (hour: number | null): string => {
  if (hour === null) return 'none';
  const s = Math.round((((hour % 24) + 24) % 24) * 3600);
  return [Math.floor(s / 3600), Math.floor(s / 60) % 60, s % 60].map((n) => String(n).padStart(2, '0')).join(':');
};
const times = (year: number, month: number, day: number, place: { latitudeDeg: number; longitudeDeg: number }, zoneH: number) => {
  const t = sunTimes({ year, month, day, ...place });
  const local = (h: number | null) => clock(h === null ? null : h + zoneH);
  return { sunrise: local(t.riseH), sunset: local(t.setH), transit: local(t.transitH) };
};

const spa = (id: string, unit: string, expected: number, tolerance: ReferenceCheck['tolerance'], got: () => number): ReferenceCheck => ({
  ...published,
  id,
  source: SPA,
  unit,
  expected,
  tolerance,
  got,
});
const position: ReferenceCheck[] = [
  spa('sol-spa-jd', 'd', 2452930.312847, { abs: 1e-6, why: 'printed to 1e-6' }, () => julian),
  spa('sol-spa-R', 'AU', 0.9965422974, { abs: 1e-5, why: 'the moon moves the earth by 5e-6' }, () => space.distanceRatio),
  spa('sol-spa-epsilon', 'deg', 23.440465, { abs: 0.001, why: 'one term of nutation' }, () => space.obliquityDeg),
  spa('sol-spa-lambda', 'deg', 204.0085519281, hundredth, () => space.longitudeDeg),
  spa('sol-spa-alpha', 'deg', 202.227408, hundredth, () => space.rightAscensionDeg),
  spa('sol-spa-delta-instant', 'deg', -9.31434, hundredth, () => space.declinationDeg),
  spa('sol-spa-H', 'deg', 11.1059, hundredth, () => hourAngleDeg(space, golden.longitudeDeg)),
  spa('sol-spa-eot-instant', 'min', 14.64, { abs: 0.04, why: 'a hundredth of a degree is 0.04 min' }, () => space.equationOfTimeMin),
  spa('sol-spa-refraction', 'deg', 0.016332, { abs: 2e-6, why: 'same formula, printed to 1e-6' }, () => refractionDeg(39.872046, 82_000, 11)),
  spa('sol-spa-apparent_elev', 'deg', 39.888378, hundredth, () => {
    const altitude = 90 - seen().zenithDeg;
    return altitude + refractionDeg(altitude, 82_000, 11);
  }),
  spa('sol-spa-zenith_apparent', 'deg', 50.11162, hundredth, () => seen().zenithDeg - refractionDeg(90 - seen().zenithDeg, 82_000, 11)),
  spa('sol-spa-azimuth_N', 'deg', 194.340241, hundredth, () => seen().azimuthDeg),
  {
    ...published,
    id: 'sol-esd',
    source: `${PVLIB}: test_solarposition.py`,
    unit: 'AU',
    expected: [0.983289204601, 1.01486146446],
    tolerance: { abs: 5e-5, why: 'the moon and the planets move the earth by that much' },
    got: () => [
      sunInSpace(julianDay({ year: 2015, month: 1, day: 2, hourUtc: 7 })).distanceRatio,
      sunInSpace(julianDay({ year: 2015, month: 8, day: 2, hourUtc: 7 })).distanceRatio,
    ],
  },
];

const rise = (
  id: string,
  source: string,
  expected: { sunrise: string; sunset: string; transit?: string },
  got: () => ReturnType<typeof times>,
): ReferenceCheck => ({
  ...published,
  id,
  source,
  unit: 'hh:mm:ss',
  expected,
  tolerance: { abs: 10, why: 'a hundredth of a degree at the horizon is 2.4 s at the equator and more towards the poles' },
  got,
});
const risings: ReferenceCheck[] = [
  rise('sol-spa-golden-rise', `${PVLIB}: test_solarposition.py, 2 January 2015`, { sunrise: '07:21:55', sunset: '16:47:43', transit: '12:04:45' }, () =>
    times(2015, 1, 2, golden, -7),
  ),
  // That suite counts by the date of Greenwich: its sunset of 2 August is the evening of 1 August by the clock of the place.
  rise('sol-spa-golden-rise-aug', `${PVLIB}: test_solarposition.py, 2 August 2015`, { sunrise: '05:00:27', sunset: '19:13:58', transit: '12:06:58' }, () => ({
    ...times(2015, 8, 2, golden, -7),
    sunset: times(2015, 8, 1, golden, -7).sunset,
  })),
  rise('sol-spa-35S-rise-instant', `${PVLIB}: test_spa.py`, { sunrise: '07:08:15', sunset: '17:01:04' }, () =>
    times(1996, 7, 5, { latitudeDeg: -35, longitudeDeg: 0 }, 0),
  ),
  rise('sol-spa-35N-rise-instant', `${PVLIB}: test_spa.py`, { sunrise: '07:08:12', sunset: '16:59:55' }, () =>
    times(1994, 1, 2, { latitudeDeg: 35, longitudeDeg: 0 }, 0),
  ),
  {
    room: 'climate',
    kind: 'practice',
    id: 'sun-at-the-poles',
    source: 'half a year of day and half a year of night at each pole',
    unit: 'season',
    expected: ['polarDay', 'polarNight', 'polarNight', 'polarDay', 'none', 'none'],
    tolerance: { why: 'words' },
    got: () => {
      const at = (latitudeDeg: number, longitudeDeg: number, month: number) => sunTimes({ year: 2024, month, day: 21, latitudeDeg, longitudeDeg });
      return [
        at(90, 180, 6).season,
        at(90, -180, 12).season,
        at(-90, 180, 6).season,
        at(-90, -180, 12).season,
        clock(at(90, 0, 6).riseH),
        clock(at(-90, 0, 6).setH),
      ];
    },
  },
];

const RAD = Math.PI / 180;
const EPHEMERIS = 'astronomy-engine 2.1.19 over 3,000 random places and times, 2000 to 2030: greatest difference';
const random = (seed: number) => {
  const next = seededGenerator(seed);
  return (low: number, high: number): number => low + (high - low) * next();
};
const moments = (count: number, seed: number, off: (m: { when: Date; julian: number; latitudeDeg: number; longitudeDeg: number }) => number): number => {
  const between = random(seed);
  let worst = 0;
  for (let i = 0; i < count; i++) {
    const when = new Date(Math.round(between(Date.UTC(2000, 0, 1), Date.UTC(2031, 0, 1)) / 1000) * 1000);
    // The ends of both ranges come up often: a pole, a meridian of 180 degrees.
    const latitudeDeg = i % 10 === 0 ? (i % 20 === 0 ? 90 : -90) : between(-90, 90);
    const longitudeDeg = i % 10 === 1 ? (i % 20 === 1 ? 180 : -180) : between(-180, 180);
    const hourUtc = when.getUTCHours() + when.getUTCMinutes() / 60 + when.getUTCSeconds() / 3600;
    worst = Math.max(
      worst,
      off({
        when,
        latitudeDeg,
        longitudeDeg,
        julian: julianDay({ year: when.getUTCFullYear(), month: when.getUTCMonth() + 1, day: when.getUTCDate(), hourUtc }),
      }),
    );
  }
  return worst;
};
const cross: ReferenceCheck[] = [
  {
    room: 'climate',
    kind: 'cross-check',
    id: 'x-astronomy-instant',
    source: EPHEMERIS,
    unit: 'deg',
    expected: 0,
    tolerance: { abs: 0.015, why: 'stated accuracy of a hundredth of a degree, and the half of it for the pull of the planets' },
    got: () =>
      moments(3000, 21, (m) => {
        const observer = new astronomy.Observer(m.latitudeDeg, m.longitudeDeg, 0);
        const place = astronomy.Equator(astronomy.Body.Sun, m.when, observer, true, true);
        const theirs = astronomy.Horizon(m.when, observer, place.ra, place.dec);
        const mine = sunAtInstant(m);
        const flat = Math.cos(theirs.altitude * RAD);
        const across = [
          mine.east - flat * Math.sin(theirs.azimuth * RAD),
          mine.north - flat * Math.cos(theirs.azimuth * RAD),
          mine.up - Math.sin(theirs.altitude * RAD),
        ];
        return (2 * Math.asin(Math.hypot(...across) / 2)) / RAD;
      }),
  },
  {
    room: 'climate',
    kind: 'cross-check',
    id: 'x-astronomy-rise',
    source: EPHEMERIS.replace('3,000', '150').replace('places', 'places under 55 degrees'),
    unit: 'min',
    expected: 0,
    tolerance: { abs: 0.35, why: 'refraction of 34 minutes of arc there and here; radius of the disc one value here' },
    got: () =>
      moments(150, 22, (m) => {
        const latitudeDeg = m.latitudeDeg * (55 / 90);
        const day = { year: m.when.getUTCFullYear(), month: m.when.getUTCMonth() + 1, day: m.when.getUTCDate() };
        const riseH = sunTimes({ ...day, latitudeDeg, longitudeDeg: m.longitudeDeg }).riseH ?? NaN;
        const mine = Date.UTC(day.year, day.month - 1, day.day) + riseH * 3_600_000;
        const observer = new astronomy.Observer(latitudeDeg, m.longitudeDeg, 0);
        const found = astronomy.SearchRiseSet(astronomy.Body.Sun, observer, 1, new Date(mine - 3 * 3_600_000), 1);
        return found === null ? 999 : Math.abs(found.date.getTime() - mine) / 60_000;
      }),
  },
];

referenceTable('climate: the sun at an instant', position);
referenceTable('climate: sunrise and sunset', risings);
referenceTable('climate: the sun at an instant against an ephemeris', cross);
