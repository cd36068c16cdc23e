import { laidSheets, type NamedSheet } from '../../src/core/cutting/sheet/layout';
import type { StockCutting } from '../../src/core/plan/cutting';
import type { Plan } from '../../src/core/plan/plan';
import { sheetPicture } from '../../src/drawing/sheet-picture';
import { svgOf } from '../../src/drawing/svg';
import { figuresOf } from '../../src/tables/figures';
import { readPlan } from '../../src/tables/plan-input';
import type { Findings } from './main';
import { workshop } from './plan-workshop';
import { median, referenceLoop } from './reference-loop';

const PIECES = 200;
/** Width of the pane's picture, u. */
const WIDTH = 92;
const figures = figuresOf('metric');

function planned(styles: number, seed: number): { readonly ms: number; readonly plan: Plan } {
  const start = performance.now();
  const { plan, problems } = readPlan(workshop(styles, seed));
  if (problems[0]) throw problems[0];
  if (plan.costs.length + plan.checks.length === 0) throw new Error('Nothing was planned.');
  return { ms: performance.now() - start, plan };
}

/** Sheets of a plan, the fullest first, that together hold as many pieces as are to be drawn. */
function sheetsOf({ cutting }: Plan): readonly { readonly cutting: StockCutting; readonly sheet: NamedSheet }[] {
  const all = cutting.stocks
    .flatMap((stock) => laidSheets(stock.layout, stock.format).map((sheet) => ({ cutting: stock, sheet })))
    .sort((a, b) => b.sheet.placements.length - a.sheet.placements.length);
  let count = 0;
  return all.filter((one) => {
    if (count >= PIECES) return false;
    count += one.sheet.placements.length;
    return true;
  });
}

function draw(sheets: ReturnType<typeof sheetsOf>): {
  readonly ms: number;
  readonly pieces: number;
  readonly bytes: number;
} {
  const start = performance.now();
  let [pieces, bytes] = [0, 0];
  for (const { cutting, sheet } of sheets) {
    const { marks, items = [] } = sheetPicture({ cutting, sheet, figures }, WIDTH);
    pieces += items.length;
    bytes += svgOf(marks).length;
  }
  return { ms: performance.now() - start, pieces, bytes };
}

/**
 * At least 200 pieces on their sheets, lettered, drawn in a tenth at most of the time that their plan takes: two styles in
 * twelve sizes, cold, the engine warmed up on others.
 */
export function drawing(): Findings {
  const loop = referenceLoop();
  for (const seed of [3, 5]) draw(sheetsOf(planned(2, seed).plan));
  const { ms: plan, plan: one } = planned(2, 11);
  const sheets = sheetsOf(one);
  const times = Array.from({ length: 5 }, () => draw(sheets));
  const first = times[0] as (typeof times)[number];
  const ratio = first.ms / plan;
  const round = (value: number) => Math.round(value * 1000) / 1000;
  return {
    lines: [
      { what: 'plan of two styles × 12 sizes, cold', ms: round(plan), 'reference loops': round(plan / loop) },
      {
        what: `${first.pieces} pieces drawn, the first time`,
        ms: round(first.ms),
        'reference loops': round(first.ms / loop),
        kB: Math.round(first.bytes / 1000),
      },
      { what: 'the same, median of five', ms: round(median(times.map(({ ms }) => ms))) },
      { what: 'drawing over plan (at most 0.1)', ratio: round(ratio) },
    ],
    holds: first.pieces >= PIECES && ratio <= 0.1,
  };
}
