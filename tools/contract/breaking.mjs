// Compares the API document with the last released one by GitHub's nine kinds of breaking change, and refuses a break that
// docs/api/changes.md does not announce under a version that may break:
//   node tools/contract/breaking.mjs [new document] [released document] [changes]
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { refuses, resolver, sameType, variantsOf } from './schemas.mjs';

/** The kinds, each with what it means. A change of any other kind breaks nobody. */
export const KINDS = {
  'operation-removed': 'an operation is gone',
  'parameter-removed': 'a parameter or a field of a request is gone, or has another name',
  'answer-field-removed': 'a field of an answer is gone, has another name, or is no longer always there',
  'required-parameter-added': 'a request needs a parameter or field that did not exist',
  'became-required': 'what could be left out must be sent',
  'type-changed': 'a value has another type',
  'enum-value-removed': 'one of a list of words is gone',
  'validation-added': 'a value that was taken is refused',
  'access-changed': 'a credential that opened an operation no longer does',
};

const METHODS = ['get', 'post', 'put', 'patch', 'delete'];

/** What a parameter in an address is called does not reach the wire. */
const shapeOf = (path) => path.replaceAll(/\{\w+\}/g, '{}');

const operationsOf = (document) =>
  new Map(
    Object.entries(document.paths).flatMap(([path, item]) =>
      METHODS.flatMap((method) => (item[method] ? [[`${method.toUpperCase()} ${shapeOf(path)}`, item[method]]] : [])),
    ),
  );

/** Compares two schemas. In a request less may not be taken; in an answer nothing else may come. */
class SchemaComparison {
  constructor(before, after, mode, report) {
    Object.assign(this, { resolveBefore: resolver(before), resolveAfter: resolver(after), mode, report, seen: new Set() });
  }

  compare(before, after, at) {
    const pair = `${at.split(' ')[0]}|${before?.$ref}|${after?.$ref}`;
    if (before?.$ref && after?.$ref && this.seen.has(pair)) return;
    this.seen.add(pair);
    const [old, now] = [variantsOf(before, this.resolveBefore), variantsOf(after, this.resolveAfter)];
    if (old.length === 1 && now.length === 1) return this.one(old[0], now[0], at);
    // Whatever was taken must still be taken; whatever comes must be what could come before.
    const [given, offered] = this.mode === 'request' ? [old, now] : [now, old];
    for (const one of given) this.findPlace(one, offered, at);
  }

  /** One variant must fit one of the others without a break; the nearest of the same type says why it does not. */
  findPlace(variant, others, at) {
    const candidates = others.filter((other) => (this.mode === 'request' ? sameType(variant, other, 'request') : sameType(other, variant, 'answer')));
    if (candidates.length === 0)
      return this.report('type-changed', at, `${variant.type ?? 'a value'} ${this.mode === 'request' ? 'is no longer taken' : 'may come now'}`);
    const tries = candidates.map((other) => {
      const found = [];
      const trial = Object.assign(Object.create(SchemaComparison.prototype), this, { report: (...one) => found.push(one), seen: new Set(this.seen) });
      trial.one(...(this.mode === 'request' ? [variant, other] : [other, variant]), at);
      return found;
    });
    const best = tries.sort((a, b) => a.length - b.length)[0];
    for (const one of best) this.report(...one);
  }

  one(before, after, at) {
    if (!sameType(before, after, this.mode)) return this.report('type-changed', at, `${before.type ?? 'any'} became ${after.type ?? 'any'}`);
    this.words(before, after, at);
    if (this.mode === 'request') for (const what of refuses(before, after)) this.report('validation-added', at, what);
    if (before.properties || after.properties) this.fields(before, after, at);
    if (before.items && after.items) this.compare(before.items, after.items, `${at}/[]`);
    const [rest, others] = [before.additionalProperties, after.additionalProperties];
    if (typeof rest === 'object' && typeof others === 'object') this.compare(rest, others, `${at}/*`);
  }

  words(before, after, at) {
    const listOf = (schema) => schema.enum ?? (schema.const === undefined ? null : [schema.const]);
    const [old, now] = [listOf(before), listOf(after)];
    if (old && now)
      for (const gone of old.filter((word) => !now.includes(word))) this.report('enum-value-removed', `${at}=${gone}`, `the word ${gone} is gone`);
    if (!old && now && this.mode === 'request') this.report('validation-added', at, `only ${now.join(', ')} ${now.length > 1 ? 'are' : 'is'} taken`);
  }

  fields(before, after, at) {
    const [old, now] = [before.properties ?? {}, after.properties ?? {}];
    const [oldRequired, nowRequired] = [new Set(before.required), new Set(after.required)];
    for (const name of Object.keys(old)) {
      const place = `${at}/${name}`;
      if (!(name in now)) {
        if (this.mode === 'answer' || after.additionalProperties === false)
          this.report(this.mode === 'answer' ? 'answer-field-removed' : 'parameter-removed', place, `${name} is gone`);
        continue;
      }
      if (this.mode === 'answer' && oldRequired.has(name) && !nowRequired.has(name)) this.report('answer-field-removed', place, `${name} may be missing`);
      if (this.mode === 'request' && !oldRequired.has(name) && nowRequired.has(name)) this.report('became-required', place, `${name} must be sent`);
      this.compare(old[name], now[name], place);
    }
    if (this.mode === 'request')
      for (const name of nowRequired) if (!(name in old)) this.report('required-parameter-added', `${at}/${name}`, `${name} is new and must be sent`);
  }
}

const parametersOf = (operation, resolve) =>
  new Map(
    (operation.parameters ?? [])
      .map(resolve)
      .map((one) => [one.in === 'path' ? 'path' : `${one.in}:${one.in === 'header' ? one.name.toLowerCase() : one.name}`, one]),
  );

function compareParameters(before, after, context) {
  const { at, report, request, resolveBefore, resolveAfter } = context;
  const [old, now] = [parametersOf(before, resolveBefore), parametersOf(after, resolveAfter)];
  for (const [key, parameter] of old) {
    if (key === 'path') continue;
    const other = now.get(key);
    if (!other) report('parameter-removed', `${at} ${key}`, `${parameter.name} is gone`);
    else {
      if (!parameter.required && other.required) report('became-required', `${at} ${key}`, `${parameter.name} must be sent`);
      request.compare(parameter.schema ?? {}, other.schema ?? {}, `${at} ${key}`);
    }
  }
  for (const [key, parameter] of now)
    if (key !== 'path' && !old.has(key) && parameter.required) report('required-parameter-added', `${at} ${key}`, `${parameter.name} is new and must be sent`);
}

function compareBodies(before, after, { at, report, request }) {
  const [old, now] = [before.requestBody, after.requestBody];
  if (!old && now?.required) return report('required-parameter-added', `${at} body`, 'a body must be sent');
  if (old && !now) return report('parameter-removed', `${at} body`, 'no body is taken');
  if (old && !old.required && now.required) report('became-required', `${at} body`, 'the body must be sent');
  for (const [type, media] of Object.entries(old?.content ?? {})) {
    if (now.content[type]) request.compare(media.schema ?? {}, now.content[type].schema ?? {}, `${at} body`);
    else report('type-changed', `${at} body`, `${type} is no longer taken`);
  }
}

function compareAnswers(before, after, { at, report, answer, resolveBefore, resolveAfter }) {
  for (const [status, raw] of Object.entries(before.responses)) {
    const old = resolveBefore(raw);
    const place = `${at} ${status}`;
    if (!after.responses[status]) {
      // A refusal that no longer happens breaks nobody.
      if (status.startsWith('2')) report('answer-field-removed', place, `${status} is no longer answered`);
      continue;
    }
    const now = resolveAfter(after.responses[status]);
    for (const name of Object.keys(old.headers ?? {})) if (!now.headers?.[name]) report('answer-field-removed', `${place} header:${name}`, `${name} is gone`);
    for (const [type, media] of Object.entries(old.content ?? {})) {
      if (now.content?.[type]) answer.compare(media.schema ?? {}, now.content[type].schema ?? {}, place);
      else report('type-changed', place, `${type} is no longer answered`);
    }
  }
}

const alternativesOf = (operation) => {
  const all = operation.security ?? [];
  return all.length === 0 ? [[]] : all.map((one) => Object.keys(one));
};

/** Each old way in must still be one; more ways are welcome. A scope that has another name shuts out the keys that have the old. */
function compareAccess(before, after, { at, report }) {
  const now = alternativesOf(after);
  for (const way of alternativesOf(before))
    if (!now.some((other) => other.every((scheme) => way.includes(scheme))))
      report('access-changed', at, `${way.join(' with ') || 'no credentials'} no longer open it`);
  if (before['x-scope'] && after['x-scope'] && before['x-scope'] !== after['x-scope'])
    report('access-changed', at, `needs the scope ${after['x-scope']} instead of ${before['x-scope']}`);
}

/** @returns {{ kind: keyof typeof KINDS, at: string, detail: string }[]} every break, each once */
export function breaks(before, after) {
  const found = new Map();
  const report = (kind, at, detail, operation) => found.set(`${kind} ${at}`, { kind, at, detail, operation });
  const context = { report, resolveBefore: resolver(before), resolveAfter: resolver(after) };
  const operations = operationsOf(after);
  for (const [at, old] of operationsOf(before)) {
    const now = operations.get(at);
    if (!now) {
      report('operation-removed', at, `${old.operationId ?? at} is gone`, old);
      continue;
    }
    const here = {
      ...context,
      at,
      request: new SchemaComparison(before, after, 'request', report),
      answer: new SchemaComparison(before, after, 'answer', report),
    };
    for (const compare of [compareAccess, compareParameters, compareBodies, compareAnswers]) compare(old, now, here);
  }
  return [...found.values()];
}

const numbers = (version) => version.split('.').map(Number);
const isLater = (a, b) => {
  const [x, y] = [numbers(a), numbers(b)];
  const at = x.findIndex((one, i) => one !== y[i]);
  return at >= 0 && x[at] > y[at];
};

/** From 1.0.0 on only a new major version may break; before that a new minor version may, because 0.x promises nothing yet. */
export const mayBreak = (released, next) => {
  const [[major, minor], [nextMajor, nextMinor]] = [numbers(released), numbers(next)];
  return nextMajor > major || (major === 0 && nextMajor === 0 && nextMinor > minor);
};

/** The lines of the changes: version, kind, place and reason of each announced break. */
export const announced = (changes) => {
  let version = '';
  return changes.split('\n').flatMap((line) => {
    version = /^## (\d+\.\d+\.\d+)/.exec(line)?.[1] ?? version;
    const cells = /^\| `([a-z-]+)` \| `([^`]+)` \| (.+) \|$/.exec(line);
    return cells && cells[1] in KINDS ? [{ version, kind: cells[1], at: cells[2], reason: cells[3].trim() }] : [];
  });
};

const covers = (line, { kind, at }) => line.kind === kind && (line.at === at || (line.at.endsWith('*') && at.startsWith(line.at.slice(0, -1))));

export const NOTICE_DAYS = 180;
const DAY_MS = 86_400_000;

/**
 * Whether a removal kept its promise: the released document said so, at least half a year ago, and the day it named has
 * come. Then it breaks nobody who listened, and needs no new major version.
 */
export const wasAnnounced = (operation, today) => {
  const about = operation?.deprecated === true ? operation['x-deprecated'] : undefined;
  if (!about) return false;
  const [since, sunset] = [Date.parse(about.since), Date.parse(about.sunset)];
  return today.getTime() >= sunset && today.getTime() - since >= NOTICE_DAYS * DAY_MS;
};

/** What is wrong with publishing this document after that one; empty when nothing is. */
export function verdict(before, after, changes, today = new Date()) {
  const released = before.info.version;
  const now = after.info.version;
  const lines = announced(changes).filter(({ version }) => isLater(version, released));
  const found = breaks(before, after).filter(({ kind, operation }) => kind !== 'operation-removed' || !wasAnnounced(operation, today));
  const faults = found
    .filter((one) => !lines.some((line) => covers(line, one) && mayBreak(released, line.version) && !isLater(line.version, now)))
    .map(({ kind, at, detail }) => `${kind} ${at}: ${detail}`);
  if (found.length > 0 && !mayBreak(released, now)) faults.unshift(`version ${now} may not break what ${released} promised`);
  const idle = lines
    .filter((line) => !found.some((one) => covers(line, one)))
    .map(({ kind, at }) => `docs/api/changes.md announces ${kind} ${at}, which is no break`);
  return [...faults, ...idle];
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const [now = 'docs/api/openapi.json', released = 'docs/api/released/v1.json', changes = 'docs/api/changes.md'] = process.argv.slice(2);
  const read = (path) => JSON.parse(readFileSync(path, 'utf8'));
  const faults = verdict(read(released), read(now), readFileSync(changes, 'utf8'));
  for (const fault of faults) console.log(fault);
  console.log(faults.length === 0 ? 'nothing breaks that is not announced' : `${faults.length} faults`);
  process.exitCode = faults.length === 0 ? 0 : 1;
}
