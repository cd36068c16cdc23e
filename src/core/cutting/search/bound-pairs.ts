import { box } from '../../geometry/box';
import { moved } from '../../geometry/moved';
import type { Point, Ring } from '../../geometry/ring';
import { unionOutline } from '../../geometry/union-outline';
import type { Layout, Placement, Placements } from '../sheet/layout';
import { BEST } from '../sheet/natural-sheet';
import type { Piece } from '../sheet/piece';
import type { SheetFormat } from '../sheet/sheet';
import { wholeTurn } from '../sheet/way';
import type { Bond, Bound } from './taken-apart';

/** How far the two of a pair may be off each other's place along the sheet, mm: as much as layouts may. */
const MATCHED = 0.05;

/** Offsets closer together than this are one, mm. */
const SAME = 1e-3;

/** Half the width of what joins two outlines, and how far it reaches into each, mm: no other piece comes between them. */
const BRIDGE = { half: 0.05, into: 0.5 };

/**
 * Takes the two of each pair together as they lie side by side in a layout, so that they may be moved, and turned end for
 * end, as one. Pieces of no pair stay as they are.
 * @returns undefined where a piece lies beside none of its pair, or two outlines cannot be joined
 */
export function boundPairs(pieces: readonly Piece[], format: SheetFormat, start: Layout): Bound | undefined {
  const bonds: Bond[] = [];
  const numbers = new Map<string, number>();
  const counts: number[] = [];
  /** Number of a bond, or of a piece by itself: these come first. */
  const numberOf = (bond: Bond) => {
    const { first, second, turn, x, y } = bond;
    const key = [first, second, turn, Math.round(x / SAME), Math.round(y / SAME)].join();
    const known = numbers.get(key);
    if (known !== undefined) return known;
    numbers.set(key, pieces.length + bonds.length);
    return pieces.length + bonds.push(bond) - 1;
  };
  const sheets: Placements[] = [];
  for (const sheet of start.sheets) {
    const laid = bound(pieces, sheet, numberOf);
    if (!laid) return undefined;
    for (const { piece } of laid) counts[piece] = (counts[piece] ?? 0) + 1;
    sheets.push(laid);
  }
  const joined = bonds.map((bond) => joinedPiece(pieces, bond));
  const whole = joined.flatMap((piece) => (piece ? [piece] : []));
  if (whole.length < joined.length) return undefined;
  return {
    pieces: [...pieces, ...whole].map((piece, i) => ({ ...piece, count: counts[i] ?? 0 })),
    format: { ...format, pairs: undefined, offcuts: undefined },
    layout: { offcuts: [], sheets },
    twos: [...pieces.map(() => undefined), ...bonds],
  };
}

/** What lies on a sheet with pairs as one; undefined where one of a pair lies by itself. */
function bound(
  pieces: readonly Piece[],
  sheet: Placements,
  numberOf: (bond: Bond) => number,
): readonly Placement[] | undefined {
  const laid: Placement[] = [];
  let waiting = sheet.filter((one) => {
    if (pieces[one.piece]?.pair === undefined) laid.push(one);
    return pieces[one.piece]?.pair !== undefined;
  });
  for (;;) {
    const [one, ...others] = waiting;
    if (!one) return laid;
    const mates = others.filter(
      ({ piece, x, turn }) =>
        piece !== one.piece &&
        pieces[piece]?.pair === pieces[one.piece]?.pair &&
        Math.abs(x - one.x) <= MATCHED &&
        Math.abs(Math.sin(((turn - one.turn) * Math.PI) / 360)) < 1e-6,
    );
    mates.sort((a, b) => Math.abs(a.y - one.y) - Math.abs(b.y - one.y));
    const [mate] = mates;
    if (!mate) return undefined;
    const [first, second] = one.piece < mate.piece ? [one, mate] : [mate, one];
    const oneWay = [first, second].some(({ piece }) => pieces[piece]?.way.kind === 'oneWay');
    // Turned end for end it is the same bond.
    const back = !oneWay && wholeTurn(first.turn) >= 180;
    const sign = back ? -1 : 1;
    const bond = {
      first: first.piece,
      second: second.piece,
      turn: wholeTurn(first.turn + (back ? 180 : 0)),
      x: sign * (second.x - first.x),
      y: sign * (second.y - first.y),
    };
    laid.push({ piece: numberOf(bond), x: first.x, y: first.y, turn: back ? 180 : 0 });
    waiting = others.filter((other) => other !== mate);
  }
}

/** Both outlines and what joins them, as they lie when the first has its origin at (0, 0). */
function joinedPiece(pieces: readonly Piece[], { first, second, turn, x, y }: Bond): Piece | undefined {
  const [a, b] = [pieces[first], pieces[second]];
  if (!a || !b) return undefined;
  const one = moved(a.ring, turn);
  const other = moved(b.ring, turn, x, y);
  const [ring, ...more] = unionOutline([one, other, bridge(one, other)]);
  if (!ring || more.length > 0) return undefined;
  return {
    key: `${a.key} beside ${b.key}`,
    ring,
    count: 0,
    way: { kind: [a, b].some(({ way }) => way.kind === 'oneWay') ? 'oneWay' : 'endForEnd' },
    quality: Math.min(a.quality ?? BEST, b.quality ?? BEST),
  };
}

/** A narrow strip from one outline to another where they are nearest. */
function bridge(one: Ring, other: Ring): Ring {
  const { from, to } = nearest(one, other);
  const [[ax, ay], [bx, by]] = [from, to];
  let [dx, dy] = [bx - ax, by - ay];
  if (Math.hypot(dx, dy) < SAME) {
    // They touch: towards the middle of the other.
    const { left, bottom, right, top } = box(other);
    [dx, dy] = [(left + right) / 2 - ax, (bottom + top) / 2 - ay];
  }
  const length = Math.hypot(dx, dy);
  [dx, dy] = [dx / length, dy / length];
  const { half, into } = BRIDGE;
  const at = (x: number, y: number, along: number, aside: number): Point => [
    x + along * dx - aside * dy,
    y + along * dy + aside * dx,
  ];
  return [at(ax, ay, -into, -half), at(bx, by, into, -half), at(bx, by, into, half), at(ax, ay, -into, half)];
}

/** The nearest points of two outlines that lie apart: a corner of one and a point of an edge of the other. */
function nearest(one: Ring, other: Ring): { readonly from: Point; readonly to: Point } {
  let best: { readonly from: Point; readonly to: Point; readonly gap: number } | undefined;
  const look = (corners: Ring, edges: Ring, turned: boolean) => {
    for (const corner of corners) {
      edges.forEach((p, i) => {
        const q = edges[(i + 1) % edges.length] ?? p;
        const [dx, dy] = [q[0] - p[0], q[1] - p[1]];
        const along = ((corner[0] - p[0]) * dx + (corner[1] - p[1]) * dy) / (dx * dx + dy * dy || 1);
        const share = Math.max(0, Math.min(1, along));
        const foot: Point = [p[0] + share * dx, p[1] + share * dy];
        const gap = Math.hypot(corner[0] - foot[0], corner[1] - foot[1]);
        if (best && gap >= best.gap) return;
        best = turned ? { from: foot, to: corner, gap } : { from: corner, to: foot, gap };
      });
    }
  };
  look(one, other, false);
  look(other, one, true);
  if (!best) throw new Error('An outline has no corners.');
  return best;
}
