import { type Marks, text } from '../mark';
import type { Block } from './flow';
import { wrapped } from './wrapped';

/** White between blocks. */
export function gap(height: number): Block {
  return { height, draw: () => [] };
}

/** A heading, kept with what follows. */
export function heading(words: string): Block {
  return { height: 8, keep: 14, draw: (x, y) => [text(x, y + 5.6, words, 'bold', 'start', { size: 5 })] };
}

/** Words as wide as the page allows, in as many lines as they need. */
export function paragraph(words: string, width: number, size = 3.2, quiet = false): Block {
  const lines = wrapped(words, width, size);
  const step = size * 1.35;
  return {
    height: lines.length * step + 1,
    draw: (x, y) =>
      lines.map((one, i) => text(x, y + size + i * step, one, quiet ? 'quiet' : 'plain', 'start', { size })),
  };
}

/** A drawing of a size, moved to where it stands. */
export function drawingBlock(height: number, draw: (x: number, y: number) => Marks): Block {
  return { height, draw };
}
