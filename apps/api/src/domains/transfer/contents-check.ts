import type { PlanInputs, PlanResult } from '@lathwork/model';
import type { Type } from '@nestjs/common';
import { inputsFaults, resultFaults } from '../../platform/compute/inputs-check.js';
import { isId } from '../../platform/database/ids.js';
import { outlineFault, settledOutline } from '../../platform/http/outline-field.js';
import type { AsTyped } from '../../platform/http/quantity-field.js';
import { parseWhole } from '../../platform/http/validate.js';
import { Problem, type FieldFault } from '../../platform/problems/problem.js';
import { BuildDto, toFields } from '../builds/builds.dto.js';
import { GardenSettingsDto } from '../gardens/gardens.dto.js';
import { AsBuiltDto } from '../plans/plans.dto.js';
import { ExchangeRateDto, PriceDto, priceOf } from '../prices/prices.dto.js';
import { isDay, textFault } from '../shared/fields.js';
import { groundOf, SiteDto } from '../sites/sites.dto.js';
import { StockItemDto, thingOf } from '../stock/stock.dto.js';
import { shelterOf, StructureDto } from '../structures/structures.dto.js';
import { isJson, refuse, type Json } from './archive-reading.js';
import {
  LISTS,
  type GardenContents,
  type ListName,
  type MovedBuild,
  type MovedClaim,
  type MovedPhoto,
  type MovedPlan,
  type MovedPrice,
  type MovedRate,
  type MovedSite,
  type MovedStock,
  type MovedStructure,
} from './garden-file.js';

const MOST_ITEMS = 20_000;

const isMoment = (value: unknown): value is string =>
  typeof value === 'string' && /^\d{4}-\d\d-\d\dT[\d:.]+Z$/.test(value) && Number.isFinite(Date.parse(value));

const momentOf = (item: Json, key: string): string => {
  const value = item[key];
  return isMoment(value) ? value : refuse(`a ${key} is not a moment`);
};

const idOf = (item: Json, key: string): string => {
  const value = item[key];
  return isId(value) ? value : refuse(`a ${key} is not an id`);
};

const idOrNull = (item: Json, key: string): string | null => (item[key] === null ? null : idOf(item, key));

const wholeOf = (item: Json, key: string, min: number, max: number): number => {
  const value = item[key];
  return typeof value === 'number' && Number.isInteger(value) && value >= min && value <= max
    ? value
    : refuse(`a ${key} is not a whole number from ${min} to ${max}`);
};

const textOrNull = (item: Json, key: string, max: number): string | null => {
  const value = item[key];
  if (value === null) return null;
  return typeof value === 'string' && textFault(value, max) === null ? value : refuse(`a ${key} is not a text that is taken`);
};

const asTypedOf = (item: Json): AsTyped => {
  const value = item['asTyped'];
  const good = isJson(value) && Object.keys(value).length <= 400 && Object.values(value).every((one) => typeof one === 'string' && one.length <= 40);
  return good ? (value as AsTyped) : refuse('what is said to have been typed is not');
};

const moved = (item: Json) => ({
  id: idOf(item, 'id'),
  createdAt: momentOf(item, 'createdAt'),
  archivedAt: item['archivedAt'] === null ? null : momentOf(item, 'archivedAt'),
  asTyped: asTypedOf(item),
});

const without = (item: Json, ...keys: readonly string[]): Json => Object.fromEntries(Object.entries(item).filter(([key]) => !keys.includes(key)));

/** Checked by the very class that checks a request for such a thing. */
const asRequest = <T extends object>(shape: Type<T>, item: Json): T => parseWhole(shape, without(item, 'id', 'createdAt', 'archivedAt', 'asTyped'));

const site = (item: Json): MovedSite => {
  const dto = asRequest(SiteDto, item);
  if (!dto.timeZone) refuse('a site has no time zone');
  if (dto.outline && outlineFault(dto.outline)) refuse('an outline of a site crosses itself or is none');
  const { name, latitudeDeg, longitudeDeg, elevationM } = dto;
  return {
    ...moved(item),
    name,
    latitudeDeg,
    longitudeDeg,
    elevationM,
    timeZone: dto.timeZone ?? '',
    stationId: dto.stationId ?? null,
    outline: dto.outline ? settledOutline(dto.outline) : null,
    shared: dto.shared ?? false,
    ...groundOf(dto),
  };
};

const structure = (item: Json): MovedStructure => {
  const dto = asRequest(StructureDto, item);
  return { ...moved(item), name: dto.name ?? refuse('a structure has no name'), shared: dto.shared ?? false, ...shelterOf(dto) };
};

const stock = (item: Json): MovedStock => ({ ...moved(item), ...thingOf(asRequest(StockItemDto, item)) });
const price = (item: Json): MovedPrice => ({ ...moved(item), ...priceOf(asRequest(PriceDto, item)) });

const rate = (item: Json): MovedRate => {
  const { from, to, rate: figure, readOn } = asRequest(ExchangeRateDto, item);
  return { id: idOf(item, 'id'), from, to, rate: figure, readOn, createdAt: momentOf(item, 'createdAt') };
};

const build = (item: Json): MovedBuild => {
  const { asTyped, ...fields } = toFields(asRequest(BuildDto, item), asTypedOf(item));
  return { ...moved(item), ...fields, asTyped };
};

const claim = (item: Json): MovedClaim => ({
  id: idOf(item, 'id'),
  stockId: idOf(item, 'stockId'),
  buildId: idOf(item, 'buildId'),
  count: wholeOf(item, 'count', 1, 10_000),
  createdAt: momentOf(item, 'createdAt'),
});

const listOf = (item: Json, key: string, most: number): Json[] => {
  const value = item[key];
  return Array.isArray(value) && value.length <= most && value.every(isJson) ? (value as Json[]) : refuse(`${key} is not a list of at most ${most} things`);
};

const faultless = (what: string, faults: readonly FieldFault[]): void => {
  if (faults.length > 0) throw new Problem('import-refused', { reason: `the ${what} of a plan are not what the published schema says` }, faults);
};

const plan = (item: Json): MovedPlan => {
  faultless('inputs', inputsFaults(item['inputs']));
  faultless('results', resultFaults(item['result']));
  return {
    id: idOf(item, 'id'),
    buildId: idOf(item, 'buildId'),
    revision: wholeOf(item, 'revision', 1, 100_000),
    createdAt: momentOf(item, 'createdAt'),
    finishedAt: momentOf(item, 'finishedAt'),
    inputs: item['inputs'] as PlanInputs,
    result: item['result'] as PlanResult,
    stale: listOf(item, 'stale', 1000).map((one) => ({
      reason: textOrNull(one, 'reason', 80) ?? refuse('a mark has no reason'),
      subject: textOrNull(one, 'subject', 200),
      since: momentOf(one, 'since'),
    })),
    asBuilt: listOf(item, 'asBuilt', 1000).map((one) => {
      const details = isJson(one['details']) ? one['details'] : refuse('a record of what was built has no details');
      const observedOn = typeof one['observedOn'] === 'string' && isDay(one['observedOn']) ? one['observedOn'] : refuse('an observedOn is not a day');
      const { measures, remark } = parseWhole(AsBuiltDto, { ...without(details, 'asTyped'), observedOn });
      const plain = measures.map(({ subject, lengthM, pulledToN, remark: about }) => ({ subject, lengthM, pulledToN, remark: about }));
      return {
        id: idOf(one, 'id'),
        observedOn,
        createdAt: momentOf(one, 'createdAt'),
        details: { measures: plain, remark: remark ?? null, asTyped: asTypedOf(details) },
      };
    }),
  };
};

const photo = (item: Json): MovedPhoto => {
  const id = idOf(item, 'id');
  const [stockId, buildId] = [idOrNull(item, 'stockId'), idOrNull(item, 'buildId')];
  if ((stockId === null) === (buildId === null)) refuse('a photo is not of one thing');
  return {
    id,
    stockId,
    buildId,
    caption: textOrNull(item, 'caption', 200),
    widthPixelCount: wholeOf(item, 'widthPixelCount', 1, 16_384),
    heightPixelCount: wholeOf(item, 'heightPixelCount', 1, 16_384),
    createdAt: momentOf(item, 'createdAt'),
    file: `photos/${id}.jpg`,
  };
};

/** Each thing of a list checked; what is wrong is told with its place in the file. */
const every = <T>(garden: Json, name: ListName, check: (item: Json) => T): T[] =>
  listOf(garden, name, MOST_ITEMS).map((item, i) => {
    try {
      return check(item);
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      const faults = error.faults.map((fault) => ({ ...fault, pointer: `/${name}/${i}${fault.pointer}` }));
      const reason =
        error.key === 'import-refused' ? `in ${name}, number ${i + 1}: ${String(error.params['reason'])}` : `number ${i + 1} of ${name} is not valid`;
      throw new Problem('import-refused', { reason }, faults);
    }
  });

/** Everything that came in, checked as if each thing had been sent by itself. Nothing of the archive goes further unchecked. */
export const checkContents = (garden: Json): GardenContents => {
  const settings = isJson(garden['garden']) ? garden['garden'] : refuse('it does not say which garden it is');
  const { name, locale, currency, unitSystem } = parseWhole(GardenSettingsDto, without(settings, 'id', 'invented'));
  const contents: GardenContents = {
    schemaVersion: 1,
    garden: { id: idOf(settings, 'id'), name, locale, currency, unitSystem, invented: settings['invented'] === true },
    sites: every(garden, 'sites', site),
    structures: every(garden, 'structures', structure),
    stock: every(garden, 'stock', stock),
    prices: every(garden, 'prices', price),
    exchangeRates: every(garden, 'exchangeRates', rate),
    builds: every(garden, 'builds', build),
    claims: every(garden, 'claims', claim),
    plans: every(garden, 'plans', plan),
    photos: every(garden, 'photos', photo),
  };
  const ids = LISTS.flatMap((list) => contents[list].map(({ id }) => id));
  if (new Set(ids).size !== ids.length) refuse('two things in it have the same id');
  return contents;
};
