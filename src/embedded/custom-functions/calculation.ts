import { type GridFormulas, rangeOf } from './grid-formulas';
import { cellKey, type GridCell, Messages } from './messages';
import type { Answer } from './result';
import { type CallSite, WaitingCalls } from './waiting-calls';

/** A cell whose formula waits for a call, with that formula's text. */
export interface FormulaSite extends CallSite, GridCell {
  readonly formula: string | undefined;
}

/**
 * What the functions of a workbook share while formulas are worked out, time after time: sentences of those that failed,
 * and calls that have not answered yet.
 */
export class Calculation {
  readonly messages = new Messages();
  readonly waiting: WaitingCalls<FormulaSite, Answer>;
  private readonly calculated = new Set<string>();
  /** Whether formulas have moved since this one began, so that those that wait have not asked again yet. */
  private moved = false;

  /** @param failed is told where the grid could not be given an answer that came late */
  constructor(
    private readonly formulas: GridFormulas,
    failed: (error: unknown) => void,
  ) {
    this.waiting = new WaitingCalls((sites) => formulas.workOut(sites.map(rangeOf)), failed);
  }

  begin(): void {
    this.moved = false;
    this.messages.begin();
    this.waiting.begin();
    this.calculated.clear();
  }

  end(): void {
    this.waiting.end(
      (site) => this.calculated.has(site.key),
      (site) => !this.moved && this.gone(site),
    );
  }

  /** Sentences and waiting calls belong to cells; where formulas move, those that fail or wait are worked out again. */
  formulasMoved(): void {
    if (this.messages.size === 0 && this.waiting.running === 0) return;
    this.moved = true;
    this.messages.clear();
    this.formulas.workOut(this.formulas.failing());
  }

  /** Notes that a cell's formula is being worked out. */
  calculating(cell: GridCell): void {
    this.calculated.add(cellKey(cell));
  }

  /** Text of a cell's formula. */
  formulaAt(cell: GridCell): string | undefined {
    return this.formulas.at(cell);
  }

  /** Address of a cell with its sheet, for functions that ask for it. */
  addressOf(cell: GridCell): string {
    return this.formulas.address(cell);
  }

  /** Name of a sheet, as long as it is there. */
  sheetName(of: Pick<GridCell, 'unitId' | 'sheetId'>): string | undefined {
    return this.formulas.sheet(of)?.getName();
  }

  private gone(site: FormulaSite): boolean {
    const formula = this.formulas.at(site);
    return formula === undefined || formula !== site.formula;
  }
}
