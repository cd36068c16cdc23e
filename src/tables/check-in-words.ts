import type { Check, CheckKind, CheckOf } from '../core/plan/checks/check';
import { type PlaceWords, placeInWords } from '../core/problem';
import { bottomWords } from './check-words/bottom';
import { cellWords } from './check-words/cells';
import { lastWords } from './check-words/lasts';
import { moneyWords } from './check-words/money';
import { sheetWords } from './check-words/sheets';
import type { CheckWords, WordsOf, Writing } from './check-words/words-of';

const WORDS: WordsOf<CheckKind> = { ...bottomWords, ...lastWords, ...sheetWords, ...moneyWords, ...cellWords };

const inMm = (value: number) => String(Number(value.toFixed(1)));

/** A check as the maker reads it; the sheet has mm, and places by their tables. */
export function checkInWords(
  check: Check,
  { mm = inMm, where = placeInWords }: { readonly mm?: Writing['mm'] | undefined; readonly where?: PlaceWords } = {},
): CheckWords {
  const size = 'size' in check && check.size !== undefined ? `size ${check.size}: ` : '';
  return {
    found: 'found' in check ? check.found : undefined,
    wanted: 'wanted' in check ? check.wanted : undefined,
    ...said(check.kind, check, { mm, where, size }),
  };
}

function said<Kind extends CheckKind>(kind: Kind, check: CheckOf<Kind>, writing: Writing): CheckWords {
  return WORDS[kind](check, writing);
}
