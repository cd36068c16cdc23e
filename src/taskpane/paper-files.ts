import { strToU8, zipSync } from 'fflate';
import type { PaperJob } from '../drawing/paper/chosen';
import { layoutFiles } from '../drawing/paper/cutting-pages';
import type { Page } from '../drawing/paper/page';
import { type FileDrawing, pieceFiles } from '../drawing/paper/piece-files';
import { writeDxf } from '../exchange/dxf';
import { type Pdf, type PdfFonts, writePdf } from '../exchange/pdf';
import { FileNames } from '../exchange/plain-words';
import { writeSvg } from '../exchange/svg';

/** What writes files: loaded when one is made, and not before. */

let fonts: Promise<PdfFonts> | undefined;

async function loaded(): Promise<PdfFonts> {
  const file = async (name: string) => {
    const response = await fetch(`fonts/${name}.ttf`);
    if (!response.ok)
      throw new Error(`The lettering for documents did not load (${response.status}); load the page again`);
    return new Uint8Array(await response.arrayBuffer());
  };
  const [regular, semibold] = await Promise.all([file('regular'), file('semibold')]);
  return { regular, semibold };
}

/** One PDF of some pages. */
export async function pdfOf(
  pages: readonly Page[],
  title: string,
  date: Date,
  between: (done: number) => Promise<void>,
): Promise<Pdf> {
  fonts ??= loaded().catch((error: unknown) => {
    fonts = undefined;
    throw error;
  });
  return writePdf(pages, { title, date }, await fonts, between);
}

/** Pieces and layouts as SVG and DXF, one of each a piece or sheet, in one archive. */
export async function drawingsOf(job: PaperJob, between: (done: string) => Promise<void>): Promise<Uint8Array> {
  const content: Record<string, Uint8Array> = {};
  for (const [folder, parts] of [
    ['pieces', pieceFiles(job)],
    ['layouts', layoutFiles(job)],
  ] as const) {
    let files: readonly FileDrawing[] | undefined;
    while (!files) {
      const { done, value } = parts.next();
      if (done) files = value;
    }
    const names = new FileNames();
    for (const { name, box, draw } of files) {
      const marks = draw();
      const file = `${folder}/${names.of(name)}`;
      content[`${file}.svg`] = strToU8(writeSvg(marks, name, box));
      content[`${file}.dxf`] = strToU8(writeDxf(marks));
      await between(name);
    }
  }
  return zipSync(content, { mtime: new Date(1980, 0, 1) });
}
