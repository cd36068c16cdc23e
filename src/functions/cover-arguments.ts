import type { CoverStrip } from '../core/bottom/cover-strip';
import { wedgeCover } from '../core/bottom/wedge-cover';
import type { Last } from '../core/last/last';
import type { LastInSize } from '../core/last/last-in-size';
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
  const rule = {
    turnOver: over,
    turnUnder: under,
    platform,
    letOut: readLengthOr(letOut, 'let_out', 0, { least: -20, most: 100 }),
  };
  return { last, inSize, over, under, platform, strip: wedgeCover(inSize, rule) };
}
