import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import CopyPlugin from 'copy-webpack-plugin';
import CustomFunctionsMetadataPlugin from 'custom-functions-metadata-plugin';
import TerserPlugin from 'terser-webpack-plugin';
import { tsImport } from 'tsx/esm/api';
import webpack from 'webpack';
import { associatesCarefully } from './.ci/associates-carefully.js';
import { thirdPartyNotices } from './.ci/third-party-notices.js';
import { shortWords, withoutSetFields } from './.ci/short-words.js';
import { buildVersion, keepsVersion } from './.ci/versions.js';
import { withoutLooks } from './.ci/without-looks.js';

const path = (relative) => fileURLToPath(new URL(relative, import.meta.url));

/** The files that define custom functions; functions.json is made from their docstrings. */
const functionFiles = [
  'bench',
  'bends',
  'buy',
  'heights',
  'lasts',
  'layout-search',
  'outlines',
  'plan',
  'sheets',
  'sizes',
  'skives',
].map((name) => `./src/functions/${name}.ts`);

/** Ids of a file's functions that take the invocation, as their docstrings say. */
function invoked(file) {
  const docstrings = readFileSync(path(file), 'utf8').match(/\/\*\*(?:(?!\*\/)[^])*\*\//g) ?? [];
  const taking = docstrings.filter((text) => /@param \{CustomFunctions\.\w*Invocation\}/.test(text));
  return taking.flatMap((text) => /@customfunction (\w+)/.exec(text)?.[1] ?? []);
}

/** The address that the manifest has before the build: of `npm run serve:office`. */
const localAddress = 'https://localhost:3443/';
/** Where the built files are served from; SOLEBENCH_ADDRESS names it for any other place than this machine. */
const address = servedFrom(process.env.SOLEBENCH_ADDRESS || localAddress);

function servedFrom(given) {
  const url = URL.canParse(given) ? new URL(given) : undefined;
  if (url?.protocol !== 'https:' || url.search || url.hash) {
    throw new Error(
      `SOLEBENCH_ADDRESS is "${given}". Give the address of the folder that serves the files, such as https://example.org/solebench/.`,
    );
  }
  return url.href.endsWith('/') ? url.href : `${url.href}/`;
}

/** Four numbers, as the manifest has them. */
const version = /<Version>([\d.]+)<\/Version>/.exec(readFileSync(path('manifest.xml'), 'utf8'))[1];
/**
 * The list of functions under a name of its version: the suite keeps one that it has for a day and more, whatever the server
 * says (office-js 2777, 3316).
 */
const listOfFunctions = `functions-${version}.json`;

const typescript = (more = {}) => ({
  test: /\.tsx?$/,
  exclude: /node_modules/,
  // Types are checked by `npm run lint`, once for everything; here they would be checked again for each bundle.
  use: { loader: 'ts-loader', options: { transpileOnly: true, compilerOptions: { noEmit: false }, ...more } },
});

/** Of the polygon library, what the project comes to. */
const clipper = { test: /clipper2-ts[\\/]dist[\\/]\w+\.js$/, use: path('.ci/clipper-loader.js') };

const quickly = (more = {}) =>
  new TerserPlugin({ minify: TerserPlugin.esbuildMinify, extractComments: false, ...more });

/** The suite waits for some files in every workbook: for them the slower minifier is worth its time. */
const minimizers = (awaited, more = {}) => [
  new TerserPlugin({
    include: awaited,
    extractComments: false,
    terserOptions: { ecma: 2020, compress: { passes: 3, ...more } },
  }),
  quickly({ exclude: awaited }),
];

/** Of the calculation: to read a property only to drop it does nothing, and of what is called with `new` all are classes. */
const CALCULATES = { pure_getters: true, unsafe_arrows: true };

const common = (name) => ({
  name,
  output: { path: path('dist'), filename: '[name].js', clean: false },
  resolve: { extensions: ['.ts', '.tsx', '.js'] },
  module: { rules: [typescript(), clipper] },
  devtool: false,
  performance: { hints: false },
  stats: 'errors-warnings',
  optimization: { minimizer: [quickly()] },
  // By its own name, not by its place among those that are built: some of them are built again for another address.
  cache: { type: 'filesystem', name, cacheDirectory: path('.cache/webpack'), version: buildVersion(path('./')) },
});

/** For every bundle that has the calculation in it. */
const calculation = [
  // Bundles of one build share in a page what they keep between plans, and know each other by this.
  new webpack.DefinePlugin({ SOLEBENCH_KEEPS: JSON.stringify(keepsVersion(path('./'))) }),
];

/**
 * functions.js loads in any script context that has a global CustomFunctions: one classic script, no import(), no chunks.
 */
const functions = {
  ...common('functions'),
  target: ['web', 'es2022'],
  entry: { functions: './src/functions/index.ts' },
  module: {
    rules: [
      typescript({
        instance: 'functions',
        getCustomTransformers: () => ({
          before: [withoutLooks, associatesCarefully, shortWords],
          after: [withoutSetFields],
        }),
      }),
      clipper,
    ],
  },
  optimization: { minimizer: minimizers(/^functions\.js$/, CALCULATES) },
  plugins: [
    ...calculation,
    new webpack.DefinePlugin({ SOLEBENCH_INVOKED: JSON.stringify(functionFiles.flatMap(invoked)) }),
    new CustomFunctionsMetadataPlugin({ output: 'functions.json', input: functionFiles }),
    {
      apply: (compiler) =>
        compiler.hooks.thisCompilation.tap('FunctionHelp', (compilation) => {
          const { PROCESS_ASSETS_STAGE_ADDITIONS: stage } = webpack.Compilation;
          compilation.hooks.processAssets.tapPromise({ name: 'FunctionHelp', stage }, () =>
            describeFunctions(compilation),
          );
        }),
    },
  ],
};

/** Completes functions.json by what docstrings cannot say, and writes the help from it. */
async function describeFunctions(compilation) {
  const asset = compilation.getAsset('functions.json');
  if (!asset) return; // Its plugin has reported why there is none.
  const [office, runs] = ['office', 'runs'].map((name) => readFileSync(path(`src/help/${name}.md`), 'utf8'));
  compilation.contextDependencies.add(path('src/help'));
  const { functions, ...rest } = JSON.parse(asset.source.source());
  const { planParameters, tableInWords } = await tsImport('./src/tables/input-tables.ts', import.meta.url);
  // Docstrings leave out what src/tables says of the tables that many functions take; `tables` stands for all of a plan.
  const filled = functions.map((one) => ({
    ...one,
    parameters: one.parameters.flatMap((each) =>
      each.name === 'tables' ? planParameters() : [{ description: tableInWords(each.name), ...each }],
    ),
  }));
  // Where their tables stand is handed over to functions that plan, so that their sentences name cells; calls of them may be
  // dropped while they are worked on.
  for (const one of filled) {
    const plans = one.id !== 'LAYOUTSEARCH' && (one.parameters[0]?.name === 'pairage' || one.id === 'TICKET');
    if (plans) one.options = { ...one.options, cancelable: true, requiresParameterAddresses: true };
  }
  const described = filled.map((one) => ({ ...one, helpUrl: `${address}help/${one.id.toLowerCase()}.html` }));
  // A cell that shows an error is told of by its place, and spoils no table that does not read it.
  const metadata = JSON.stringify({ ...rest, allowErrorForDataTypeAny: true, functions: described }, null, 2);
  compilation.updateAsset('functions.json', new webpack.sources.RawSource(metadata));
  compilation.emitAsset(listOfFunctions, new webpack.sources.RawSource(metadata));
  const { helpSite } = await tsImport('./src/help/site.ts', import.meta.url);
  for (const [name, html] of helpSite({ ...rest, functions: filled }, { office, runs })) {
    compilation.emitAsset(`help/${name}`, new webpack.sources.RawSource(html));
  }
}

/**
 * The grid comes as its makers built it: their files, joined end to end in the order in which they need each other.
 * Only its renderer is built here, because the makers' file has hyphenation dictionaries of forty languages in it.
 */
const grid = {
  'grid-engine.js': [
    '@wendellhu/redi/dist/umd/index.js',
    '@wendellhu/redi/dist/umd/react-bindings/index.js',
    '@univerjs/themes/lib/umd/index.js',
    '@univerjs/protocol/lib/umd/index.js',
    '@univerjs/core/lib/umd/index.js',
    '@univerjs/core/lib/umd/facade.js',
    '@univerjs/rpc/lib/umd/index.js',
    '@univerjs/engine-formula/lib/umd/index.js',
    '@univerjs/engine-formula/lib/umd/facade.js',
  ],
  'grid-sheets.js': [
    '@univerjs/telemetry/lib/umd/index.js',
    '@univerjs/drawing/lib/umd/index.js',
    '@univerjs/network/lib/umd/index.js',
    '@univerjs/network/lib/umd/facade.js',
    '@univerjs/preset-sheets-core/lib/umd/index.js',
    '@univerjs/preset-sheets-core/lib/umd/locales/en-US.js',
    '@univerjs/preset-sheets-data-validation/lib/umd/index.js',
    '@univerjs/preset-sheets-data-validation/lib/umd/locales/en-US.js',
  ],
  'grid.css': ['@univerjs/preset-sheets-core/lib/index.css', '@univerjs/preset-sheets-data-validation/lib/index.css'],
};

const newline = Buffer.from('\n');
const joined = Object.entries(grid).map(([to, names]) => ({
  from: `{${names.join(',')}}`,
  context: path('node_modules'),
  to,
  info: { minimized: true },
  transformAll: (files) =>
    Buffer.concat(
      names.flatMap((name) => [files.find(({ sourceFilename }) => sourceFilename.endsWith(name)).data, newline]),
    ),
}));

/** The globals by which the grid's parts know each other and the libraries they share. */
const globals = JSON.parse(readFileSync(path('src/embedded/globals.json'), 'utf8'));

/** The libraries that the grid shares with the page, as globals; nothing else may come from outside. */
const libraries = {
  ...common('libraries'),
  target: ['web', 'es2022'],
  entry: { libraries: './src/embedded/libraries.ts' },
};

const renderer = {
  ...common('renderer'),
  target: ['web', 'es2022'],
  entry: { 'grid-renderer': path('node_modules/@univerjs/engine-render/lib/es/index.js') },
  output: { ...common('renderer').output, library: { name: 'UniverEngineRender', type: 'var' } },
  externals: globals,
  plugins: [
    // Hyphenation serves text documents only; a sheet never asks for a dictionary.
    new webpack.NormalModuleReplacementPlugin(/^\.\/[a-z]{2,3}-.*\.js$/, 'data:text/javascript,'),
    new webpack.optimize.LimitChunkCountPlugin({ maxChunks: 1 }),
  ],
};

/** The long cutting search in a worker, beside functions.js. */
const search = {
  ...common('search'),
  target: ['webworker', 'es2022'],
  entry: { search: './src/workers/worker.ts' },
  plugins: [
    ...calculation,
    // Solves what to buy: the search's worker loads it when first asked for.
    new CopyPlugin({
      patterns: ['highs.js', 'highs.wasm'].map((name) => ({
        from: path(`node_modules/highs/build/${name}`),
        info: { minimized: true },
      })),
    }),
  ],
};

/** What the grid's core calls kinds of things, without the core itself, which a worker that reads files has no use for. */
function kindsOfTheGrid() {
  const isKinds = (value) => typeof value === 'object' && value !== null && Object.values(value).every(isPlain);
  const isPlain = (value) => typeof value === 'number' || typeof value === 'string';
  const core = createRequire(import.meta.url)('@univerjs/core');
  const kinds = Object.entries(core).filter(([, value]) => isKinds(value));
  const lines = kinds.map(([name, value]) => `export const ${name} = ${JSON.stringify(value)};`);
  return `data:text/javascript,${encodeURIComponent(lines.join('\n'))}`;
}

/** Reading workbook files in a worker beside the page. */
const readFile = {
  ...common('read-file'),
  target: ['webworker', 'es2022'],
  entry: { 'read-file': './src/embedded/read-file.ts' },
  module: { ...common('read-file').module, parser: { javascript: { exportsPresence: 'error' } } },
  plugins: [new webpack.NormalModuleReplacementPlugin(/^@univerjs\/core$/, kindsOfTheGrid())],
};

/** What documents are lettered in; loaded when one is made. */
const fonts = {
  'fonts/regular.ttf': '400Regular/Arimo_400Regular.ttf',
  'fonts/semibold.ttf': '600SemiBold/Arimo_600SemiBold.ttf',
};

/** The embedded default: the page, its stand-in for the office suite's runtime, and the grid. */
const page = {
  ...common('page'),
  target: ['web', 'es2022'],
  entry: {
    ...Object.fromEntries(['loading', 'runtime', 'page'].map((name) => [name, `./src/embedded/${name}.ts`])),
    'help/find': './src/help/find.ts',
    'help/ticked': './src/help/ticked.ts',
  },
  // The pane is one file, loaded while the sheet is laid out.
  optimization: { ...common('page').optimization, splitChunks: false },
  externals: globals,
  plugins: [
    ...calculation,
    new CopyPlugin({
      patterns: [
        ...joined,
        { from: 'src/{embedded,drawing,taskpane}/*.{html,css,svg}', to: '[name][ext]' },
        { from: 'src/help/help.css', to: 'help/[name][ext]' },
        ...Object.entries(fonts).map(([to, from]) => ({
          from: path(`node_modules/@expo-google-fonts/arimo/${from}`),
          to,
        })),
        {
          from: 'package-lock.json',
          to: 'third-party-notices.txt',
          info: { minimized: true },
          transform: () => thirdPartyNotices(path('./')),
        },
      ],
    }),
  ],
};

/** What the command line runs: our own files in one; the grid comes from its packages, of which Node needs the older form. */
const command = {
  ...common('command'),
  target: 'node20',
  entry: { recompute: './src/cli/recompute.ts', tables: './src/cli/write-tables.ts' },
  output: { path: path('dist'), filename: '[name].cjs', clean: false },
  node: { __dirname: false },
  externals: ({ request }, done) =>
    /^(@univerjs\/|@wendellhu\/|rxjs|pdfkit)/.test(request) ? done(null, `commonjs ${request}`) : done(),
  plugins: calculation,
};

/** The calculation for programs of others, as one module without anything from outside. */
const library = {
  ...common('library'),
  target: ['web', 'node', 'es2022'],
  entry: { 'library/index': './src/library/index.ts' },
  experiments: { outputModule: true },
  output: { path: path('dist'), filename: '[name].js', clean: false, library: { type: 'module' } },
  plugins: calculation,
};

/** What the office suite loads besides the functions. */
const office = {
  ...common('office'),
  output: { ...common('office').output, chunkFilename: '[name]-of-office.js' },
  optimization: { minimizer: minimizers(/^taskpane\.js$/) },
  target: ['web', 'es2022'],
  entry: { taskpane: './src/office/taskpane.ts' },
  plugins: [
    ...calculation,
    new CopyPlugin({
      patterns: [
        { from: 'src/office/{taskpane.html,office.css,icons/*.png}', to: '[name][ext]' },
        {
          from: 'manifest.xml',
          transform: (content) =>
            content
              .toString()
              .replace(/<!--.*?-->\s*/s, '')
              .replace('functions.json', listOfFunctions)
              .replaceAll(localAddress, address),
        },
      ],
    }),
  ],
};

export default [functions, search, readFile, libraries, renderer, page, office, command, library];
