import { type CoverStrip, coverStrip } from '../core/bottom/cover-strip';
import { wedgeFront } from '../core/bottom/flat-lifts';
import { wedgeEdge } from '../core/bottom/wedge-edge';
import { cut } from '../core/geometry/cut';
import { letOutSmooth } from '../core/geometry/let-out-smooth';
import { groundOutline } from '../core/last/ground-outline';
import type { Last } from '../core/last/last';
import type { LastInSize } from '../core/last/last-in-size';
import { atGround } from '../core/last/profile';
import { Problem } from '../core/problem';
import type { Cell, Cells } from '../tables/cell';
import { readLength, readLengthOr } from './arguments';
import { readLast } from './last-argument';

/** The strip that COVERSTRIP lists, with the measures that it is made of, mm. */
export interface Cover {
  readonly last: Last;
  readonly inSize: LastInSize;
  readonly over: number;
  readonly under: number;
  readonly platform: number;
  readonly strip: CoverStrip;
}

/** Reads the arguments of COVERSTRIP and unrolls the edge. @throws Problem where one cannot be, or there is no edge. */
export function readCover(
  code: Cell,
  lasts: Cells,
  turnOver: Cell,
  turnUnder: Cell,
  platformUnder?: Cell,
  letOut?: Cell,
  size?: Cell,
  outlines?: Cells | null,
): Cover {
  const { last, inSize } = readLast(code, lasts, size, outlines);
  const over = readLength(turnOver, 'turn_over', { most: 100 });
  const under = readLength(turnUnder, 'turn_under', { most: 100 });
  const platform = readLengthOr(platformUnder, 'platform', 0, { most: 200 });
  const { profile, heelHeight } = inSize;
  const ring = letOutSmooth(
    groundOutline(inSize.outline, profile),
    readLengthOr(letOut, 'let_out', 0, { least: -20, most: 100 }),
  );
  if (platform === 0 && heelHeight === 0) {
    throw new Problem('unavailable', { argument: 'last' }, 'its heel height is 0 and there is no platform to cover');
  }
  const front = heelHeight > 0 ? wedgeFront(profile, 1) : 0;
  const base = platform > 0 ? ring : cut(ring, ([x]) => front - x);
  const wedgeHeight = (x: number) => atGround(profile, x).z;
  const { path, heightAt } = wedgeEdge(base, { front, wedgeHeight, platform });
  return { last, inSize, over, under, platform, strip: coverStrip(path, heightAt, over, under) };
}
