import { Fingerprint } from '../../fingerprint';
import { ringContent } from '../../geometry/ring-content';
import { Memo } from '../../memo';
import { Memory } from '../../memory';
import { shared } from '../../shared';
import type { NaturalSheet } from '../sheet/natural-sheet';
import type { Piece } from '../sheet/piece';
import type { SheetFormat } from '../sheet/sheet';
import { LaidBefore } from './laid-before';
import type { LaidUnit } from './lay-out';
import { Shapes } from './shapes';

/** Bytes that shapes may hold when nothing is laid with them. */
const MOST = 24e6;

/** Bytes that what has been laid with some shapes may hold: more is forgotten when nothing is laid with them. */
const MOST_LAID = 4e6;

interface Kept {
  readonly shapes: Shapes;
  readonly laid: LaidBefore<LaidUnit>;
}

const kept = new Memo<Kept>(
  shared('shapes of pieces on natural sheets', () => new Memory(MOST)),
  'shapes',
  ({ shapes, laid }) => shapes.bytes + laid.bytes,
);

/**
 * Shapes of pieces on sheets, and what has been laid with them: those of the last time where outlines, qualities and sheets
 * are the same, however many pieces.
 */
export class KeptShapes implements Kept {
  readonly shapes: Shapes;
  readonly laid: LaidBefore<LaidUnit>;
  private readonly key: string;

  /** @param spare kept clear all round beyond what is asked for, mm */
  constructor(pieces: readonly Piece[], format: SheetFormat, sheet: NaturalSheet, spare: number) {
    const { length, width, knifeRoom, edgeTrim } = format;
    const print = new Fingerprint().text(JSON.stringify([length, width, knifeRoom, edgeTrim, sheet, spare]));
    for (const { ring, quality = 0 } of pieces) print.text(ringContent(ring)).number(quality);
    this.key = print.toString();
    const known = kept.find(this.key);
    this.shapes = known?.shapes ?? new Shapes(pieces, format, sheet, spare);
    this.laid = known?.laid ?? new LaidBefore();
  }

  /** Keeps them with all that has been worked out of them by now. */
  keep(): void {
    const { key, shapes, laid } = this;
    if (laid.bytes > MOST_LAID) laid.forget();
    if (shapes.bytes + laid.bytes <= MOST) kept.keep(key, { shapes, laid });
  }
}
