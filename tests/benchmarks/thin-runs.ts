import type { Piece } from '../../src/core/cutting/sheet/piece';
import type { SheetFormat } from '../../src/core/cutting/sheet/sheet';
import type { Way } from '../../src/core/cutting/sheet/way';
import { mirror } from '../../src/core/geometry/mirror';
import type { Point, Ring } from '../../src/core/geometry/ring';
import { at, SHEET } from '../core/cutting/natural/hide';
import { rectangle, regular, soleLike } from '../core/cutting/outlines';

/** A run of two or three pairs a size, and the sheets that it is cut from. All invented. */
export interface ThinRun {
  readonly name: string;
  readonly pieces: readonly Piece[];
  readonly format: SheetFormat;
}

const RUNS = 30;

const FORMATS: readonly (readonly [length: number, width: number])[] = [
  [770, 500],
  [1000, 500],
  [1200, 600],
  [900, 700],
  [1000, 1000],
];

const WAYS: readonly Way[] = [{ kind: 'any' }, { kind: 'endForEnd' }, { kind: 'within', degrees: 10 }];

/** Lengths of the smallest and of the next larger piece, mm. */
const SMALLEST = 232;
const PER_SIZE = 20 / 3;

/** A lift: round at the back, straight at the breast. */
function lift(length: number): Ring {
  const [half, corners] = [0.42 * length, 22];
  const back = Array.from({ length: corners }, (_, i): Point => {
    const angle = Math.PI / 2 + (Math.PI * i) / (corners - 1);
    return [half * Math.cos(angle), half * Math.sin(angle)];
  });
  return [...back, [length - half, -0.92 * half], [length - half, 0.92 * half]];
}

const PARTS: Readonly<Record<string, (length: number) => Ring>> = {
  sole: (length) => soleLike(length, 40),
  insole: (length) => soleLike(0.95 * length, 32),
  lift: (length) => lift(0.29 * length),
};

const MIXES = [
  ['sole'],
  ['sole', 'lift'],
  ['insole', 'lift'],
  ['sole', 'insole'],
  ['lift'],
  ['sole', 'insole', 'lift'],
];

/** What a sheet has besides its edges, run by run: nothing, offcuts, holes and zones, or pairs to match. */
function special(run: number, [length, width]: readonly [number, number]): Partial<SheetFormat> {
  switch (run % 5) {
    case 2:
      return {
        offcuts: [
          { code: 'A', length: 0.6 * length, width: 0.5 * width },
          { code: 'B', length: 0.45 * length, width: 0.7 * width },
        ],
      };
    case 3:
      return {
        natural: {
          outline: rectangle(length, width),
          holes: [at(regular(7, 18), 0.4 * length, 0.6 * width), at(regular(5, 12), 0.75 * length, 0.3 * width)],
          zones: [{ ring: rectangle(length, 0.2 * width), quality: 2 }],
          quality: 1,
          backbone: width / 2,
        },
      };
    case 4:
      return run % 10 === 4 ? { natural: SHEET } : run % 3 === 0 ? { pairs: 'side by side' } : {};
    default:
      return {};
  }
}

/** Thirty runs of soles, lifts and insoles on five formats, with offcuts, holes, zones and pairs that match. */
export function thinRuns(): readonly ThinRun[] {
  return Array.from({ length: RUNS }, (_, run) => {
    const size = FORMATS[run % FORMATS.length]!;
    const mix = MIXES[run % MIXES.length]!;
    const way = WAYS[Math.floor(run / 2) % WAYS.length]!;
    const sizes = 6 + (run % 4);
    const pairs = 2 + (run % 2);
    const more = special(run, size);
    const hide = more.natural === SHEET;
    const pieces = mix.flatMap((part, p) =>
      Array.from({ length: sizes }, (_, i) => i).flatMap((i): Piece[] => {
        const ring = PARTS[part]!(SMALLEST + PER_SIZE * i);
        // A heel is built of several lifts.
        const count = part === 'lift' ? 4 * pairs : pairs;
        const shared = { count, way, quality: p === 0 ? 1 : 2 };
        return [
          { ...shared, key: `${part} ${i} left`, ring, pair: `${part} ${i}` },
          { ...shared, key: `${part} ${i} right`, ring: mirror(ring), pair: `${part} ${i}` },
        ];
      }),
    );
    const [length, width] = hide ? [1000, 600] : size;
    const format: SheetFormat = { length, width, knifeRoom: run % 2 ? 2 : 3, edgeTrim: 5, ...more };
    return { name: `${run + 1}: ${mix.join(', ')}, ${way.kind}, ${Object.keys(more).join()}`, pieces, format };
  });
}
