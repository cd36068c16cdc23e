import type { StockCutting } from '../core/plan/cutting';
import { decimals } from './figures';

/**
 * As what sheets are laid of which a share alone is usable: "Of 1200 × 1000 mm 80 % count as usable, laid as a sheet of 1073 ×
 * 894 mm." undefined where all is laid of them, or their outline.
 * @param shown a length with its unit, where it is not mm
 */
export function usableInWords(
  { stock: { usableShare }, format: { length, width, natural } }: Pick<StockCutting, 'stock' | 'format'>,
  shown = (sides: readonly number[]) => `${sides.map((side) => decimals(side, 0)).join(' × ')} mm`,
): string | undefined {
  if (natural || usableShare === 1) return undefined;
  const whole = Math.sqrt(usableShare);
  const share = decimals(100 * usableShare, 1);
  return `Of ${shown([length / whole, width / whole])} ${share} % count as usable, laid as a sheet of ${shown([length, width])}.`;
}
