/** A cell of a workbook in the grid. Rows and columns count from 0. */
export interface GridCell {
  readonly unitId: string;
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
}

/** Tells cells apart. */
export function cellKey({ unitId, sheetId, row, column }: GridCell): string {
  return `${unitId}|${sheetId}|${row}|${column}`;
}

interface Message {
  readonly round: number;
  readonly code: string;
  readonly sentence: string;
}

/**
 * What the errors in cells mean. The formula engine carries only an error's code, so the sentences stand here, by the
 * cell whose formula failed, and hold good until that formula is worked out again.
 */
export class Messages {
  private readonly byCell = new Map<string, Message>();
  private round = 0;

  get size(): number {
    return this.byCell.size;
  }

  /** Begins a round of calculation: a sentence from an earlier one makes room for a new one. */
  beginRound(): void {
    this.round++;
  }

  /** Notes why a cell's formula failed. The first reason in a round stays: what follows from it says less. */
  note(cell: GridCell, code: string, sentence: string): void {
    const key = cellKey(cell);
    if (this.byCell.get(key)?.round !== this.round) this.byCell.set(key, { round: this.round, code, sentence });
  }

  /** Takes back what an earlier round noted, for a call that went well. */
  passed(cell: GridCell): void {
    const key = cellKey(cell);
    const message = this.byCell.get(key);
    if (message && message.round !== this.round) this.byCell.delete(key);
  }

  /** The sentence for a cell that shows an error's code. */
  at(cell: GridCell, code: string): string | undefined {
    const message = this.byCell.get(cellKey(cell));
    return message?.code === code ? message.sentence : undefined;
  }

  /** Forgets everything: cells have moved, and what fails is to be worked out again. */
  clear(): void {
    this.byCell.clear();
  }
}
