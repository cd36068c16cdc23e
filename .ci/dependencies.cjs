// Imports point inwards: everything → tables → core. Core knows no host, no table and no page.
const layers = {
  core: [],
  tables: ['core'],
  workbook: ['tables', 'core'],
  functions: ['workers', 'tables', 'core'],
  library: ['tables', 'core'],
  workings: ['functions', 'drawing', 'tables', 'core'],
  workers: ['core'],
  drawing: ['tables', 'core'],
  exchange: ['drawing', 'workbook', 'tables', 'core'],
  host: ['exchange', 'workbook', 'tables', 'core'],
  taskpane: ['workings', 'functions', 'host', 'drawing', 'exchange', 'workbook', 'workers', 'tables', 'core'],
  embedded: ['taskpane', 'host', 'exchange', 'workbook', 'workers', 'tables', 'core'],
  office: ['taskpane', 'host', 'exchange', 'workbook', 'workers', 'tables', 'core'],
  help: ['cli', 'workings', 'functions', 'workbook', 'tables', 'core'],
  cli: ['embedded', 'host', 'workers', 'exchange', 'workings', 'drawing', 'workbook', 'functions', 'tables', 'core'],
};

// Within core: what each room may look into besides itself; a room not named here may look into none.
const rooms = {
  numerics: [],
  geometry: ['numerics'],
  sizes: [],
  last: ['sizes', 'geometry', 'numerics'],
  'cutting/sheet': ['geometry', 'numerics'],
  'cutting/rows': ['cutting/sheet', 'geometry'],
  'cutting/pattern': ['cutting/rows', 'cutting/sheet', 'geometry', 'numerics'],
  'cutting/natural': ['cutting/rows', 'cutting/sheet', 'geometry'],
  'cutting/search': ['cutting/quick-layout.ts', 'cutting/natural', 'cutting/rows', 'cutting/sheet', 'geometry'],
  'cutting/buy': [
    'stock',
    'cutting/quick-layout.ts',
    'cutting/search',
    'cutting/pattern',
    'cutting/rows',
    'cutting/sheet',
    'geometry',
    'numerics',
  ],
  stock: ['cutting/sheet', 'geometry'],
  bottom: ['stock', 'last', 'cutting/sheet', 'geometry', 'numerics'],
  steps: ['bottom', 'stock', 'last', 'geometry'],
  'plan/bench-days': ['steps', 'bottom', 'last', 'plan/cost', 'plan/[^/]+.ts'],
  'plan/cost': ['steps', 'bottom', 'stock', 'geometry', 'plan/[^/]+.ts'],
  'plan/checks': ['steps', 'bottom', 'stock', 'last', 'cutting/sheet', 'plan/cost', 'plan/bench-days', 'plan/[^/]+.ts'],
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
    ...Object.entries(rooms).map(([room, inner]) => ({
      name: `inwards-in-core-from-${room.replace('/', '-')}`,
      severity: 'error',
      from: { path: `^src/core/${room}/` },
      // Files that stand in core itself, such as units, are for every room.
      to: {
        path: '^src/core/.+/',
        pathNot: [room, ...inner].map((name) => `^src/core/${name}${name.endsWith('.ts') ? '$' : '/'}`),
      },
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
