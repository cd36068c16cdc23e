import type { Material } from '../core/stock/stock';
import { f } from './svg';

/** Reference to a material's hatching, defined once by `hatchings`. */
export function hatch(material: Material, other = false): string {
  return ` fill="url(#hatch-${material}${other && material === 'leather' ? '-2' : ''})"`;
}

/**
 * Patterns of all materials: cork flecks, foam cells, leather fibre lines (the next leather layer turned), rubber net,
 * board plies, fabric weave, steel solid. They differ in kind, so that a print in black and white tells them apart.
 */
export function hatchings(): string {
  const lines = (d: string) => `<path class="n" d="${d}"/>`;
  const cells = [
    [0.6, 0.6],
    [1.8, 1.8],
  ].map(([x, y]) => `<circle class="cell" cx="${x}" cy="${y}" r="0.5"/>`);
  return [
    pattern('cork', TILE, TILE, flecks()),
    pattern('foam', 2.4, 2.4, cells.join('')),
    pattern('leather', 1, 1, lines('M.5 0V1'), 45),
    pattern('leather-2', 1, 1, lines('M.5 0V1'), 135),
    pattern('rubber', 1.2, 1.2, lines('M.6 0V1.2M0 .6H1.2'), 45),
    pattern('board', 4, 1.4, lines('M0 .35H4M0 1.05H2.6')),
    pattern('fabric', 1.6, 1.6, lines('M0 .4H.8M.8 1.2H1.6M.4 .8V1.6M1.2 0V.8')),
    pattern('steel', 1, 1, '<rect class="solid" width="1" height="1"/>'),
  ].join('');
}

function pattern(name: string, width: number, height: number, body: string, turn?: number): string {
  const turned = turn === undefined ? '' : ` patternTransform="rotate(${turn})"`;
  return `<pattern id="hatch-${name}" width="${width}" height="${height}" patternUnits="userSpaceOnUse"${turned}>${body}</pattern>`;
}

/** Side of the tile of cork flecks, u. */
const TILE = 8;
const APART = 0.85;

/** Flecks of 0.15 to 0.35 radius that keep apart, also over the tile's edges; the same every time. */
function flecks(): string {
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
    .map(([x, y, r]) => `<circle class="solid" cx="${f(x)}" cy="${f(y)}" r="${f(r)}"/>`)
    .join('');
}
