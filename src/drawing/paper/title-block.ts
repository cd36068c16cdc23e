import { line, type Marks, rectangle, text } from '../mark';
import { widthOf } from './letter-width';

/** A ruled box: what it is about, what it says. */
export interface TitleBox {
  readonly head: string;
  readonly say: string;
  /** Share of the width. */
  readonly share: number;
}

/** Height of a title block, mm. */
export const TITLE_HEIGHT = 11;

/** Ruled boxes side by side; lettering that has no room is set smaller, and never left off. */
export function titleBlock(x: number, y: number, width: number, boxes: readonly TitleBox[]): Marks {
  const shares = boxes.reduce((sum, { share }) => sum + share, 0);
  let at = x;
  const marks = boxes.flatMap(({ head, say, share }, i): Marks => {
    const [from, wide] = [at, (width * share) / shares];
    at += wide;
    const size = fitted(say, wide - 3, i === 0 ? 4.5 : 4);
    return [
      ...(i > 0 ? [line('narrow', from, y, from, y + TITLE_HEIGHT)] : []),
      text(from + 1.5, y + 3.4, head, 'quiet', 'start', { size: 2.5 }),
      text(from + 1.5, y + 9, say, i === 0 ? 'bold' : 'plain', 'start', { size }),
    ];
  });
  return [rectangle(x, y, width, TITLE_HEIGHT, { pen: 'wide' }), ...marks];
}

/** The size, at most `size`, in which words have room, mm. */
export function fitted(words: string, room: number, size: number): number {
  return Math.min(size, (size * room) / Math.max(room, widthOf(words, size, true)));
}
