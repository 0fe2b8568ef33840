import type { ClimateMonth } from '@lathwork/model';
import type { TableSpec } from '../../../parts/table.js';
import { common, COMPASS, MONTHS, MONTHS_SHORT, SOIL_WORDS } from '../../../words/en/common.js';
import { climatePages } from '../../../words/en/pages-climate.js';
import { pages } from '../../../words/en/pages.js';
import { decimal, percent } from '../../../words/figures.js';
import { fill, listing } from '../../../words/fill.js';
import { chartMonths, monthRuns, type Context } from './context.js';

const w = pages.site;

export interface SiteView {
  facts: readonly (readonly [string, string])[];
  station: readonly string[];
  loads: readonly string[];
  finding: string;
  table: TableSpec;
  notes: readonly string[];
}

export const compassWord = (deg: number): string => COMPASS[Math.round((((deg % 360) + 360) % 360) / 45) % 8] ?? 'north';

function facts(ctx: Context): [string, string][] {
  const { site, structure } = ctx.inputs;
  const { fig } = ctx;
  const orUnknown = <T>(value: T | 'unknown', say: (known: T) => string): string => (value === 'unknown' ? common.unknown : say(value as T));
  const fall =
    site.fallAcrossM === 'unknown' || site.fallAlongM === 'unknown'
      ? common.unknown
      : fill(w.fallText, { across: fig.length(Math.abs(site.fallAcrossM)), along: fig.length(Math.abs(site.fallAlongM)) });
  return [
    [w.facts.height, fig.height(site.elevationM)],
    [w.facts.exposure, w.exposure[site.exposure]],
    [w.facts.soil, orUnknown(site.soilClass, (s) => SOIL_WORDS[s])],
    [w.facts.frost, orUnknown(site.frostDepthM, (d: number) => fig.length(d))],
    [w.facts.fall, fall],
    [w.facts.faces, compassWord(structure.frontFacesDeg)],
    [w.facts.storm, orUnknown(site.stormWindFromDeg, (d: number) => compassWord(d))],
    [w.facts.shade, fill(w.shadeText, { share: percent(site.shadedFrac) })],
    [w.facts.anchors, w.allowed[site.permanentAnchors]],
  ];
}

function station(ctx: Context): string[] {
  const c = ctx.inputs.climate;
  const r = ctx.result.climate;
  const st = climatePages.station;
  return [
    fill(st.text, {
      name: c.stationName,
      country: c.country,
      distance: ctx.fig.distance(r.stationDistanceM),
      height: ctx.fig.height(c.stationElevationM),
      period: periodText(ctx),
      credit: c.credit.replace(/\.$/, ''),
    }),
    [
      heightSentence(ctx),
      fill(st.fit[r.stationFit], { distance: ctx.fig.distance(FAR_M), height: ctx.fig.height(FAR_HEIGHT_M) }),
      ...(r.stationDoubtK === undefined ? [] : [fill(st.doubt, { doubt: ctx.fig.difference(r.stationDoubtK) })]),
    ].join(' '),
  ];
}

/** "2003-2021 means": what the figures are is said once, and means of a run of years are never called normals. */
function periodText(ctx: Context): string {
  const { kind, period } = ctx.inputs.climate;
  const word = kind === 'means' ? climatePages.station.means : climatePages.station.normals;
  return period.toLowerCase().includes(kind) ? period : `${period} ${word}`;
}

/** Where a station is called far, as the climate room has it. */
const FAR_M = 300_000;
const FAR_HEIGHT_M = 500;

function heightSentence(ctx: Context): string {
  const { heightDifferenceM, heightCorrectionK } = ctx.result.climate;
  const st = climatePages.station;
  const { fig } = ctx;
  if (Math.abs(heightDifferenceM) < 5) return st.sameHeight;
  const k = fig.difference(Math.abs(heightCorrectionK));
  const change = k.startsWith('0') ? fill(st.littleChanged, { k: fig.oneDegree }) : fill(heightCorrectionK < 0 ? st.colder : st.warmer, { k });
  return fill(st.heightNote, { difference: fig.height(Math.abs(heightDifferenceM)), direction: heightDifferenceM > 0 ? st.higher : st.lower, change });
}

function loads(ctx: Context): string[] {
  const { wind, snow } = ctx.inputs.site;
  const clean = (text: string): string => text.replace(/\.$/, '');
  return [
    wind === 'unknown'
      ? w.windUnknown
      : fill(w.windText, {
          speed: ctx.fig.speed(wind.speedMPerS),
          averaging: w.averaging[wind.averaging],
          level: w.level[wind.level],
          edition: wind.codeEdition,
          date: wind.readOn,
          source: clean(wind.source),
        }),
    snow === 'unknown'
      ? w.snowUnknown
      : fill(w.snowText, {
          load: ctx.fig.pressure(snow.loadPa),
          surface: w.surface[snow.surface],
          level: w.level[snow.level],
          edition: snow.codeEdition,
          date: snow.readOn,
          source: clean(snow.source),
        }),
  ];
}

const rainKnown = (ctx: Context): boolean => ctx.inputs.climate.months.some((m) => m.precipitationMm !== null);

/** How the sun of a month was found, and its doubt as a share of it. */
const sunFrom = ({ sunBasis, sunDoubtFrac }: ClimateMonth): string =>
  sunDoubtFrac === undefined || sunDoubtFrac === null
    ? climatePages.sunFromPlain[sunBasis]
    : fill(climatePages.sunFrom[sunBasis], { doubt: percent(sunDoubtFrac) });

function table(ctx: Context): TableSpec {
  const { months } = ctx.result.climate;
  const t = (value: number | null): string => (value === null ? common.noRecord : ctx.fig.t(value));
  const hasRain = rainKnown(ctx);
  const rows = chartMonths(ctx).map((month) => {
    const m = months[month - 1];
    const name = MONTHS_SHORT[month - 1] ?? '';
    const rain = ctx.inputs.climate.months[month - 1]?.precipitationMm;
    if (m === undefined || !m.hasRecord) return { cells: [name], spanned: common.noRecord };
    return {
      cells: [
        name,
        t(m.tMinC),
        t(m.tMaxC),
        t(m.coldNightC),
        t(m.sunnyDayMaxC),
        t(m.dewPointC),
        ...(hasRain ? [rain === null || rain === undefined ? common.noRecord : ctx.fig.rain(rain)] : []),
        decimal(m.daylightH, 1),
        m.sunMJPerM2 === null ? common.noRecord : ctx.fig.sun(m.sunMJPerM2),
        sunFrom(m),
      ],
    };
  });
  const col = (head: string): { head: string; widthMm: number } => ({ head, widthMm: 17 });
  return {
    caption: fill(w.table, { unit: ctx.fig.degree }),
    columns: [
      { head: '', widthMm: null },
      col(w.cols.low),
      col(w.cols.high),
      col(w.cols.cold),
      col(w.cols.sunny),
      col(w.cols.dew),
      ...(hasRain ? [col(fill(climatePages.rainHead, { unit: ctx.fig.rainUnit }))] : []),
      col(w.cols.light),
      col(w.cols.sun),
      { head: climatePages.sunFromHead, widthMm: 30, left: true, whole: true },
    ],
    rows,
    thirds: true,
    snug: true,
  };
}

export function siteView(ctx: Context): SiteView {
  const { climate } = ctx.result;
  const order = chartMonths(ctx);
  const name = (month: number): string => MONTHS[month - 1] ?? '';
  const missing = climate.months.filter((m) => !m.hasRecord).map((m) => m.month);
  const estimated = climate.months.filter((m) => m.coldNightBasis === 'estimated').map((m) => m.month);
  const dewByRule = climate.months.filter((m) => m.dewPointBasis === 'nightRule').map((m) => m.month);
  const finding =
    climate.designNight === null || climate.coldestMonth === null || climate.hottestMonth === null
      ? w.findingNoNight
      : fill(w.findingBoth, { cold: name(climate.coldestMonth), hot: name(climate.hottestMonth), night: ctx.fig.temperature(climate.designNight.lowC) });
  return {
    facts: facts(ctx),
    station: station(ctx),
    loads: loads(ctx),
    finding,
    table: table(ctx),
    notes: [
      ...(missing.length > 0 ? [fill(w.missing, { months: listing(monthRuns(missing, order, name)) })] : []),
      ...(estimated.length > 0 ? [fill(w.estimated, { months: listing(monthRuns(estimated, order, name)) })] : []),
      ...(dewByRule.length > 0 ? [fill(climatePages.dewNote, { months: listing(monthRuns(dewByRule, order, name)) })] : []),
      ...(rainKnown(ctx) ? [] : [climatePages.noRain]),
      climatePages.sunFromNote,
    ],
  };
}
