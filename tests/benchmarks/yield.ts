import { densestRows } from '../../src/core/cutting/pattern/densest-rows';
import { DoubleLattice } from '../../src/core/cutting/pattern/double-lattice';
import { firstWaste } from '../../src/core/cutting/pattern/first-waste';
import { cuttingArea } from '../../src/core/cutting/pattern/pattern';
import { piecesPerSheet } from '../../src/core/cutting/pattern/pieces-per-sheet';
import type { Way } from '../../src/core/cutting/sheet/way';
import { area } from '../../src/core/geometry/area';
import { moved } from '../../src/core/geometry/moved';
import { noFitRegion } from '../../src/core/geometry/no-fit-region';
import type { Ring } from '../../src/core/geometry/ring';
import { complaints } from '../core/cutting/oracle';
import { longTee, regular, soleLike, tee } from '../core/cutting/outlines';
import type { Findings } from './main';
import { median, referenceLoop } from './reference-loop';
import { packStrip } from './strip/pack-strip';

/** Densities within this of the exact one count as reached. */
const EXACTLY = 1e-5;

const ANY: Way = { kind: 'any' };
const HALF_TURNS: Way = { kind: 'endForEnd' };

/** Outlines whose greatest density is known, with where it is known from. */
const ANCHORS: readonly { readonly what: string; readonly ring: Ring; readonly density: number }[] = [
  {
    what: 'regular pentagon (Hales and Kusner 2016)',
    ring: regular(5),
    density: (5 - Math.sqrt(5)) / 3,
  },
  {
    what: 'triangle, which tiles (derived)',
    ring: [
      [0, 0],
      [100, 10],
      [30, 70],
    ],
    density: 1,
  },
  {
    what: 'rectangle, which tiles (derived)',
    ring: [
      [0, 0],
      [266, 0],
      [266, 96],
      [0, 96],
    ],
    density: 1,
  },
  {
    what: 'quadrilateral of four unlike sides, which tiles (derived)',
    ring: [
      [0, 0],
      [100, 10],
      [120, 80],
      [-10, 50],
    ],
    density: 1,
  },
  {
    what: 'quadrilateral with an inward corner, which tiles (derived)',
    ring: [
      [0, 0],
      [100, -40],
      [30, 10],
      [60, 90],
    ],
    density: 1,
  },
  { what: 'T of four squares, which tiles (derived)', ring: tee, density: 1 },
  { what: 'T of five squares, which tiles (derived)', ring: longTee, density: 1 },
];

/** Tiles that only the general double lattice is asked for, without the rows. */
const LATTICES: typeof ANCHORS = [
  { what: 'T of four squares, general double lattice', ring: tee, density: 1 },
  { what: 'T of five squares, general double lattice', ring: longTee, density: 1 },
];

const SHEET = { length: 900, width: 600, knifeRoom: 0, edgeTrim: 0 };

/** What the worked case of a sole-like piece, 87 × 270 mm, is to reach on a sheet without gaps. */
const COUNTS: readonly { readonly what: string; readonly way: Way; readonly least: number }[] = [
  { what: 'soles on 600 × 900, any way', way: ANY, least: 25 },
  { what: 'soles on 600 × 900, half turns', way: HALF_TURNS, least: 24 },
];

/** The same soles by the search: one more than rows lay, on most seeds. */
const SEARCHED = { count: 26, seeds: [1, 2, 3, 4, 5], enough: 4, evaluations: 80e6 };
const TWELFTHS = Array.from({ length: 12 }, (_, i) => 30 * i);

/** Whether the search lays so many soles on the sheet, checked by the oracle, and what it took. */
function searched(sole: Ring, seed: number): { readonly found: boolean; readonly ms: number } {
  const { count, evaluations } = SEARCHED;
  const { length, width } = SHEET;
  const start = performance.now();
  const token = { stopped: false };
  const task = { pieces: [{ ring: sole, count, turns: TWELFTHS }], width, evaluations, seed } as const;
  const strip = packStrip(task, token, (shorter) => (token.stopped ||= shorter.length <= length));
  const ms = performance.now() - start;
  const pieces = [{ key: 'sole', ring: sole, count, way: ANY }];
  const sound = complaints(pieces, SHEET, [strip.placements]).length === 0;
  return { found: strip.length <= length && sound, ms };
}

const RUNS = 5;

/** Median time of a piece of work once the engine knows it, ms, and what it came to. */
function timed<T>(work: () => T): { readonly ms: number; readonly result: T } {
  let result = work();
  const times = Array.from({ length: RUNS }, () => {
    const start = performance.now();
    result = work();
    return performance.now() - start;
  });
  return { ms: median(times), result };
}

/** How densely one piece is laid, against what is known to be possible, and what it takes. */
export function yieldOfPieces(): Findings {
  const loop = referenceLoop();
  const sole = soleLike(270, 60);
  const taken = (ms: number) => ({
    ms: Math.round(ms * 100) / 100,
    'reference loops': Math.round((ms / loop) * 1000) / 1000,
  });
  const against = (known: (typeof ANCHORS)[number], densityOf: (ring: Ring) => number) => {
    const { what, ring, density } = known;
    const { ms, result } = timed(() => densityOf(ring));
    const holds = Math.abs(result - density) <= EXACTLY;
    return { what, found: Number(result.toFixed(6)), wanted: Number(density.toFixed(6)), holds, ...taken(ms) };
  };
  const anchors = [
    ...ANCHORS.map((known) => against(known, (ring) => 1 - firstWaste(ring, 0, ANY).share)),
    ...LATTICES.map((known) =>
      against(known, (ring) => area(ring) / cuttingArea(new DoubleLattice(ring, 0).densest())),
    ),
  ];
  const counts = COUNTS.map(({ what, way, least }) => {
    const { ms, result } = timed(() => piecesPerSheet(sole, SHEET, way));
    const pieces = [{ key: 'sole', ring: sole, count: result.count, way }];
    const sound = complaints(pieces, SHEET, [result.placements]).length === 0;
    return { what, found: result.count, wanted: least, holds: sound && result.count >= least, ...taken(ms) };
  });
  const bySearch = SEARCHED.seeds.map((seed) => searched(sole, seed));
  const reached = bySearch.filter(({ found }) => found).length;
  counts.push({
    what: `soles on 600 × 900, ${SEARCHED.count} by the search: seeds of ${SEARCHED.seeds.length}`,
    found: reached,
    wanted: SEARCHED.enough,
    holds: reached >= SEARCHED.enough,
    ...taken(median(bySearch.map(({ ms }) => ms))),
  });
  const rows = [ANY, HALF_TURNS].map((way) => {
    const { ms, result } = timed(() => densestRows(sole, 0, way));
    const what = way === ANY ? 'densest rows, 60 vertices, any way' : 'densest rows, 60 vertices, half turns';
    return { what, found: Number((area(sole) / cuttingArea(result)).toFixed(6)), ...taken(ms) };
  });
  const lattice = timed(() => cuttingArea(new DoubleLattice(sole, 0).densest()));
  const region = timed(() => noFitRegion(sole, moved(sole, 30)));
  const others = [
    {
      what: 'general double lattice, 60 vertices',
      found: Number((area(sole) / lattice.result).toFixed(6)),
      ...taken(lattice.ms),
    },
    { what: 'one no-fit region, 60 vertices each', ...taken(region.ms) },
  ];
  return {
    lines: [...anchors, ...counts, ...rows, ...others, { what: 'reference loop', ...taken(loop) }],
    holds: [...anchors, ...counts].every(({ holds }) => holds),
  };
}
