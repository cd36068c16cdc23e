import { DEFAULT_RASPING } from '../core/bottom/layer-mix';
import { wedge, type Wedge, type WedgeRule } from '../core/bottom/wedge';
import type { Last } from '../core/last/last';
import type { LastInSize } from '../core/last/last-in-size';
import { type Cell, type Cells, isLeftOut, readChoice } from '../tables/cell';
import { readLengthOr, readNumbers } from './arguments';
import { readLast } from './last-argument';

/** A wedge as WEDGE lists it, with what it is built from. */
export interface WedgeRead extends Wedge {
  readonly last: Last;
  readonly size: number;
  readonly inSize: LastInSize;
  readonly rule: WedgeRule;
}

/** Reads the arguments of WEDGE and builds it. @throws Problem where one cannot be, or there is nothing to raise. */
export function readWedge(
  code: Cell,
  lasts: Cells,
  given: Cells,
  platform?: Cell,
  laying?: Cell,
  skiveTo?: Cell,
  mostRasping?: Cell,
  size?: Cell,
  outlines?: Cells | null,
): WedgeRead {
  const found = readLast(code, lasts, size, outlines);
  const rule: WedgeRule = {
    thicknesses: readNumbers(given, 'thicknesses', { unit: 'mm', least: 0.1, most: 500 }),
    platform: readLengthOr(platform, 'platform', 0, { most: 200 }),
    laying: isLeftOut(laying) ? 'flat' : readChoice(laying, ['flat', 'bent'] as const, { argument: 'laying' }),
    skiveTo: readLengthOr(skiveTo, 'skive_to', 1, { most: 20 }),
    rasping: readLengthOr(mostRasping, 'most_rasping', DEFAULT_RASPING, { most: 30 }),
  };
  return { ...found, rule, ...wedge(found.inSize, rule) };
}
