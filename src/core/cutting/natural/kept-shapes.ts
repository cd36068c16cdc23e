import { Fingerprint } from '../../fingerprint';
import { ringContent } from '../../geometry/ring-content';
import { Memo } from '../../memo';
import { Memory } from '../../memory';
import { shared } from '../../shared';
import type { NaturalSheet } from '../sheet/natural-sheet';
import type { Piece } from '../sheet/piece';
import type { SheetFormat } from '../sheet/sheet';
import { Shapes } from './shapes';

/** Bytes that shapes may hold when nothing is laid with them. */
const MOST = 24e6;

const kept = new Memo<Shapes>(
  shared('shapes of pieces on natural sheets', () => new Memory(MOST)),
  'shapes',
  ({ bytes }) => bytes,
);

/** Shapes of pieces on sheets: those of the last time where outlines, qualities and sheets are the same, however many pieces. */
export class KeptShapes {
  readonly shapes: Shapes;
  private readonly key: string;

  /** @param spare kept clear all round beyond what is asked for, mm */
  constructor(pieces: readonly Piece[], format: SheetFormat, sheet: NaturalSheet, spare: number) {
    const { length, width, knifeRoom, edgeTrim } = format;
    const print = new Fingerprint().text(JSON.stringify([length, width, knifeRoom, edgeTrim, sheet, spare]));
    for (const { ring, quality = 0 } of pieces) print.text(ringContent(ring)).number(quality);
    this.key = print.toString();
    this.shapes = kept.find(this.key) ?? new Shapes(pieces, format, sheet, spare);
  }

  /** Keeps them with all that has been worked out of them by now. */
  keep(): void {
    if (this.shapes.bytes <= MOST) kept.keep(this.key, this.shapes);
  }
}
