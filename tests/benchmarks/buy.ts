import { buy } from '../../src/core/cutting/buy/buy';
import type { BuyFormat, BuyJob } from '../../src/core/cutting/buy/job';
import { costOfShares } from '../../src/core/cutting/buy/plain';
import { quickLayout } from '../../src/core/cutting/quick-layout';
import type { Piece } from '../../src/core/cutting/sheet/piece';
import { useCompiledKernel } from '../../src/workers/compiled-engine';
import { soleLike } from '../core/cutting/outlines';
import { backwards, jobOf, stripFormat, strips } from '../core/cutting/buy/strips';
import { highsInNode } from '../highs';
import type { Findings } from './main';

/** What a purchase may be dearer than the cheapest, in %, where that is known; a sheet more may always be. */
const MOST_GAP = 2;

/** Printed instances of one dimension, with the fewest sheets that there are. */
const PRINTED: readonly {
  readonly what: string;
  readonly length: number;
  readonly orders: readonly (readonly [length: number, count: number])[];
  readonly fewest: number;
}[] = [
  {
    what: '13 widths of paper rolls (Wikipedia, "Cutting stock problem": 73 rolls)',
    length: 5600,
    orders: [
      [1380, 22],
      [1520, 25],
      [1560, 12],
      [1710, 14],
      [1820, 18],
      [1880, 18],
      [1930, 20],
      [2000, 10],
      [2050, 12],
      [2100, 14],
      [2140, 16],
      [2150, 18],
      [2200, 20],
    ],
    fewest: 73,
  },
  {
    what: 'four lengths of raws (Chvátal, Linear Programming, 1983, chapter 13, from memory: 453 raws)',
    length: 100,
    orders: [
      [45, 97],
      [36, 610],
      [31, 395],
      [14, 211],
    ],
    fewest: 453,
  },
];

/** What to buy: cost against the cheapest where it is known, else against the least that is proven. */
export async function buying(): Promise<Findings> {
  const solver = await highsInNode();
  useCompiledKernel();
  const line = (what: string, job: BuyJob, cheapest?: number) => {
    const start = processorTime();
    const { cost, least, known } = buy(job, solver);
    const plain = costOfShares(job.plain, job.formats);
    const gap = (100 * (cost - (cheapest ?? least))) / (cheapest ?? least);
    return {
      what,
      plain,
      cost,
      'least proven': least,
      cheapest: cheapest ?? '',
      'gap %': Number(gap.toFixed(2)),
      layouts: known,
      seconds: Number((processorTime() - start).toFixed(2)),
      holds: cost <= plain + 1e-6 && (cheapest === undefined || gap <= MOST_GAP || cost <= cheapest + 1),
    };
  };
  const lines = [
    ...PRINTED.map(({ what, length, orders, fewest }) =>
      line(what, jobOf(strips(orders), [stripFormat(length, { price: 1 })]), fewest),
    ),
    ...[1, 2, 3].map((seed) => {
      const { orders, sheets } = backwards(seed, 12, 1000);
      const job = jobOf(strips(orders), [stripFormat(1000, { price: 1 })]);
      return line(`strips cut from full sheets, seed ${seed} (optimum derived)`, job, sheets);
    }),
    line('soles in nine sizes, two formats (against the least proven)', soles(0)),
    line('the same, searched besides', soles(8)),
  ];
  return { lines, holds: lines.every(({ holds }) => holds) };
}

/** Time of the processor on all threads of this process, s: others who use the machine do not count. */
function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
}

/** @param effort of the search besides, millions of places */
function soles(effort: number): BuyJob {
  const pieces = Array.from({ length: 9 }, (_, i) => i).flatMap((i): readonly Piece[] =>
    [false, true].map((mirrored) => ({
      key: `${36 + i} ${mirrored ? 'R' : 'L'}`,
      ring: soleLike(240 + 6.67 * i, 40, mirrored),
      count: 4 + 3 * Math.min(i, 8 - i),
      way: { kind: 'any' },
    })),
  );
  const terms = { pack: 1, minimum: 0, onHand: 0 };
  const format = { length: 1000, width: 500, knifeRoom: 4, edgeTrim: 10 };
  const formats: readonly BuyFormat[] = [
    { format, terms: [{ ...terms, price: 19.5, onHand: 1 }] },
    { format: { ...format, length: 1200, width: 800 }, terms: [{ ...terms, price: 36 }] },
  ];
  return { pieces, formats, plain: [{ format: 0, layout: quickLayout(pieces, format) }], columns: 250, effort };
}
