import { afterEach, describe, expect, it, vi } from 'vitest';
import { Arrangement } from '../../src/core/cutting/search/arrangement';
import { Effort } from '../../src/core/cutting/search/effort';
import { Overlaps } from '../../src/core/cutting/search/overlaps';
import { pushApart } from '../../src/core/cutting/search/push-apart';
import { Random } from '../../src/core/cutting/search/random';
import { Space } from '../../src/core/cutting/search/space';
import { inTurns } from '../../src/core/cutting/search/turned-outline';
import { mirror } from '../../src/core/geometry/mirror';
import { useCompiledKernel } from '../../src/workers/compiled-engine';
import { KERNEL } from '../../src/workers/kernel-code';
import { hook, rectangle, soleLike, tee } from '../core/cutting/outlines';

afterEach(() => {
  vi.unstubAllGlobals();
});

const RINGS = [
  soleLike(90, 20),
  soleLike(70, 26),
  hook,
  tee,
  rectangle(30, 18),
  mirror(soleLike(90, 20)),
  mirror(hook),
];
const TURNS = [0, 90, 130, 180, 230];
/** The last two are the other foot's of the first and the third. */
const MIRROR_OF: Readonly<Record<number, number>> = { 5: 0, 6: 2 };
const SHAPES = RINGS.flatMap((ring, kind) => inTurns(ring, kind, TURNS, RINGS.length, MIRROR_OF[kind]));
/** Three pieces of each kind. */
const KINDS = RINGS.flatMap((_, kind) => [kind, kind, kind]);
const SAMPLES = { near: 25, anywhere: 50 };

/** Two heaps on two rectangles and an obstacle, of which every piece is moved four times, then pushed apart; where they come to lie. */
function moves(overlaps: Overlaps) {
  const effort = new Effort(1e9, { stopped: false });
  const choices = KINDS.map((kind) => TURNS.map((_, turn) => kind * TURNS.length + turn));
  const space = new Space([160, 120], [100, 110]);
  const obstacle = { shape: 9, x: 40, y: 40, stops: (piece: number) => piece % 2 === 0 };
  const arrangement = new Arrangement(overlaps, space, choices, effort, [obstacle]);
  KINDS.forEach((kind, piece) => {
    arrangement.put(piece, { shape: kind * TURNS.length, x: space.start(piece % 2) + 50 + piece, y: 50 });
  });
  arrangement.updateAllLosses();
  const random = new Random(5);
  const places = [];
  for (let i = 0; i < 4 * KINDS.length; i++) {
    const piece = i % KINDS.length;
    const place = arrangement.findPlace(piece, random, SAMPLES);
    arrangement.put(piece, place);
    arrangement.updateLosses(piece);
    arrangement.updateWeights();
    places.push({ ...place, loss: arrangement.loss, spent: effort.spent, next: random.share() });
  }
  return { places, apart: pushApart(arrangement, 200), pushed: arrangement.save() };
}

describe('the compiled kernel', { timeout: 60_000 }, () => {
  it('finds the same places as the plain code, to the last digit, also when pairs are forgotten on the way', () => {
    const plain = moves(new Overlaps(SHAPES));
    const tight = moves(new Overlaps(SHAPES, 5e5));
    expect(tight).toEqual(plain);
    expect(useCompiledKernel()).toBe(true);
    expect(moves(new Overlaps(SHAPES))).toEqual(plain);
    expect(moves(new Overlaps(SHAPES, 5e5))).toEqual(plain);
  });

  it('gives way to the plain code where WebAssembly is missing or forbidden', () => {
    vi.stubGlobal('WebAssembly', undefined);
    expect(useCompiledKernel()).toBe(false);
    class Module {
      constructor() {
        throw new Error('The policy of the page forbids it.');
      }
    }
    vi.stubGlobal('WebAssembly', { Module });
    expect(useCompiledKernel()).toBe(false);
  });

  it('is what its source compiles to (npm run kernel)', async () => {
    const compiler = new URL('../../.ci/kernel.js', import.meta.url).href;
    const { compiledKernel } = (await import(compiler)) as { compiledKernel(): Promise<Uint8Array> };
    expect(Buffer.from(await compiledKernel()).toString('base64')).toBe(KERNEL);
  });
});
