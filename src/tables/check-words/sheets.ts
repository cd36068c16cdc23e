import { LIMIT_ITEMS } from '../../core/plan/limits';
import { formatName } from '../../core/stock/offer';
import { PART_WORDS } from '../words';
import type { WordsOf } from './words-of';

/** What is said of sheets, and of how they are laid. */
export const sheetWords: WordsOf<
  | 'leatherPairs'
  | 'leatherAnyWay'
  | 'measuredApart'
  | 'thicknessFar'
  | 'leftOnHand'
  | 'layoutIgnored'
  | 'strayLayout'
  | 'layoutUsed'
  | 'strayOffcut'
  | 'strayOffer'
  | 'offcutsUsed'
  | 'pairsCut'
> = {
  leatherPairs: (check) => ({
    check: `${LIMIT_ITEMS.pairSubstance}, mm`,
    say:
      check.pairs === 'anywhere'
        ? `cut the ${PART_WORDS[check.part].toLowerCase()}s of a pair from like places along the backbone, within so much of one substance: choose it under Pairs in Bottom stock`
        : `the ${PART_WORDS[check.part].toLowerCase()}s of a pair are laid ${check.pairs}; keep them within so much of one substance`,
  }),
  leatherAnyWay: ({ part }) => ({
    check: 'Direction',
    say: `${PART_WORDS[part].toLowerCase()}s may lie any way: leather soles, insoles and welts are cut along the backbone; choose "end for end" under Direction in Bottom stock`,
  }),
  measuredApart: () => ({
    check: 'Thickness, mm',
    say: 'the measured thickness counts, and it is not what the sheet is sold as: measure again, or correct one of the two',
  }),
  thicknessFar: ({ material, part, found, wanted }) => ({
    check: 'Thickness, mm',
    say: `${part ? `${PART_WORDS[part].toLowerCase()}s are seldom` : `${material} is seldom sold`} ${found < wanted ? 'thinner' : 'thicker'} than that: look at Thick in Bottom stock, where a point may lack, and leave it if the sheet measures so`,
  }),
  leftOnHand: ({ sheets, bought, ...sheet }) => ({
    check: 'On hand',
    say: `${sheets} on hand of ${formatName(sheet)} ${sheets === 1 ? 'stays' : 'stay'} uncut while ${bought} of another format ${bought === 1 ? 'is' : 'are'} bought: no layout with ${sheets === 1 ? 'it' : 'them'} that was tried costs less`,
  }),
  layoutIgnored: (check) => ({
    check: 'Layouts',
    say: `the layout written there is not used: ${check.reason}; search again, or delete its rows`,
  }),
  strayLayout: ({ known, subject }) => ({
    check: 'Layouts',
    say: known
      ? 'the layout written there is not used: nothing is cut from it in this run; delete its rows'
      : `the layout written there is not used: ${subject} is not in Bottom stock; correct the code, or delete its rows`,
  }),
  layoutUsed: () => ({
    check: 'Layouts, sheets',
    say: 'the layout found by the search is used, checked anew',
  }),
  strayOffcut: (check) => ({
    check: 'Offcut',
    say: `no piece lies on it: ${check.stock} is not in Bottom stock; correct the code of its stock`,
  }),
  strayOffer: (check) => ({
    check: 'Offer',
    say: `nothing is bought of it: ${check.stock} is not in Bottom stock; correct the code of its stock`,
  }),
  pairsCut: ({ found, wanted }) => ({
    check: 'Cut, pairs',
    say: `${found} of ${wanted} pairs are cut: no sheets are planned for them`,
  }),
  offcutsUsed: (check) => ({
    check: 'Offcuts',
    say: `pieces lie on ${check.codes.join(', ')}: take it before a whole sheet, measured and looked over`,
  }),
};
