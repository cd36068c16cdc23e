import type { RunSummary } from '../../core/plan/summary';
import type { PlaceWords } from '../../core/problem';
import { checkInWords } from '../check-in-words';
import { counted } from '../counted';
import { figure, MONEY, type ResultTable, words } from '../result';
import { GENERAL } from '../schema';

/**
 * The run in one line. What is summed is always a number; headings say of which sums that they are of a part.
 * @param of the run; without it, one that is whole
 */
export const summaryTable = (of?: RunSummary): ResultTable<RunSummary> => {
  const part = (unit: string, whole: boolean | undefined) => (whole === false ? `${unit}, part` : unit);
  return {
    name: 'Summary',
    meaning:
      'The run in one line: pairs, what to buy, what it costs, bench hours, the next day due and what comes next',
    columns: [
      figure('Pairs', ({ pairs }) => pairs, {
        ...(of && of.pairs < of.asked && { unit: `of ${of.asked}` }),
        format: GENERAL,
      }),
      figure('To buy', ({ toPay }) => toPay, { unit: part(MONEY, of?.allBought), format: '0.00' }),
      figure('Cost', ({ whole }) => whole, { unit: part(MONEY, of?.allMade), format: '0.00' }),
      figure('Bench', ({ hours }) => hours, { unit: part('h', of?.allMade) }),
      figure('Next due', ({ due }) => due, { format: 'd mmm yyyy' }),
      figure('To put right', ({ putRight }) => putRight, { format: '0' }),
      words('Next step', ({ next }, where) => nextInWords(next, where)),
    ],
  };
};

function nextInWords(next: RunSummary['next'], where: PlaceWords): string {
  switch (next.kind) {
    case 'putRight':
    case 'late': {
      const { check, say } = checkInWords(next.check, { where });
      return inOneLine(next.check.kind === 'problem' ? say : `${next.check.subject}, ${check}: ${say}`);
    }
    case 'buy':
      return `order ${counted(next.sheets, 'sheet')} of ${counted(next.stocks, 'stock')}`;
    case 'cut':
      return 'cut: all sheets are on hand';
    case 'make':
      return 'make: all pairs are cut';
  }
}

/** Letters that the run's sheet has room for beside the summary. */
const ROOM = 66;
const REST = ' … see Checks';

/** A sentence as far as its line goes, cut after what is wrong, else between words; Checks has all of it. */
function inOneLine(sentence: string): string {
  if (sentence.length <= ROOM) return sentence;
  const room = ROOM - REST.length;
  const clause = sentence.lastIndexOf('; ', room);
  const word = sentence.lastIndexOf(' ', room);
  const end = clause > room / 2 ? clause : word > 0 ? word : room;
  return sentence.slice(0, end).replace(/[,;:]$/, '') + REST;
}
