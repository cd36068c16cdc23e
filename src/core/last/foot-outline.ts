import { letOutSmooth } from '../geometry/let-out-smooth';
import { mirror } from '../geometry/mirror';
import type { Ring } from '../geometry/ring';

export type FootSide = 'left' | 'right';

/** A last's outline for one foot, let out all round. @param outline of the left foot, as all are @param distance mm */
export function footOutline(outline: Ring, foot: FootSide, distance: number): Ring {
  const out = letOutSmooth(outline, distance);
  return foot === 'left' ? out : mirror(out);
}
