import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';
import { CALLER, clipperInUse } from './clipper-in-use.js';

const root = fileURLToPath(new URL('../', import.meta.url));
let texts;

/** For webpack: a file of the polygon library as far as it is in use. */
export default function clipperLoader(whole) {
  this.addDependency(root + CALLER);
  texts ??= clipperInUse(root);
  return texts.get(basename(this.resourcePath)) ?? whole;
}
