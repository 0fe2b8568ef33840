import js from '@eslint/js';
import tseslint from 'typescript-eslint';

const PURE = ['libs/*/src/**/*.ts'];

export default tseslint.config(
  { ignores: ['**/dist/**', '**/generated/**', 'node_modules/**', '.nx/**', '.data/**', 'out/**'] },
  js.configs.recommended,
  ...tseslint.configs.recommended,
  {
    files: ['**/*.ts', '**/*.tsx'],
    rules: {
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/consistent-type-imports': 'off', // Nest reads constructor types at run time
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      'no-restricted-syntax': ['error', { selector: 'ExportDefaultDeclaration', message: 'No default exports: a thing has one name everywhere.' }],
      'no-console': 'error',
      eqeqeq: 'error',
    },
  },
  {
    // A calculation that reads the clock or rolls its own dice cannot be repeated.
    files: PURE,
    rules: {
      'no-restricted-properties': [
        'error',
        { object: 'Date', property: 'now', message: 'A pure library has no clock: take the day as an argument.' },
        { object: 'Math', property: 'random', message: 'A pure library has no dice: take a seed as an argument.' },
      ],
      'no-restricted-syntax': [
        'error',
        { selector: 'ExportDefaultDeclaration', message: 'No default exports: a thing has one name everywhere.' },
        { selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: 'A pure library has no clock: take the day as an argument.' },
      ],
      'no-restricted-imports': ['error', { patterns: [{ group: ['node:*', 'fs', 'path', 'os', 'crypto'], message: 'A pure library touches no machine.' }] }],
    },
  },
  {
    files: ['libs/**/src/**/*.ts', 'apps/**/src/**/*.{ts,tsx}'],
    rules: {
      'max-lines-per-function': ['error', { max: 60, skipBlankLines: true, skipComments: true }],
      'max-params': ['error', { max: 6 }],
    },
  },
  { files: ['libs/**/src/**/*.ts'], rules: { 'max-lines': ['error', { max: 400, skipBlankLines: true, skipComments: true }] } },
  { files: ['apps/**/src/**/*.{ts,tsx}'], rules: { 'max-lines': ['error', { max: 300, skipBlankLines: true, skipComments: true }] } },
  {
    files: ['apps/**/src/**/*.ts'],
    rules: {
      'no-restricted-properties': ['error', { object: 'process', property: 'env', message: 'Configuration is parsed once, in the config file of the app.' }],
    },
  },
  { files: ['apps/**/config.ts', 'apps/**/config/*.ts'], rules: { 'no-restricted-properties': 'off' } },
  {
    files: ['tools/**/*.mjs', '*.mjs', 'tests/**/*.mjs', 'docs/**/*.mjs', 'prisma.config.ts', 'tools/**/*.ts'],
    languageOptions: {
      globals: Object.fromEntries(
        [
          'console',
          'process',
          'URL',
          'fetch',
          'setTimeout',
          'clearTimeout',
          'setInterval',
          'clearInterval',
          'Buffer',
          'AbortSignal',
          'AbortController',
          'performance',
          'crypto',
          'structuredClone',
          'TextDecoder',
          'WebAssembly',
          'Response',
        ].map((g) => [g, 'readonly']),
      ),
    },
    rules: { 'no-console': 'off', 'no-restricted-syntax': 'off' },
  },
  { files: ['tests/**/*.ts', 'tests/**/*.tsx'], rules: { 'no-restricted-properties': 'off', 'no-console': 'off' } },
);
