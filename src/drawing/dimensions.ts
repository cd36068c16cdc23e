import { type AreaMark, circle, group, type GroupMark, line, type LineMark, type Marks, marks, text } from './mark';

/** An oblique stroke that ends a dimension line. */
function stroke(x: number, y: number): LineMark {
  return line('narrow', x - 0.7, y + 0.7, x + 0.7, y - 0.7);
}

/** Spans under this have their figure outside, u. */
const SHORT = 5;

/**
 * An upright dimension from y1 (above) to y2, its figure level beside it; a short span has its figure beyond one end, on
 * the line drawn on.
 */
export function upright(
  x: number,
  y1: number,
  y2: number,
  figure: string,
  { side = 'left', beyond = 'below' }: { side?: 'left' | 'right'; beyond?: 'above' | 'below' } = {},
): GroupMark {
  const short = y2 - y1 < SHORT;
  const at = side === 'left' ? -0.9 : 0.9;
  const anchor = side === 'left' ? 'end' : 'start';
  const [from, to] = !short ? [y1, y2] : beyond === 'below' ? [y1, y2 + 4.4] : [y1 - 4.4, y2];
  const figureAt = !short ? (y1 + y2) / 2 + 1.25 : beyond === 'below' ? y2 + 3.9 : y1 - 1.4;
  return group(
    [line('narrow', x, from, x, to), stroke(x, y1), stroke(x, y2), text(x + at, figureAt, figure, 'plain', anchor)],
    { dimension: true },
  );
}

/** A level dimension from x1 to x2, its figure above it, or beside its end where it has no room. */
export function level(y: number, x1: number, x2: number, figure: string): GroupMark {
  const room = x2 - x1 > figure.length * 1.9;
  return group(
    [
      line('narrow', x1, y, room ? x2 : x2 + 1.6, y),
      stroke(x1, y),
      stroke(x2, y),
      room ? text((x1 + x2) / 2, y - 0.8, figure) : text(x2 + 1.6, y + 1.2, figure, 'plain', 'start'),
    ],
    { dimension: true },
  );
}

/** An arrowhead of 2 u at (x, y) that comes from the direction `angle`, radians. */
export function arrowhead(x: number, y: number, angle: number): AreaMark {
  const at = (turn: number) => [x + 2 * Math.cos(angle + turn), y + 2 * Math.sin(angle + turn)] as const;
  return { kind: 'area', rings: [[[x, y], at(-0.2), at(0.2)]], fill: 'ink' };
}

/** A leader from a label to a face (ending in a dot) or to an edge (ending in an arrowhead). */
export function leader(from: readonly [number, number], to: readonly [number, number], end: 'dot' | 'arrow'): Marks {
  const [x, y] = to;
  return marks(
    line('narrow', from[0], from[1], x, y),
    end === 'dot' ? circle(x, y, 0.45, { fill: 'ink' }) : arrowhead(x, y, Math.atan2(from[1] - y, from[0] - x)),
  );
}
