import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { area } from '../../../src/core/geometry/area';
import { moved } from '../../../src/core/geometry/moved';
import type { Point } from '../../../src/core/geometry/ring';
import { sharedArea } from '../../core/cutting/oracle';
import type { Strip, StripPiece } from './pack-strip';

/** Mean density, %, of 100 runs of 20 minutes on three threads: Gardeyn, Vanden Berghe and Wauters 2025, arXiv 2509.13329, tables 2 and 3. */
export const PUBLISHED: Readonly<Record<string, number>> = {
  albano: 89.47,
  fu: 92.24,
  jakobs1: 89.09,
  jakobs2: 84.77,
  shapes0: 68.6,
  shirts: 89.66,
  swim: 78.26,
  trousers: 91.73,
};

/** Rooms in which instances free of turns are laid, degrees. */
const FREE_TURNS = [0, 90, 180, 270];

interface File {
  readonly name: string;
  readonly strip_height: number;
  readonly items: readonly {
    readonly demand: number;
    readonly allowed_orientations?: readonly number[];
    readonly shape: { readonly data: readonly Point[] };
  }[];
}

function piecesOf({ items }: File): readonly StripPiece[] {
  return items.map(({ demand, allowed_orientations: turns = FREE_TURNS, shape }) => {
    const open = shape.data.slice(0, -1);
    return { ring: area(open) < 0 ? [...open].reverse() : open, count: demand, turns };
  });
}

/** A height that is a whole number with 0.01 % on top stands for that number: some files have it so, to ease exact fits. */
function trueHeight(height: number): number {
  const whole = Math.round(height / 1.0001);
  return Number.isInteger(height) || Math.abs(height / 1.0001 - whole) > 1e-6 ? height : whole;
}

/** Pieces to lay in a strip. */
export interface Instance {
  readonly name: string;
  readonly pieces: readonly StripPiece[];
  readonly width: number;
  /** Density of a strip of some length, %, against the true height. */
  readonly density: (length: number) => number;
}

/** The instances of a folder by name. */
export function instancesIn(folder: string): readonly Instance[] {
  const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
  return files.sort().map((file) => {
    const read = JSON.parse(readFileSync(join(folder, file), 'utf8')) as File;
    const pieces = piecesOf(read);
    const width = read.strip_height;
    const total = pieces.reduce((sum, { ring, count }) => sum + Math.abs(area(ring)) * count, 0);
    const density = (length: number) => (100 * total) / (length * trueHeight(width));
    return { name: file.replace(/\.json$/, ''), pieces, width, density };
  });
}

/** What is wrong with a strip by arithmetic that the project does not use: pieces that overlap, stick out or are missing. */
export function complaints(pieces: readonly StripPiece[], width: number, { length, placements }: Strip): string[] {
  const found: string[] = [];
  const rings = placements.map(({ piece, turn, x, y }) => moved(pieces[piece]!.ring, turn, x, y));
  const fuzz = 1e-6 * Math.max(length, width);
  const boxes = rings.map((ring) => {
    const [xs, ys] = [ring.map(([x]) => x), ring.map(([, y]) => y)];
    return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)] as const;
  });
  rings.forEach((ring, i) => {
    const [left, bottom, right, top] = boxes[i]!;
    if (left < -fuzz || bottom < -fuzz || right > length + fuzz || top > width + fuzz) found.push(`${i} sticks out`);
    for (let j = 0; j < i; j++) {
      const [l, b, r, t] = boxes[j]!;
      if (l >= right || r <= left || b >= top || t <= bottom) continue;
      const least = Math.min(Math.abs(area(ring)), Math.abs(area(rings[j]!)));
      if (sharedArea(ring, rings[j]!) > 1e-5 * least) found.push(`${i} and ${j} overlap`);
    }
  });
  pieces.forEach(({ count }, kind) => {
    if (placements.filter(({ piece }) => piece === kind).length !== count) found.push(`kind ${kind} is not complete`);
  });
  return found;
}
