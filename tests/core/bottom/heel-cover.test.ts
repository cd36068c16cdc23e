import { describe, expect, it } from 'vitest';
import { PieceEdges } from '../../../src/core/bottom/edge';
import { heelCover } from '../../../src/core/bottom/heel-cover';
import { heelWall } from '../../../src/core/bottom/heel-wall';
import { area } from '../../../src/core/geometry/area';
import { crossesItself } from '../../../src/core/geometry/crosses-itself';
import { inside } from '../../../src/core/geometry/inside';
import { pathLength } from '../../../src/core/geometry/path-length';
import type { Point, Ring } from '../../../src/core/geometry/ring';
import type { Point3, Ruling } from '../../../src/core/geometry/unroll';
import { groundOutline } from '../../../src/core/last/ground-outline';
import { lastInSize, type LastInSize } from '../../../src/core/last/last-in-size';
import { measuredProfile } from '../../../src/core/last/measured-profile';
import { lastOf, type Named, styleOf } from '../samples';

const LENGTH = 240;
const BREAST = LENGTH / 4;

/** Round behind with a radius of 25, then straight: from above half a circle and two parallel sides. */
const OUTLINE: Ring = [
  ...Array.from({ length: 721 }, (_, i): Point => {
    const angle = Math.PI / 2 + (i / 720) * Math.PI;
    return [25 + 25 * Math.cos(angle), 25 * Math.sin(angle)];
  }),
  [LENGTH, -25],
  [LENGTH, 25],
];

/** A last that is level over the whole heel. */
const LEVEL: LastInSize = {
  length: LENGTH,
  tread: 50,
  waist: 50,
  seat: 50,
  swing: 0,
  heelHeight: 70,
  toeSpring: 0,
  profile: measuredProfile(
    [
      { x: 0, z: 70 },
      { x: 80, z: 70 },
      { x: 80, z: 70 },
      { x: 140, z: 0 },
    ],
    LENGTH,
  ),
  outline: OUTLINE,
};

const BARE = { Raise: 'heel', Lifts: 'Cork 6', 'Lasted substance': 0, 'Heel taper': 9, 'Cover lap': 5 };

function wallOf(last: LastInSize, named: Named = {}) {
  const style = styleOf({ ...BARE, ...named });
  const ground = groundOutline(last.outline, last.profile);
  const pieceEdges = new PieceEdges(style, last);
  const rule = { style, last, face: last.profile, ground, pieceEdges, height: last.heelHeight, taken: 0 };
  return { style, wall: heelWall(rule) };
}

function coverOf(last: LastInSize, named: Named = {}, flapped = false) {
  const { style, wall } = wallOf(last, named);
  return { wall, cover: heelCover(wall, { ...style, flapped }) };
}

/** Twin: the wall's area in space, its strips cut into small triangles by Heron's formula. */
function areaInSpace(rulings: readonly Ruling[], cuts = 8): number {
  const mix = (a: Point3, b: Point3, t: number) => a.map((v, i) => v + t * (b[i]! - v)) as unknown as Point3;
  const far = (a: Point3, b: Point3) => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
  const heron = (a: Point3, b: Point3, c: Point3) => {
    const [u, v, w] = [far(a, b), far(b, c), far(c, a)];
    const s = (u + v + w) / 2;
    return Math.sqrt(Math.max(0, s * (s - u) * (s - v) * (s - w)));
  };
  let sum = 0;
  rulings.slice(1).forEach(([p2, q2], i) => {
    const [p1, q1] = rulings[i]!;
    const at = (u: number, v: number) => mix(mix(p1, p2, u), mix(q1, q2, u), v);
    for (let k = 0; k < cuts; k++) {
      for (let m = 0; m < cuts; m++) {
        const [a, b, c, d] = [
          [k, m],
          [k + 1, m],
          [k + 1, m + 1],
          [k, m + 1],
        ].map(([x, y]) => at(x! / cuts, y! / cuts)) as [Point3, Point3, Point3, Point3];
        sum += heron(a, b, c) + heron(a, c, d);
      }
    }
  });
  return sum;
}

const lengthInSpace = (points: readonly Point3[]) =>
  points.slice(1).reduce((sum, [x, y, z], i) => {
    const [px, py, pz] = points[i]!;
    return sum + Math.hypot(x - px, y - py, z - pz);
  }, 0);

describe('the cover of a heel that is half a cone behind, with straight sides (derived, bench.md: R 25, r 16, h 70)', () => {
  const s = Math.hypot(70, 9);
  const { wall, cover } = coverOf(LEVEL, { 'Turn over': 12, 'Turn under': 15 });
  const half = cover.unturned.length / 2;
  const [lower, upper] = [cover.unturned.slice(0, half), cover.unturned.slice(half)];

  it('has back and sides of the sector’s 4545.29 mm² and two rectangles, and a breast of (50 + 32) / 2 × 70', () => {
    expect(area(cover.unturned)).toBeCloseTo(4545.29 + 2 * (BREAST - 25) * s + 41 * 70, 0);
    expect(cover.wall).toBeCloseTo(area(cover.unturned), 6);
  });

  it('has its round part on arcs of 125.469 and 196.045 about one centre under the middle of its back', () => {
    const radius = ([x, y]: Point) => Math.hypot(x, y + 125.469);
    // Half of 22.954° to either side of the back.
    const round = ([x, y]: Point) => Math.abs(Math.atan2(x, y + 125.469)) < (11.4 * Math.PI) / 180;
    expect(lower.filter(round).length).toBeGreaterThan(300);
    for (const point of lower.filter(round)) expect(radius(point)).toBeCloseTo(125.469, 1);
    for (const point of upper.filter(round)) expect(radius(point)).toBeCloseTo(196.045, 1);
    expect(cover.back?.[0]).toEqual([0, 0]);
    expect(cover.back?.[1]?.[0]).toBeCloseTo(0, 9);
    expect(cover.back?.[1]?.[1]).toBeCloseTo(s, 4);
  });

  it('is symmetrical about the middle of the back, as its heel is', () => {
    lower.forEach(([x, y], i) => {
      const [mx, my] = lower[lower.length - 1 - i]!;
      expect([x + mx, y - my].map(Math.abs).every((off) => off < 0.02)).toBe(true);
    });
  });

  it('is as long at seat and ground as the heel’s own edges: π R + 2 sides + breast', () => {
    expect(cover.over).toBeCloseTo(Math.PI * 25 + 2 * (BREAST - 25) + 50, 1);
    expect(cover.under).toBeCloseTo(Math.PI * 16 + 2 * (BREAST - 25) + 32, 1);
    expect(cover.under).toBeCloseTo(pathLength(lower), 9);
    expect(cover.over).toBeCloseTo(pathLength(upper), 9);
  });

  it('has turns of 12 over and 15 under and ends 5 past the middle of the breast', () => {
    const edge = (ring: Ring, { x, y }: { x: number; y: number }) =>
      Math.min(
        ...ring.map(([ax, ay], i) => {
          const [bx, by] = ring[(i + 1) % ring.length]!;
          const t = Math.min(
            1,
            Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / ((bx - ax) ** 2 + (by - ay) ** 2 || 1)),
          );
          return Math.hypot(x - ax - t * (bx - ax), y - ay - t * (by - ay));
        }),
      );
    for (const [list, turn] of [
      [lower, 15],
      [upper, 12],
    ] as const) {
      const [x, y] = list[Math.floor(list.length / 2)]!;
      expect(edge(cover.ring, { x, y })).toBeCloseTo(turn, 1);
    }
    const [x1, y1] = lower[0]!;
    const [x2, y2] = upper[upper.length - 1]!;
    expect(edge(cover.ring, { x: (x1 + x2) / 2, y: (y1 + y2) / 2 })).toBeCloseTo(5, 1);
    // Steiner: turns add their widths along the edges, more at corners that are mitred.
    const turns = 12 * cover.over + 15 * cover.under + 2 * 5 * 70;
    expect(cover.area - cover.wall).toBeGreaterThan(0.95 * turns);
    expect(cover.area - cover.wall).toBeLessThan(1.1 * turns);
  });

  it('agrees with the wall measured in space', () => {
    const rulings = [wall.breast, ...wall.sides, wall.breast];
    expect(cover.wall).toBeCloseTo(areaInSpace(rulings), 0);
  });

  it('is turned in at the corners of the breast where a flap hides it', () => {
    const flapped = coverOf(LEVEL, {}, true).cover;
    expect(flapped.wall).toBeCloseTo(cover.wall - 41 * 70, 3);
    expect([cover.closes, flapped.closes]).toEqual([true, false]);
  });

  it('without taper is a rectangle as long as the edge (derived)', () => {
    const straight = coverOf(LEVEL, { 'Heel taper': 0 }).cover;
    expect(straight.wall).toBeCloseTo(70 * (Math.PI * 25 + 2 * (BREAST - 25) + 50), 0);
    for (const [, y] of straight.unturned) expect(Math.min(Math.abs(y), Math.abs(y - 70))).toBeLessThan(1e-6);
  });
});

describe('the cover of a heel under a last', () => {
  const last = lastInSize(lastOf({ 'Heel height': 60 }), 38, 'EU');

  it.each([0, 3, 6, 10, 14])(
    'keeps lengths and area with a taper of %s mm a side, and does not cross itself',
    (taper) => {
      const { wall, cover } = coverOf(last, { 'Heel taper': taper, 'Lasted substance': 2.5 });
      const rulings = [wall.breast, ...wall.sides, wall.breast];
      expect(cover.wall / areaInSpace(rulings)).toBeCloseTo(1, 3);
      expect(cover.over).toBeCloseTo(lengthInSpace(rulings.map(([, q]) => q)), 6);
      expect(cover.under).toBeCloseTo(lengthInSpace(rulings.map(([p]) => p)), 6);
      expect(crossesItself(cover.ring)).toBe(false);
      expect(area(cover.ring)).toBeCloseTo(cover.area, 6);
      expect(cover.unturned.every(([x, y]) => inside(cover.ring, x, y))).toBe(true);
      // The wall reaches to what stands over it, and no higher than the last's back.
      for (const [[, , low], [, , high]] of rulings) {
        expect(low).toBe(0);
        expect(high).toBeGreaterThan(40);
        expect(high).toBeLessThanOrEqual(60 + 1e-6);
      }
    },
  );

  it('refuses a taper that leaves the ground face no round back', () => {
    const narrow = lastInSize(lastOf({ 'Heel height': 60, Seat: 40 }), 38, 'EU');
    expect(() => wallOf(narrow, { 'Heel taper': 19 })).toThrow('19 mm a side leave the back');
  });
});
