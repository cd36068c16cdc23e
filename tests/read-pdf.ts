import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';
import { createCanvas } from '@napi-rs/canvas';
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A page of a document as an independent reader has it. */
export interface ReadPage {
  /** mm */
  readonly width: number;
  readonly height: number;
  /** What is written on it, each piece of lettering with the start of its base line, mm from the upper left corner. */
  readonly texts: readonly { readonly words: string; readonly x: number; readonly y: number }[];
  /** All letters in the order in which they are drawn, whatever they read as. */
  drawn(): Promise<string>;
  /** Draws it: RGBA, four bytes a pixel. */
  render(dpi: number): Promise<Raster>;
}

export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray;
  /** Pixels in a millimetre. */
  readonly perMm: number;
  png(): Buffer;
}

const MM_PER_POINT = 25.4 / 72;
const folder = pathToFileURL(createRequire(import.meta.url).resolve('pdfjs-dist/package.json'));

/** Reads a PDF by pdfjs. */
export async function readPdf(bytes: Uint8Array): Promise<readonly ReadPage[]> {
  const document = await getDocument({
    data: new Uint8Array(bytes),
    verbosity: 0,
    standardFontDataUrl: new URL('standard_fonts/', folder).href,
  }).promise;
  return Promise.all(
    Array.from({ length: document.numPages }, async (_, i): Promise<ReadPage> => {
      const page = await document.getPage(i + 1);
      const [, , right, top] = page.view as [number, number, number, number];
      const { items } = await page.getTextContent();
      return {
        width: right * MM_PER_POINT,
        height: top * MM_PER_POINT,
        texts: items.flatMap((item) => {
          if (!('str' in item) || item.str.trim() === '') return [];
          const [, , , , x, y] = item.transform as [number, number, number, number, number, number];
          return [{ words: item.str, x: x * MM_PER_POINT, y: (top - y) * MM_PER_POINT }];
        }),
        drawn: async () => {
          const { fnArray, argsArray } = await page.getOperatorList();
          const letters = fnArray.flatMap((fn, at) => (fn === OPS.showText ? (argsArray[at] as [unknown[]])[0] : []));
          return letters.map((glyph) => (glyph as { readonly unicode?: string }).unicode ?? '').join('');
        },
        render: async (dpi) => {
          const viewport = page.getViewport({ scale: dpi / 72 });
          const canvas = createCanvas(Math.round(viewport.width), Math.round(viewport.height));
          const context = canvas.getContext('2d');
          // The reader's types ask for a browser's canvas; this one draws alike.
          const target = { canvas, canvasContext: context, viewport } as unknown as Parameters<typeof page.render>[0];
          await page.render(target).promise;
          const { data, width, height } = context.getImageData(0, 0, canvas.width, canvas.height);
          return { data, width, height, perMm: dpi / 25.4, png: () => canvas.toBuffer('image/png') };
        },
      };
    }),
  );
}
