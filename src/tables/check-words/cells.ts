import type { NotSummed } from '../../core/plan/checks/check';
import type { Place, PlaceWords } from '../../core/problem';
import { counted } from '../counted';
import type { WordsOf } from './words-of';

/** What is said of cells that are not read as they stand. */
export const cellWords: WordsOf<'problem' | 'notSummed' | 'notRead' | 'doubtfulNoughts' | 'unreadHeading'> = {
  problem: (check, { where }) => ({ check: check.problem.place.table ?? 'Input', say: check.problem.inWords(where) }),
  notSummed: (check, { where }) => ({ check: 'Sums', say: notSummedInWords(check, where) }),
  notRead: (check, { where }) => ({
    check: 'Rows',
    say: `${where({ argument: check.subject, table: check.subject, row: check.row })}: what stands from here down is below the table, and counts nothing: insert rows within the table and move it there`,
  }),
  doubtfulNoughts: (check) => ({ check: 'Blank cells', say: doubtfulInWords(check.headings) }),
  unreadHeading: (check) => ({
    check: 'Heading',
    say: `the column "${check.heading.replace(/\s+/g, ' ')}" is not read: correct the heading, or leave it if it is a note of yours`,
  }),
};

function notSummedInWords(
  { subject: table, row, heading, found, missing }: NotSummed & { readonly subject: string },
  where: PlaceWords,
): string {
  const place: Place = {
    argument: table,
    table,
    ...(row !== undefined && { row }),
    ...(heading !== undefined && { column: heading }),
  };
  if (missing) {
    const others = missing.length > 1 ? `, and ${counted(missing.length - 1, 'other')} in line with it` : '';
    return `${where(place)}: the sum is missing${others}: copy the formula of another there`;
  }
  if (found !== undefined)
    return `${where(place)}: the sum is not that of the sizes: copy the formula of another row there`;
  return row === undefined
    ? `${where(place)}: the size is planned, but is to the right of the sums, which go without it: move the column to their left`
    : `${where(place)}: the row is planned, but is below the sums, which go without it: move it above them`;
}

/** More headings than this are counted. */
const MOST_NAMED = 4;

function doubtfulInWords(headings: readonly string[]): string {
  const named = headings.slice(0, MOST_NAMED);
  const others = headings.length - named.length;
  const where = named.join(', ') + (others === 0 ? '' : ` and ${others} more`);
  return `Excel hands blank cells over as 0, so 0 counts as blank under ${where}: for 0 to count there, write IF(range="","",range) for this table’s range in the formula`;
}
