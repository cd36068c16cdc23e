import { adhesiveForArea } from '../../steps/adhesive-for-area';
import type { Rates } from './rates';

/** What the faces of nailed lifts are pasted with, as Costs and times has it under For. */
export const PASTE = 'paste';

/** What a pair costs beside its stock; money in the sheet's own. */
export interface BesideStock {
  /** ml; undefined where no coverage is given. */
  readonly adhesive: number | undefined;
  /** Of nailed lifts, ml, not in the adhesive; undefined where no coverage is given for paste. */
  readonly paste: number | undefined;
  /** Of both. */
  readonly adhesiveCost: number;
  readonly sundries: number;
  /** At the bench, as its steps have it. */
  readonly minutes: number;
  readonly work: number;
}

/** Amounts of a pair. */
interface Taken {
  /** ml */
  readonly adhesive?: number | undefined;
  /** Faces that are pasted, mm². */
  readonly pasted?: number | undefined;
  readonly minutes?: number | undefined;
}

/** Adhesive, paste, sundries and work of a pair at a style's rates. */
export function besideStock(rates: Rates, code: string, { adhesive, pasted = 0, minutes = 0 }: Taken): BesideStock {
  const paste = pasteOf(rates, pasted);
  const price = (...scopes: readonly string[]) => rates.one('money a litre', scopes) ?? 0;
  return {
    adhesive,
    paste,
    adhesiveCost: ((adhesive ?? 0) * price(code) + (paste ?? 0) * price(PASTE, code)) / 1000,
    sundries: rates.sum('money a pair', [code]),
    minutes,
    work: (minutes / 60) * (rates.one('money an hour', [code]) ?? 0),
  };
}

/** Paste for so much of faces, ml, one coat on each (common practice); undefined where no coverage is given for it. */
export function pasteOf(rates: Rates, pasted: number): number | undefined {
  if (pasted === 0) return 0;
  const coverage = rates.own('m² a litre', PASTE);
  return coverage === undefined ? undefined : adhesiveForArea(pasted, 1, coverage);
}
