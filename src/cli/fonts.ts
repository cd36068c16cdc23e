import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { PdfFonts } from '../exchange/pdf';

/** The fonts that documents are lettered in, from their package. */
export function packagedFonts(): PdfFonts {
  const read = (name: string) => readFileSync(fileURLToPath(import.meta.resolve(`@expo-google-fonts/arimo/${name}`)));
  return { regular: read('400Regular/Arimo_400Regular.ttf'), semibold: read('600SemiBold/Arimo_600SemiBold.ttf') };
}
