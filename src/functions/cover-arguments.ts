import type { CoverStrip } from '../core/bottom/cover-strip';
import { wedgeCover } from '../core/bottom/wedge-cover';
import type { Last } from '../core/last/last';
import type { LastInSize } from '../core/last/last-in-size';
import type { Cell, Cells } from '../tables/cell';
import { readLength, readLengthOr } from './arguments';
import { readLast } from './last-argument';
import { readLetOut } from './lasts-arguments';

/** The strip that COVERSTRIP lists, with the measures that it is made of, mm. */
export interface Cover {
  readonly last: Last;
  readonly size: number;
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
  const found = readLast(code, lasts, size, outlines);
  const over = readLength(turnOver, 'turn_over', { most: 100 });
  const under = readLength(turnUnder, 'turn_under', { most: 100 });
  const platform = readLengthOr(platformUnder, 'platform', 0, { most: 200 });
  const rule = {
    turnOver: over,
    turnUnder: under,
    platform,
    letOut: readLetOut(letOut),
  };
  return { ...found, over, under, platform, strip: wedgeCover(found.inSize, rule) };
}
