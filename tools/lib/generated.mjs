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

/** Path (from the project's root) to text, for each generated file. */
export const generatedFiles = () => ({
  'docs/api/plan-inputs.schema.json': schemaText(PlanInputsSchema),
  'docs/api/plan-result.schema.json': schemaText(PlanResultSchema),
  'docs/api/document-request.schema.json': schemaText(DocumentRequestSchema),
  'docs/sources.md': sourcesText(allSources()),
});
