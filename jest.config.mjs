// Native ESM: run through `npm run jest`, which gives node the flag it needs. swc emits the decorator metadata Nest wants.
const swc = (tsx) => ({
  jsc: {
    target: 'es2023',
    parser: { syntax: 'typescript', decorators: true, tsx },
    transform: { legacyDecorator: true, decoratorMetadata: true, useDefineForClassFields: false, react: { runtime: 'automatic', importSource: 'preact' } },
  },
  module: { type: 'es6' },
});
export default {
  testEnvironment: 'node',
  roots: ['<rootDir>/tests'],
  globalSetup: '<rootDir>/tests/support/global-setup.mjs',
  globalTeardown: '<rootDir>/tests/support/global-teardown.mjs',
  testMatch: ['**/*.test.ts', '**/*.test.tsx'],
  extensionsToTreatAsEsm: ['.ts', '.tsx'],
  moduleNameMapper: {
    '^@lathwork/(units|model|formats|calc|drawing|client)$': '<rootDir>/libs/$1/src/index.ts',
    '^(\\.{1,2}/.*)\\.js$': ['$1', '$1.js'],
  },
  transform: { '^.+\\.tsx$': ['@swc/jest', swc(true)], '^.+\\.ts$': ['@swc/jest', swc(false)] },
  testTimeout: 60_000,
  cacheDirectory: '<rootDir>/.data/jest',
};
