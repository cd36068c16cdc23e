import type { Check } from '../../core/plan/checks/check';
import { checkInWords } from '../check-in-words';
import { figure, type ResultTable, words } from '../result';
import { VERDICT_WORDS } from '../words';

/** What holds, what to look at and what to put right. */
export const checksTable: ResultTable<Check> = {
  name: 'Checks',
  meaning: 'What to put right, what to look at and what holds',
  columns: [
    words('Subject', ({ subject }) => subject),
    words('Check', (check) => checkInWords(check).check, { width: 184 }),
    figure('Found', (check) => checkInWords(check).found, { format: '0.0' }),
    figure('Wanted', (check) => checkInWords(check).wanted, { format: '0.0' }),
    words('Result', ({ verdict }) => VERDICT_WORDS[verdict], { width: 84 }),
    words('What to do', (check, where) => checkInWords(check, { where }).say, {
      width: 460,
      wraps: 'where rows follow',
    }),
  ],
};
