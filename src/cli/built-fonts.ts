import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { PdfFonts } from '../exchange/pdf';

/** The fonts of documents as the build has put them beside its files. */
export function builtFonts(folder: string): PdfFonts {
  const read = (name: string) => readFileSync(join(folder, 'fonts', `${name}.ttf`));
  return { regular: read('regular'), semibold: read('semibold') };
}
