import { packagedFonts } from '../../src/cli/fonts';
import type { InParts } from '../../src/drawing/paper/chosen';
import { PAPERS } from '../../src/drawing/paper/page';
import { type TemplatePage, templatePages } from '../../src/drawing/paper/template-pages';
import { writePdf } from '../../src/exchange/pdf';
import { readPlan } from '../../src/tables/plan-input';
import type { Findings } from './main';
import { workshop } from './plan-workshop';
import { referenceLoop } from './reference-loop';

/** More than this many times as long for a page of a large run as for one of a small run, and time does not grow with pages. */
const MOST = 1.5;

function whole<T>(parts: InParts<T>): { readonly made: T; readonly told: number } {
  for (let told = 0; ; told++) {
    const { done, value } = parts.next();
    if (done) return { made: value, told };
  }
}

interface Made {
  readonly styles: number;
  readonly pages: number;
  readonly told: number;
  /** Styles in sizes that have pairs. */
  readonly sizes: number;
  readonly layingMs: number;
  readonly writingMs: number;
  readonly bytes: number;
}

/** Templates of so many styles in twelve sizes, laid and written. */
async function made(styles: number, seed: number): Promise<Made> {
  const { plan, problems } = readPlan(workshop(styles, seed));
  if (problems[0]) throw problems[0];
  // Bottoms are the plan's work, not the paper's.
  const pieces = plan.buildable.length;
  const start = performance.now();
  const { made: pages, told } = whole<readonly TemplatePage[]>(
    templatePages({ plan, run: 'Benchmark', date: '', paper: PAPERS.A4 }),
  );
  const laid = performance.now();
  const drawn = pages.reduce((sum, page) => sum + new Set(page.templates).size, 0);
  if (drawn < pieces) throw new Error('A piece has no template.');
  const { bytes } = await writePdf(pages, { title: 'Benchmark' }, packagedFonts());
  return {
    styles,
    pages: pages.length,
    told,
    sizes: plan.runs.styles.reduce((sum, { sizes }) => sum + sizes.length, 0),
    layingMs: laid - start,
    writingMs: performance.now() - laid,
    bytes: bytes.length,
  };
}

/** Templates of 40 styles in twelve sizes: their time grows with the pages, and they tell how far they are. */
export async function paper(): Promise<Findings> {
  const loop = referenceLoop();
  await made(1, 3);
  const [few, many] = [await made(5, 11), await made(40, 11)];
  const each = ({ layingMs, writingMs, pages }: Made) => (layingMs + writingMs) / pages;
  const ratio = each(many) / each(few);
  const round = (value: number) => Math.round(value * 1000) / 1000;
  return {
    lines: [
      ...[few, many].map((one) => ({
        what: `${one.styles} styles × 12 sizes: ${one.pages} pages`,
        'laid, ms': Math.round(one.layingMs),
        'written, ms': Math.round(one.writingMs),
        'a page, reference loops': round(each(one) / loop),
        kB: Math.round(one.bytes / 1000),
        'told of parts': one.told,
      })),
      { what: `a page of many over one of few (at most ${MOST})`, ratio: round(ratio) },
    ],
    holds: ratio <= MOST && many.told >= many.sizes,
  };
}
