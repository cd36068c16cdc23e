import type { Box, Point } from '../../core/geometry/ring';
import { line, type LineMark, type Marks, type Pen } from '../mark';

/** What is shorter is no line any more, mm. */
const LEAST = 1;

/**
 * An upright or level line as far as it does not lie under lettering: files have no ground that would hide it there.
 * @param under box of the lettering; without it the line is whole
 */
export function strokeBeside(
  under: Box | undefined,
  pen: Pen,
  [x1, y1]: Point,
  [x2, y2]: Point,
  more: Pick<LineMark, 'layer'>,
): Marks {
  const whole = [line(pen, x1, y1, x2, y2, more)];
  if (!under) return whole;
  const upright = x1 === x2;
  const { left, right, bottom, top } = under;
  const [across, least, most] = upright ? [x1, left, right] : [y1, bottom, top];
  const [from, to] = upright ? [Math.min(y1, y2), Math.max(y1, y2)] : [Math.min(x1, x2), Math.max(x1, x2)];
  const [low, high] = upright ? [bottom, top] : [left, right];
  if (across <= least || across >= most || high <= from || low >= to) return whole;
  const part = (a: number, b: number): Marks =>
    b - a < LEAST ? [] : [upright ? line(pen, x1, a, x1, b, more) : line(pen, a, y1, b, y1, more)];
  return [...part(from, low), ...part(high, to)];
}
