import { describe, expect, it } from 'vitest';
import { Arrangement } from '../../../../src/core/cutting/search/arrangement';
import { Effort } from '../../../../src/core/cutting/search/effort';
import { Overlaps } from '../../../../src/core/cutting/search/overlaps';
import { pushApart } from '../../../../src/core/cutting/search/push-apart';
import { Random } from '../../../../src/core/cutting/search/random';
import { Space } from '../../../../src/core/cutting/search/space';
import { inTurns } from '../../../../src/core/cutting/search/turned-outline';
import { moved } from '../../../../src/core/geometry/moved';
import { sharedArea } from '../oracle';
import { hook, rectangle, soleLike, tee } from '../outlines';
import { heaped } from './heaped';

const turnedRing = (arrangement: Arrangement, piece: number) => {
  const { x, y } = arrangement.placeOf(piece);
  return moved(arrangement.shapeOf(piece).ring, 0, x, y);
};

/** Area that every two share, by arithmetic that the project does not use. */
function shared(arrangement: Arrangement): number {
  let sum = 0;
  for (let i = 0; i < arrangement.count; i++) {
    for (let j = 0; j < i; j++) sum += sharedArea(turnedRing(arrangement, i), turnedRing(arrangement, j));
  }
  return sum;
}

describe('pushApart', () => {
  it('frees a row that is jammed in its middle and has its room at the ends', () => {
    // Derived: ten of 20 in a length of 201, of which the middle two lie 2 over each other.
    const { arrangement } = heaped(
      Array.from({ length: 10 }, () => rectangle(20, 30)),
      201,
      30,
    );
    for (let piece = 0; piece < 10; piece++) {
      arrangement.put(piece, { shape: piece, x: piece < 5 ? 10.5 + 20 * piece : 188.5 - 20 * (9 - piece), y: 15 });
    }
    arrangement.updateAllLosses();
    expect(arrangement.loss).toBeGreaterThan(0);
    expect(pushApart(arrangement, 1000)).toBe(true);
    expect(arrangement.loss).toBe(0);
    expect(shared(arrangement)).toBeLessThan(1e-3);
    for (let piece = 0; piece < 10; piece++) {
      const { x } = arrangement.placeOf(piece);
      expect(Math.abs(x - (10 + 20 * piece))).toBeLessThan(1.01);
    }
  });

  it('leaves all as it lies where there is no room', () => {
    // Derived: two squares of 60 in 100 × 100.
    const { arrangement } = heaped([rectangle(60, 60), rectangle(60, 60)], 100, 100);
    const before = arrangement.save();
    expect(pushApart(arrangement, 200)).toBe(false);
    expect(arrangement.save()).toEqual(before);
  });

  it('keeps turns, rooms and what lies fast, and lets a piece lie over an obstacle that does not stop it', () => {
    const turns = [0, 90, 180, 270];
    const rings = [soleLike(60, 20), hook, tee];
    const shapes = rings.flatMap((ring, kind) => inTurns(ring, kind, turns, rings.length));
    const choices = Array.from({ length: 12 }, (_, piece) => turns.map((_, turn) => 4 * (piece % 3) + turn));
    const space = new Space([200, 220], [200, 180]);
    const obstacle = { shape: 9, x: 100, y: 100, stops: (piece: number) => piece !== 0 };
    const effort = new Effort(1e9, { stopped: false });
    const arrangement = new Arrangement(new Overlaps(shapes), space, choices, effort, [obstacle]);
    const random = new Random(11);
    choices.forEach((own, piece) => {
      arrangement.put(piece, {
        shape: own[random.below(4)]!,
        x: space.start(piece % 2) + 30 + 130 * random.share(),
        y: 30 + 110 * random.share(),
      });
    });
    arrangement.put(0, { shape: choices[0]![0]!, x: 100, y: 100 });
    arrangement.updateAllLosses();
    const before = arrangement.save();
    expect(before.loss).toBeGreaterThan(0);
    expect(pushApart(arrangement, 2000)).toBe(true);
    expect(arrangement.save().shapes).toEqual(before.shapes);
    expect(arrangement.placeOf(12)).toMatchObject({ x: 100, y: 100 });
    for (let piece = 0; piece < 12; piece++) expect(space.at(arrangement.placeOf(piece).x)).toBe(piece % 2);
    const overObstacle = sharedArea(turnedRing(arrangement, 0), turnedRing(arrangement, 12));
    expect(overObstacle).toBeGreaterThan(1);
    expect(shared(arrangement) - overObstacle).toBeLessThan(1e-3);
    expect(effort.spent).toBeGreaterThan(0);
  });
});
