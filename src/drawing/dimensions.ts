import { f, line, path, text } from './svg';

/** An oblique stroke that ends a dimension line. */
function stroke(x: number, y: number): string {
  return line('n', x - 0.7, y + 0.7, x + 0.7, y - 0.7);
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
): string {
  const short = y2 - y1 < SHORT;
  const at = side === 'left' ? -0.9 : 0.9;
  const anchor = side === 'left' ? 'end' : 'start';
  const [from, to] = !short ? [y1, y2] : beyond === 'below' ? [y1, y2 + 4.4] : [y1 - 4.4, y2];
  const figureAt = !short ? (y1 + y2) / 2 + 1.25 : beyond === 'below' ? y2 + 3.9 : y1 - 1.4;
  return line('n', x, from, x, to) + stroke(x, y1) + stroke(x, y2) + text(x + at, figureAt, figure, '', anchor);
}

/** A level dimension from x1 to x2, its figure above it, or beside its end where it has no room. */
export function level(y: number, x1: number, x2: number, figure: string): string {
  const room = x2 - x1 > figure.length * 1.9;
  return (
    line('n', x1, y, room ? x2 : x2 + 1.6, y) +
    stroke(x1, y) +
    stroke(x2, y) +
    (room ? text((x1 + x2) / 2, y - 0.8, figure) : text(x2 + 1.6, y + 1.2, figure, '', 'start'))
  );
}

/** An arrowhead of 2 u at (x, y) that comes from the direction `angle`, radians. */
export function arrowhead(x: number, y: number, angle: number): string {
  const at = (turn: number) => `${f(x + 2 * Math.cos(angle + turn))} ${f(y + 2 * Math.sin(angle + turn))}`;
  return path('solid', `M${f(x)} ${f(y)}L${at(-0.2)}L${at(0.2)}Z`);
}

/** A leader from a label to a face (ending in a dot) or to an edge (ending in an arrowhead). */
export function leader(from: readonly [number, number], to: readonly [number, number], end: 'dot' | 'arrow'): string {
  const [x, y] = to;
  const head =
    end === 'dot'
      ? `<circle class="solid" cx="${f(x)}" cy="${f(y)}" r="0.45"/>`
      : arrowhead(x, y, Math.atan2(from[1] - y, from[0] - x));
  return line('n', from[0], from[1], x, y) + head;
}
