import { LIMIT_ITEMS } from '../../core/plan/limits';
import type { WordsOf } from './words-of';

/** What is said of lasts and their measures. */
export const lastWords: WordsOf<
  | 'plainModel'
  | 'misfit'
  | 'modelAgainstGaps'
  | 'gapsAgainstHeel'
  | 'twist'
  | 'widths'
  | 'farFromBase'
  | 'lasts'
  | 'lastsUnknown'
  | 'daysOnLast'
> = {
  plainModel: (_, { size }) => ({
    check: `${LIMIT_ITEMS.plainModel}, mm`,
    say: `${size}the plain curve serves heels up to the wanted height: measure the gaps every 20 mm, inside and outside, and enter them in Outlines`,
  }),
  misfit: (check, { size }) => ({
    check: `${LIMIT_ITEMS.misfit}, mm`,
    say:
      check.verdict === 'holds'
        ? `${size}the curve passes the waist height as measured`
        : `${size}the curve misses the waist height by so much: measure again, or measure the gaps every 20 mm`,
  }),
  modelAgainstGaps: () => ({
    check: `${LIMIT_ITEMS.misfit}, mm`,
    wanted: undefined,
    say: 'the measured gaps are used; the plain curve would be off by up to so much',
  }),
  gapsAgainstHeel: () => ({
    check: 'Gap at the back, mm',
    say: 'the first gap is not the heel height that Lasts gives: prop the last at its heel height and measure again, or correct the heel height',
  }),
  twist: () => ({
    check: `${LIMIT_ITEMS.twist}, mm`,
    say: 'inside and outside gaps differ; lifts are fitted to their mean, so rasp them slanting across',
  }),
  widths: (check) => ({
    check: 'Widths of the last, mm',
    say: `the ${check.of} is wider than the tread: look whether the widths are in each other’s columns`,
  }),
  farFromBase: (check) => ({
    check: 'Size and last, mm',
    say: `size ${check.size} is graded far from the last as measured: look at the size, at the base size and its system, or measure a last nearer to it`,
  }),
  lasts: (check) => ({
    check: 'Lasts, pairs',
    say: `size ${check.size} has no pair on hand: enter it in Lasts or move the pairs to another size`,
  }),
  lastsUnknown: () => ({
    check: 'Lasts, pairs',
    say: 'enter the pairs on hand in Lasts; without them the batches are not known',
  }),
  daysOnLast: (check, { size }) => ({
    check: 'Days on last',
    say: `${check.style}, ${size}its steps keep a pair on its last for so many working days${check.nights > 0 ? `, ${check.nights} ${check.nights === 1 ? 'night' : 'nights'} of drying or curing among them` : ''}: enter as many or more, or the batches come out too soon`,
  }),
};
