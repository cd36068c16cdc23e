import { Problem } from '../../problem';

/** From how many pairs buying pays, and what a bought pair saves. */
export interface BreakEven {
  readonly pairs: number;
  readonly saving: number;
}

/**
 * Pairs from which buying finished units costs no more than building: ⌈tooling / (make − buy)⌉, and no fewer than the
 * least order (derived).
 * @param tooling for all sizes together; make and buy for one pair, in the same money
 * @throws Problem where a bought pair is no cheaper, so that buying never pays.
 */
export function breakEven(tooling: number, make: number, buy: number, minimum = 0): BreakEven {
  if (buy >= make) {
    throw new Problem(
      'unavailable',
      { argument: 'buy' },
      `a bought pair at ${buy} is no cheaper than a built one at ${make}, so buying never pays`,
    );
  }
  const saving = make - buy;
  return { pairs: Math.max(minimum, Math.ceil(tooling / saving - 1e-9)), saving };
}
