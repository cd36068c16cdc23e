import { fileURLToPath } from 'node:url';
import CustomFunctionsMetadataPlugin from 'custom-functions-metadata-plugin';
import TerserPlugin from 'terser-webpack-plugin';

const path = (relative) => fileURLToPath(new URL(relative, import.meta.url));

/** The files that define custom functions; functions.json is made from their docstrings. */
const functionFiles = ['heights'].map((name) => `./src/functions/${name}.ts`);

const typescript = {
  test: /\.tsx?$/,
  exclude: /node_modules/,
  // Types are checked by `npm run lint`, once for everything; here they would be checked again for each bundle.
  use: { loader: 'ts-loader', options: { transpileOnly: true, compilerOptions: { noEmit: false } } },
};

const common = (name) => ({
  name,
  output: { path: path('dist'), filename: '[name].js', clean: false },
  resolve: { extensions: ['.ts', '.tsx', '.js'] },
  module: { rules: [typescript] },
  devtool: false,
  performance: { hints: false },
  stats: 'errors-warnings',
  optimization: { minimizer: [new TerserPlugin({ minify: TerserPlugin.esbuildMinify, extractComments: false })] },
  cache: { type: 'filesystem', cacheDirectory: path('.cache/webpack') },
});

/**
 * functions.js loads in any script context that has a global CustomFunctions: one classic script, no import(), no chunks.
 */
const functions = {
  ...common('functions'),
  target: ['web', 'es2022'],
  entry: { functions: './src/functions/index.ts' },
  plugins: [new CustomFunctionsMetadataPlugin({ output: 'functions.json', input: functionFiles })],
};

export default [functions];
