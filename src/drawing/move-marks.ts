import { direction } from '../core/geometry/moved';
import type { Point } from '../core/geometry/ring';
import type { Mark, Marks } from './mark';

/** Marks turned about the upper left origin, counter-clockwise as they are seen, then moved by (x, y). */
export function movedMarks(marks: Marks, degrees: number, x = 0, y = 0): Marks {
  if (degrees === 0 && x === 0 && y === 0) return marks;
  const { sin, cos } = direction(degrees);
  const put = ([px, py]: Point): Point => [px * cos + py * sin + x, py * cos - px * sin + y];
  const moved = (mark: Mark): Mark => {
    switch (mark.kind) {
      case 'line':
        return { ...mark, points: mark.points.map(put) };
      case 'area':
        return { ...mark, rings: mark.rings.map((ring) => ring.map(put)) };
      case 'circle':
        return { ...mark, at: put(mark.at) };
      case 'text':
        return { ...mark, at: put(mark.at), turn: (mark.turn ?? 0) + degrees };
      case 'group':
        return { ...mark, marks: mark.marks.map(moved), clip: mark.clip?.map(put) };
    }
  };
  return marks.map(moved);
}

/** Words that are turned by this come to stand upright on a page on which their piece is turned by `turn`, degrees. */
export function readable(own: number, turn: number): number {
  const seen = (((own + turn) % 360) + 360) % 360;
  return seen > 90.5 && seen <= 270.5 ? own + 180 : own;
}
