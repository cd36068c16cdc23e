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
  readonly calculation: number;
  readonly code: string;
  readonly sentence: string;
}

/**
 * What the errors in cells mean. The formula engine carries only an error's code, so the sentences stand here, by the
 * cell whose formula failed, and hold good until that formula is worked out again.
 */
export class Messages {
  private readonly byCell = new Map<string, Message>();
  /** How many times formulas have been worked out. */
  private calculation = 0;

  get size(): number {
    return this.byCell.size;
  }

  /** Formulas are worked out anew: a sentence from before makes room for a new one. */
  begin(): void {
    this.calculation++;
  }

  /** Notes why a cell's formula failed. The first reason stays: what follows from it says less. */
  note(cell: GridCell, code: string, sentence: string): void {
    const key = cellKey(cell);
    if (this.byCell.get(key)?.calculation === this.calculation) return;
    this.byCell.set(key, { calculation: this.calculation, code, sentence });
  }

  /** Takes back what was noted before, for a call that went well. */
  passed(cell: GridCell): void {
    const key = cellKey(cell);
    const message = this.byCell.get(key);
    if (message && message.calculation !== this.calculation) this.byCell.delete(key);
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
