// The dependency rule of the house: units <- model <- formats, calc, drawing <- apps. The gate; Nx tags are the second lock.
const NODE_CORE = ['core'];
const lib = (name) => `^libs/${name}/`;
const not = (...allowed) => `^libs/(?!(${allowed.join('|')})/)|^apps/`;

/** @type {import('dependency-cruiser').IConfiguration} */
export default {
  forbidden: [
    {
      name: 'units-depends-on-nothing',
      severity: 'error',
      comment: 'units is the bottom of the house',
      from: { path: lib('units') },
      to: { path: not('units') },
    },
    {
      name: 'model-depends-on-units',
      severity: 'error',
      comment: 'model holds nouns; only units lies under it',
      from: { path: lib('model') },
      to: { path: not('model', 'units') },
    },
    { name: 'formats-depends-on-model', severity: 'error', from: { path: lib('formats') }, to: { path: not('formats', 'model', 'units') } },
    { name: 'calc-depends-on-model', severity: 'error', from: { path: lib('calc') }, to: { path: not('calc', 'model', 'units') } },
    { name: 'drawing-depends-on-model', severity: 'error', from: { path: lib('drawing') }, to: { path: not('drawing', 'model', 'units') } },
    {
      name: 'client-depends-on-nothing-of-ours',
      severity: 'error',
      comment: 'the client knows the API by its document alone, as any program of a stranger does',
      from: { path: lib('client') },
      to: { path: not('client') },
    },
    {
      name: 'the-house-does-not-call-itself',
      severity: 'error',
      comment: 'the client is for those outside: tools, tests and examples',
      from: { path: '^apps/|^libs/(?!client/)' },
      to: { path: lib('client') },
    },
    {
      name: 'apps-do-not-meet',
      severity: 'error',
      comment: 'api and report speak over HTTP only',
      from: { path: '^apps/([^/]+)/' },
      to: { path: '^apps/', pathNot: '^apps/$1/' },
    },
    {
      name: 'report-computes-nothing',
      severity: 'error',
      comment: 'the report app sets type; it never calculates a plan',
      from: { path: '^apps/report/' },
      to: { path: '^libs/(calc|formats)/' },
    },
    { name: 'libs-know-no-app', severity: 'error', from: { path: '^libs/' }, to: { path: '^apps/|^tests/|^tools/' } },
    {
      name: 'pure-libs-touch-no-machine',
      severity: 'error',
      comment: 'no Node core module in a pure library',
      from: { path: '^libs/' },
      to: { dependencyTypes: NODE_CORE },
    },
    {
      name: 'rooms-do-not-meet',
      severity: 'error',
      comment: 'a room is imported by the chain and by no other room; files of one room share its name as a prefix',
      from: { path: '^libs/calc/src/rooms/([a-z]+)[^/]*\\.ts$' },
      to: { path: '^libs/calc/src/rooms/', pathNot: '^libs/calc/src/rooms/($1[^/]*|room)\\.ts$' },
    },
    {
      name: 'only-the-chain-knows-the-order',
      severity: 'error',
      from: { path: '^libs/calc/src/', pathNot: '^libs/calc/src/(chain/|index\\.ts$)' },
      to: { path: '^libs/calc/src/chain/' },
    },
    {
      name: 'physics-lies-under-rooms',
      severity: 'error',
      from: { path: '^libs/calc/src/(physics|data|sources)/' },
      to: { path: '^libs/calc/src/(rooms|chain)/' },
    },
    {
      name: 'prisma-in-repositories-only',
      severity: 'error',
      comment: 'a repository is the only file of a domain that sees Prisma',
      from: { path: '^apps/api/src/domains/', pathNot: '\\.repository\\.ts$' },
      to: { path: '@prisma/client|platform/database/generated' },
    },
    {
      name: 'domains-meet-through-the-read-door',
      severity: 'error',
      comment: 'another domain is asked through its read.ts (or imported as a module), never through its service or repository',
      from: { path: '^apps/api/src/domains/([^/]+)/' },
      to: { path: '^apps/api/src/domains/[^/]+/[^/]+\\.(service|repository|controller)\\.ts$', pathNot: '^apps/api/src/domains/$1/' },
    },
    { name: 'controllers-ask-services', severity: 'error', from: { path: '\\.controller\\.ts$' }, to: { path: '\\.repository\\.ts$' } },
    { name: 'platform-knows-no-domain', severity: 'error', from: { path: '^apps/api/src/platform/' }, to: { path: '^apps/api/src/domains/' } },
    { name: 'report-has-no-database', severity: 'error', from: { path: '^apps/report/' }, to: { path: 'node_modules/(pg|@prisma|graphile-worker)/' } },
    { name: 'no-circles', severity: 'error', from: { path: '^(apps|libs)/' }, to: { circular: true } },
    {
      name: 'by-the-door',
      severity: 'error',
      comment: 'a library is entered by its index',
      from: { path: '^(apps|libs)/([^/]+)/' },
      to: { path: '^libs/[^/]+/src/(?!index\\.ts$)', pathNot: '^libs/$2/' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '(^|/)(dist|generated)/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.rules.json' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'types', 'default'], extensions: ['.ts', '.tsx', '.mjs', '.js', '.json'] },
  },
};
