import { readPlan } from '../../src/tables/plan-input';
import { forgetPlans } from '../core/forget';
import type { Findings } from './main';
import { referenceLoop } from './reference-loop';

type Table = (string | number)[][];

interface Workshop {
  readonly pairage: Table;
  readonly styles: Table;
  readonly lasts: Table;
  readonly stock: Table;
  readonly rates: Table;
}

/** The minimal standard generator of Park and Miller, so that every run plans the same workshop. */
function generator(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 16807) % 2147483647) / 2147483647;
}

/** An invented workshop of so many styles in twelve sizes: wedges, heels and flat soles in turn. */
export function workshop(styles: number, seed: number): Workshop {
  const random = generator(seed);
  const between = (from: number, to: number) => Math.round((from + random() * (to - from)) * 10) / 10;
  const sizes = Array.from({ length: 12 }, (_, i) => 35 + i);
  const lasts: Table = [
    [
      'Last',
      'System',
      'Base size',
      'Bottom length',
      'Heel height',
      'Toe spring',
      'Tread',
      'Waist',
      'Seat',
      'Swing',
      'Pairs on hand',
    ],
  ];
  const styleRows: Table = [
    ['Style', 'Last', 'Raise', 'Lifts', 'Platform', 'Sole', 'Outsole', 'Top piece', 'Most rasping', 'Projection'],
  ];
  const pairage: Table = [['Style', ...sizes]];
  for (let i = 0; i < styles; i++) {
    const kind = i % 3;
    const heel = kind === 0 ? between(25, 48) : kind === 1 ? between(30, 50) : 0;
    lasts.push([
      `Last ${i}`,
      'EU',
      38,
      between(250, 262),
      heel,
      between(6, 12),
      between(80, 92),
      between(54, 64),
      between(54, 64),
      between(2, 5),
      2,
    ]);
    styleRows.push([
      `Style ${i}`,
      `Last ${i}`,
      ['wedge', 'heel', 'none'][kind] as string,
      kind === 2 ? '' : 'Cork 6, Cork 4.5, Cork 4',
      kind === 0 ? 'Foam 10' : '',
      kind === 0 ? '' : 'Bend 4',
      'Rubber 4',
      kind === 1 ? 'Rubber 6' : '',
      2,
      between(0, 3),
    ]);
    pairage.push([`Style ${i}`, ...sizes.map(() => Math.floor(random() * 3))]);
  }
  const sheet = (
    code: string,
    material: string,
    thick: number,
    width: number,
    length: number,
    price: number,
    lies: string,
  ) => [code, material, thick, width, length, price, 'sheet', lies, 200];
  return {
    pairage,
    styles: styleRows,
    lasts,
    stock: [
      ['Stock', 'Material', 'Thick', 'Width', 'Length', 'Price', 'Sold by', 'Direction', 'Density'],
      sheet('Cork 6', 'cork', 6, 500, 1000, 13.4, 'any way'),
      sheet('Cork 4.5', 'cork', 4.5, 500, 1000, 10.6, 'any way'),
      sheet('Cork 4', 'cork', 4, 500, 1000, 9.6, 'any way'),
      sheet('Foam 10', 'foam', 10, 800, 1200, 34, 'any way'),
      sheet('Bend 4', 'leather', 4, 620, 1350, 90, 'end for end'),
      sheet('Rubber 4', 'rubber', 4, 600, 1000, 22, 'any way'),
      sheet('Rubber 6', 'rubber', 6, 500, 500, 15, 'any way'),
    ],
    rates: [
      ['Item', 'Value', 'Unit'],
      ['Work', 30, 'money an hour'],
      ['Adhesive', 14, 'money a litre'],
      ['Adhesive', 3.5, 'm² a litre'],
    ],
  };
}

/** Time of the processor on all threads of this process, ms: others who use the machine do not count. */
function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** Plans a workshop to the end, as the functions of a sheet together do. @returns ms of the processor, and how much was planned */
function time(cells: Workshop): { readonly ms: number; readonly pieces: number; readonly sheets: number } {
  const start = processorTime();
  const { plan, problems } = readPlan(cells);
  if (problems[0]) throw problems[0];
  const pieces = plan.pieces.reduce((sum, { count }) => sum + count, 0);
  const sheets = plan.cutting.stocks.reduce((sum, { layout }) => sum + layout.sheets.length, 0);
  if (plan.orders.length + plan.costs.length + plan.checks.length + plan.batches.length === 0)
    throw new Error('Nothing was planned.');
  return { ms: processorTime() - start, pieces, sheets };
}

/** The same workshop with another price of one sheet. */
function repriced(cells: Workshop): Workshop {
  return {
    ...cells,
    stock: cells.stock.map((row) =>
      row[0] === 'Foam 10' ? row.map((cell, i) => (i === 5 ? Number(cell) + 1 : cell)) : row,
    ),
  };
}

/** The most styles, in whole twenties, that are planned at once. */
function mostStyles(seed: number): number {
  const { plan } = readPlan(workshop(1000, seed));
  return 20 * Math.floor(plan.runs.styles.length / 20);
}

/** What is asked, in reference loops; a loop took 12.5 ms where it was settled: 1 s cold, 10 s for the largest plan. */
const LOOPS = { cold: 80, largest: 800 } as const;

/**
 * 40 styles in 12 sizes: cold; after a price has changed, which may take a fiftieth at most; and the largest workshop that
 * is accepted, which may take a fifth more for its pieces at most. The engine is warmed up on another workshop first.
 */
export function plan(): Findings {
  const loop = referenceLoop(processorTime);
  time(workshop(8, 3));
  const small = workshop(40, 11);
  const cold = time(small);
  const price = time(repriced(small));
  const styles = mostStyles(12);
  forgetPlans();
  const large = time(workshop(styles, 12));
  const line = (what: string, { ms, pieces, sheets }: ReturnType<typeof time>, most?: number) => ({
    what,
    ms: Math.round(ms * 10) / 10,
    'reference loops': Math.round((ms / loop) * 100) / 100,
    pieces,
    sheets,
    ...(most !== undefined && { 'at most': most }),
  });
  const perWork = large.ms / cold.ms / (large.pieces / cold.pieces);
  return {
    lines: [
      { what: 'reference loop', ms: Math.round(loop * 10) / 10, 'reference loops': 1 },
      line('40 styles × 12 sizes, cold', cold, LOOPS.cold),
      line('after a price has changed', price),
      line(`${styles} styles × 12 sizes, the largest accepted, cold`, large, LOOPS.largest),
      { what: 'price change over cold', ratio: Math.round((price.ms / cold.ms) * 1e4) / 1e4, 'at most': 0.02 },
      { what: 'the largest over 40 styles, by their pieces', ratio: Math.round(perWork * 100) / 100, 'at most': 1.2 },
    ],
    holds:
      cold.ms <= LOOPS.cold * loop && large.ms <= LOOPS.largest * loop && price.ms <= cold.ms / 50 && perWork <= 1.2,
  };
}
