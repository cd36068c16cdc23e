// Imports point inwards: everything → tables → core. Core knows no host, no table and no page.
const layers = {
  core: [],
  tables: ['core'],
  workbook: ['tables', 'core'],
  functions: ['search', 'tables', 'core'],
  workings: ['functions', 'tables', 'core'],
  search: ['core'],
  drawing: ['tables', 'core'],
  exchange: ['drawing', 'workbook', 'tables', 'core'],
  host: ['workbook', 'tables', 'core'],
  taskpane: ['workings', 'functions', 'host', 'drawing', 'exchange', 'workbook', 'search', 'tables', 'core'],
  embedded: ['taskpane', 'host', 'exchange', 'workbook', 'search', 'tables', 'core'],
  office: ['taskpane', 'host', 'exchange', 'workbook', 'search', 'tables', 'core'],
  help: ['cli', 'workings', 'functions', 'workbook', 'tables', 'core'],
  cli: ['embedded', 'exchange', 'workbook', 'functions', 'tables', 'core'],
};

module.exports = {
  forbidden: [
    { name: 'no-circular', severity: 'error', from: {}, to: { circular: true } },
    {
      name: 'no-orphan-import',
      comment: 'An import that resolves to nothing.',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true },
    },
    {
      name: 'source-needs-no-tests',
      severity: 'error',
      from: { path: '^src' },
      to: { path: '^(tests|\\.ci)' },
    },
    ...Object.entries(layers).map(([layer, inner]) => ({
      name: `inwards-from-${layer}`,
      severity: 'error',
      from: { path: `^src/${layer}/` },
      to: { path: '^src/', pathNot: [layer, ...inner].map((name) => `^src/${name}/`) },
    })),
    {
      name: 'core-is-pure',
      comment: 'Core imports nothing but itself and the polygon library.',
      severity: 'error',
      from: { path: '^src/core/' },
      to: { pathNot: ['^src/core/', 'clipper2-ts'] },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'require', 'default', 'types'] },
  },
};
