import { fileURLToPath } from 'node:url';
import { build, type Plugin } from 'esbuild';
import globals from '../../src/embedded/globals.json';

/** Lets a bundle take its libraries from where the page has them, as the page's own build does. */
const librariesOfThePage: Plugin = {
  name: 'libraries-of-the-page',
  setup(bundle) {
    bundle.onResolve({ filter: /.*/ }, ({ path }) =>
      Object.hasOwn(globals, path) ? { path, namespace: 'global' } : undefined,
    );
    bundle.onLoad({ filter: /.*/, namespace: 'global' }, ({ path }) => {
      const steps = [Reflect.get(globals, path)].flat().map((step) => `[${JSON.stringify(step)}]`);
      return { contents: `module.exports = globalThis${steps.join('')}` };
    });
  },
};

/** A script of tests/browser, or beside it, as a bundle for a page. */
export async function bundled(file: string): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [fileURLToPath(new URL(file, import.meta.url))],
    bundle: true,
    write: false,
    format: 'iife',
    target: 'es2022',
    plugins: [librariesOfThePage],
  });
  return outputFiles[0]?.text ?? '';
}
