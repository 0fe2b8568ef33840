// Files that are written from code and compared by the tests: the JSON Schemas and the list of sources.
import { allSources } from '@lathwork/calc';
import { DocumentRequestSchema, PlanInputsSchema, PlanResultSchema } from '@lathwork/model';

const DIALECT = 'https://json-schema.org/draft/2020-12/schema';
const schemaText = (schema) => JSON.stringify({ $schema: DIALECT, ...schema }, null, 2) + '\n';
const cell = (s) => String(s ?? '').replaceAll('|', '\\|');

const sourcesText = (sources) => {
  const rows = sources.map(
    (s) => `| ${s.sourceId} | ${cell(s.title)} | ${cell(s.publisher)} | ${s.year ?? 'undated'} | ${s.quality} | ${cell(s.supersededBy)} |`,
  );
  const weak = sources.filter((s) => s.quality === 'memory' || s.quality === 'judgement');
  return [
    '# Sources',
    '',
    'Every figure in a formula names one of these. Written by `npm run schemas` from `libs/calc/src/sources/bibliography`.',
    '',
    '`published`: a text that prints it. `measured`: measured by somebody and published as data. `practice`: a fact of the trade. `judgement`: ours, and marked so on paper. `memory`: recalled and not opened; to be checked against the text.',
    '',
    '| id | title | publisher | year | quality | superseded by |',
    '| --- | --- | --- | --- | --- | --- |',
    ...rows,
    '',
    `${sources.length} sources; ${weak.length} of them are judgement or memory: ${weak.map((s) => s.sourceId).join(', ') || 'none'}.`,
    '',
  ].join('\n');
};

const configurationText = (variables) =>
  [
    '# Configuration of the API',
    '',
    'Everything the API is told from outside, read once at start from the environment. A fault ends the process with exit code 1, after all faults have been told. Written by `npm run schemas` from `apps/api/src/platform/config/config.ts`.',
    '',
    '| variable | default | meaning |',
    '| --- | --- | --- |',
    ...Object.entries(variables).map(
      ([name, { fallback, about }]) =>
        `| \`${name}\` | ${fallback === null ? '**required**' : fallback === '' ? '(empty)' : `\`${cell(fallback)}\``} | ${cell(about)} |`,
    ),
    '',
    'Several processes of one installation need the same `CURSOR_SECRET` and `ACCOUNT_SECRET`. In a container without a writable folder, set `SMTP_URL` or mount one and name it in `MAIL_DIR`. Behind a reverse proxy set `TRUSTED_PROXIES` and `PUBLIC_ORIGIN`.',
    '',
  ].join('\n');

const WORDS = { all: 'all', own: 'own', deny: '–' };

const rolesText = (pivot, roles) =>
  [
    '# Who may do what',
    '',
    'Role by operation. Written by `npm run schemas` from `apps/api/src/platform/access/pivot.ts`, which is the only place where it is said; `tests/security/roles.test.ts` calls every operation as every role.',
    '',
    '`all`: every row of the garden. `own`: rows of one’s own, and those that are shared or belong to the garden; a coordinator’s `own` on a change reaches shared ones too. `–`: refused. `key`: the scope that a key needs; `person`: never by a key. Nobody decides about money that they asked for, or reviews a plan that they asked for, whatever their roles.',
    '',
    `| operation | key | ${roles.join(' | ')} |`,
    `| --- | --- |${roles.map(() => ' --- |').join('')}`,
    ...Object.entries(pivot).map(([id, row]) =>
      ['public', 'operator', 'account', 'founder'].includes(row.access)
        ? `| ${id} | *${row.access}* |${roles.map(() => '  |').join('')}`
        : `| ${id} | ${row.access} | ${roles.map((role) => WORDS[row.roles[role]]).join(' | ')} |`,
    ),
    '',
    '*public*: anyone. *account*: a signed-in person, about themselves. *founder*: the operator, or a signed-in person.',
    '',
  ].join('\n');

/** Path (from the project's root) to text, for each generated file that needs the API's own code. */
export const apiFiles = ({ variables, pivot, roles }) => ({
  'docs/configuration.md': configurationText(variables),
  'docs/security/roles.md': rolesText(pivot, roles),
});

/** Path (from the project's root) to text, for each generated file. */
export const generatedFiles = () => ({
  'docs/api/plan-inputs.schema.json': schemaText(PlanInputsSchema),
  'docs/api/plan-result.schema.json': schemaText(PlanResultSchema),
  'docs/api/document-request.schema.json': schemaText(DocumentRequestSchema),
  'docs/sources.md': sourcesText(allSources()),
});
