// Judges every regular expression of the product: those written in apps and libs, those built there from texts, and the
// patterns of an API document (named as argument). Prints one JSON list: where it stands, the expression, and the verdict.
import { existsSync, mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, relative } from 'node:path';
import { checkSync } from 'recheck';
import ts from 'typescript';

const root = join(import.meta.dirname, '..', '..');
const SKIPPED = new Set(['node_modules', 'dist', 'generated']);

const filesIn = (folder) =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return SKIPPED.has(entry.name) ? [] : filesIn(path);
    return /\.tsx?$/.test(entry.name) ? [path] : [];
  });

/** The regular expressions written in one file, and those built with `new RegExp` from a text that stands there whole. */
const expressionsIn = (path) => {
  const text = readFileSync(path, 'utf8');
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true, path.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS);
  const found = [];
  const at = (node) => `${relative(root, path)}:${source.getLineAndCharacterOfPosition(node.getStart()).line + 1}`;
  const visit = (node) => {
    if (ts.isRegularExpressionLiteral(node)) {
      const end = node.text.lastIndexOf('/');
      found.push({ at: at(node), source: node.text.slice(1, end), flags: node.text.slice(end + 1) });
    }
    if (ts.isNewExpression(node) && node.expression.getText() === 'RegExp') {
      const [pattern, flags] = node.arguments ?? [];
      if (pattern && ts.isStringLiteralLike(pattern))
        found.push({ at: at(node), source: pattern.text, flags: flags && ts.isStringLiteralLike(flags) ? flags.text : '' });
      else found.push({ at: at(node), source: null, flags: '', built: pattern?.getText() ?? '' });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
};

const patternsIn = (value, at = '#') => {
  if (typeof value !== 'object' || value === null) return [];
  const own = typeof value.pattern === 'string' ? [{ at: `${at}/pattern`, source: value.pattern, flags: 'u' }] : [];
  const keys =
    typeof value.patternProperties === 'object'
      ? Object.keys(value.patternProperties).map((source) => ({ at: `${at}/patternProperties`, source, flags: 'u' }))
      : [];
  return [...own, ...keys, ...Object.entries(value).flatMap(([key, one]) => patternsIn(one, `${at}/${key}`))];
};

/** The expressions that the server builds from its own addresses. */
const addressesIn = ({ paths }) =>
  Object.keys(paths).map((path) => ({ at: path, source: `^${path.replaceAll('.', '\\.').replaceAll(/\{\w+\}/g, '[^/]+')}/?$`, flags: '' }));

// Judging takes a second and more for some; what was judged safe by this version of the judge stays so.
const { version } = createRequire(import.meta.url)('recheck/package.json');
const cache = join(root, '.data', `judged-expressions-${version}.json`);
const judged = new Map(existsSync(cache) ? JSON.parse(readFileSync(cache, 'utf8')) : []);
/** A sticky search begins at one place only, as with a ^ in front. */
const judge = ({ source, flags }) => {
  const [text, plainFlags] = [flags.includes('y') ? `^(?:${source})` : source, flags.replaceAll(/[yd]/g, '')];
  const key = `/${text}/${plainFlags}`;
  if (!judged.has(key)) {
    const { status, complexity, error } = checkSync(text, plainFlags, { timeout: 20_000 });
    judged.set(key, { status, complexity: complexity?.summary ?? null, error: error?.kind ?? null });
  }
  return judged.get(key);
};

const [document, only] = process.argv.slice(2);
const folders = only === '--only' ? [] : ['apps/api/src', 'apps/report/src', ...readdirSync(join(root, 'libs')).map((lib) => `libs/${lib}/src`)];
const all = [
  ...folders.flatMap((folder) => filesIn(join(root, folder)).flatMap(expressionsIn)),
  ...(document ? [patternsIn, addressesIn].flatMap((read) => read(JSON.parse(readFileSync(document, 'utf8')))) : []),
];
process.stdout.write(JSON.stringify(all.map((one) => ({ ...one, ...(one.source === null ? { status: 'built' } : judge(one)) }))));
mkdirSync(join(root, '.data'), { recursive: true });
writeFileSync(cache, JSON.stringify([...judged].filter(([, { status }]) => status === 'safe')));
