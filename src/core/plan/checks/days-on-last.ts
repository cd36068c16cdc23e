import { daysOf } from '../../steps/making';
import { fold } from '../codes';
import { workOf } from '../cost/cost';
import { ratesOf } from '../cost/rates';
import type { PlanInput } from '../inputs';
import type { SizeRun, StyleRun } from '../runs';
import type { Check } from './check';
import { worst, worstSize } from './worst';

/** Days closer than this are one. */
const ALIKE = 0.05;

/**
 * Lasts on which the steps of a style keep a pair longer than the days given, the style that stays longest: batches are
 * counted by those days. Where no hours of a day are given, nights alone are counted.
 */
export function daysOnLast(styles: readonly StyleRun[], input: Pick<PlanInput, 'rates' | 'stock'>): readonly Check[] {
  const hours = ratesOf(input.rates).one('hours a day', []);
  const needs = styles.flatMap((run) => {
    const work = workOf(run, input);
    const days = (size: SizeRun): number => {
      const stay = work.get(size)?.onLast;
      if (!stay) return 0;
      return hours === undefined ? stay.nights : daysOf(stay, stay.minutes, 60 * hours);
    };
    const longest = worstSize(run.sizes, days);
    const stay = longest && work.get(longest.sizeRun)?.onLast;
    return longest && stay ? [{ run, stay, size: longest.size, days: days(longest.sizeRun) }] : [];
  });
  const lasts = new Map(needs.map(({ run }) => [fold(run.last.code), run.last]));
  return [...lasts].flatMap(([code, last]): readonly Check[] => {
    const most = worst(
      needs.filter(({ run }) => fold(run.last.code) === code),
      ({ days }) => days,
    );
    if (!most || most.days < last.daysOnLast + ALIKE) return [];
    const { run, stay, size, days } = most;
    const { nights } = stay;
    return [
      {
        kind: 'daysOnLast',
        subject: last.code,
        verdict: 'lookAt',
        found: last.daysOnLast,
        wanted: days,
        style: run.style.code,
        nights,
        size,
      },
    ];
  });
}
