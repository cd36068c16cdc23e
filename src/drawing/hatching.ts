import type { Material } from '../core/stock/stock';
import { circle, type Hatch, line, type Marks, rectangle } from './mark';
import { hatchId, svgOf } from './svg';

/** The hatching of a material's cut face. */
export function hatch(material: Material, other = false): Hatch {
  return { material, turned: other };
}

/** A tile that repeats, turned as a whole; u. */
export interface Tile {
  readonly width: number;
  readonly height: number;
  /** degrees, clockwise as it is seen */
  readonly turn: number;
  readonly marks: Marks;
}

/**
 * Tiles of all materials: cork flecks, foam cells, leather fibre lines (the next leather layer turned), rubber net, board
 * plies, fabric weave, steel solid. They differ in kind, so that a print in black and white tells them apart.
 */
export function tileOf({ material, turned }: Hatch): Tile {
  if (material === 'leather') return { ...TILES.leather, turn: turned ? 135 : 45 };
  return TILES[material];
}

const n = (x1: number, y1: number, x2: number, y2: number) => line('narrow', x1, y1, x2, y2);
const tile = (width: number, height: number, marks: Marks, turn = 0): Tile => ({ width, height, turn, marks });

/** Side of the tile of cork flecks, u. */
const TILE = 8;
const APART = 0.85;

const TILES: Readonly<Record<Material, Tile>> = {
  cork: tile(TILE, TILE, flecks()),
  foam: tile(2.4, 2.4, [circle(0.6, 0.6, 0.5, { pen: 'cell' }), circle(1.8, 1.8, 0.5, { pen: 'cell' })]),
  leather: tile(1, 1, [n(0.5, 0, 0.5, 1)], 45),
  rubber: tile(1.2, 1.2, [n(0.6, 0, 0.6, 1.2), n(0, 0.6, 1.2, 0.6)], 45),
  board: tile(4, 1.4, [n(0, 0.35, 4, 0.35), n(0, 1.05, 2.6, 1.05)]),
  fabric: tile(1.6, 1.6, [n(0, 0.4, 0.8, 0.4), n(0.8, 1.2, 1.6, 1.2), n(0.4, 0.8, 0.4, 1.6), n(1.2, 0, 1.2, 0.8)]),
  steel: tile(1, 1, [rectangle(0, 0, 1, 1, { fill: 'ink' })]),
};

/** The tiles as patterns that SVG fills by. */
export function hatchings(): string {
  const materials = Object.keys(TILES) as readonly Material[];
  return materials
    .flatMap((material) => (material === 'leather' ? [hatch(material), hatch(material, true)] : [hatch(material)]))
    .map((one) => {
      const { width, height, turn, marks } = tileOf(one);
      const turned = turn === 0 ? '' : ` patternTransform="rotate(${turn})"`;
      return `<pattern id="${hatchId(one)}" width="${width}" height="${height}" patternUnits="userSpaceOnUse"${turned}>${svgOf(marks)}</pattern>`;
    })
    .join('');
}

/** Flecks of 0.15 to 0.35 radius that keep apart, also over the tile's edges; the same every time. */
function flecks(): Marks {
  let state = 7;
  // The minimal standard generator of Park and Miller: pictures must not differ from run to run.
  const random = () => (state = (state * 16807) % 2147483647) / 2147483647;
  const kept: (readonly [number, number, number])[] = [];
  for (let i = 0; i < 900 && kept.length < 46; i++) {
    const [x, y, r] = [random() * TILE, random() * TILE, 0.15 + 0.2 * random()];
    const wrapped = (d: number) => Math.min(Math.abs(d), TILE - Math.abs(d));
    if (kept.every(([a, b]) => Math.hypot(wrapped(a - x), wrapped(b - y)) > APART)) kept.push([x, y, r]);
  }
  const shifts = [-TILE, 0, TILE];
  return kept
    .flatMap(([x, y, r]) => shifts.flatMap((dx) => shifts.map((dy) => [x + dx, y + dy, r] as const)))
    .filter(([x, y]) => x > -1 && x < TILE + 1 && y > -1 && y < TILE + 1)
    .map(([x, y, r]) => circle(x, y, r, { fill: 'ink' }));
}
