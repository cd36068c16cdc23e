import { HEADINGS, type Part } from '../core/bottom/layer';
import type { Check, CheckKind, CheckOf } from '../core/plan/checks/check';
import type { WhyUnread } from '../core/plan/unused';
import { INPUT_TABLES } from './input-tables';

/** Where the maker changes something: in a table, the row that a code heads or of a number, under a heading. */
export interface InputPlace {
  /** The table's name. */
  readonly table: string;
  readonly code?: string | undefined;
  /** Counted from 1 below the headings. */
  readonly row?: number | undefined;
  readonly heading?: string | undefined;
  /** Its column, counted from 0, where no heading tells it. */
  readonly at?: number | undefined;
  /** Whether the row is one below the table. */
  readonly below?: boolean | undefined;
}

const { styles, lasts, pairage, stock, rates, layouts, offcuts, offers } = INPUT_TABLES;

/** The code of a style's last. */
type LastOf = (style: string) => string | undefined;

type PlaceOf<Kind extends CheckKind> = (check: CheckOf<Kind>, lastOf: LastOf) => InputPlace;

type About = Pick<Check, 'subject'>;

/** In the row of a table that has the check's subject as its code. */
const own = (table: string, heading: string) => (check: About) => ({ table, code: check.subject, heading });

/** In the row of the style that a check is about. */
const style = (heading: string) => own(styles.name, heading);

/** In the row of the last that a check is about, or of its style's last. */
const last = (heading: string) => (check: About, lastOf: LastOf) => ({
  table: lasts.name,
  code: lastOf(check.subject) ?? check.subject,
  heading,
});

const rate = () => ({ table: rates.name, heading: 'Value' });

/** What to change in a row of Costs and times that is not read. */
export const UNREAD_AT: Readonly<Record<WhyUnread, string>> = {
  scope: 'For',
  'styles alone': 'For',
  'all alone': 'For',
  twice: 'Unit',
  step: 'Step',
};

const ofPart = (check: { readonly part: Part; readonly subject: string }) => style(HEADINGS[check.part])(check);

const PLACES: { readonly [Kind in CheckKind]: PlaceOf<Kind> } = {
  problem: (check) => {
    const { argument, table, row, column, headings } = check.problem.place;
    const known = Object.values(INPUT_TABLES).find((one) => one.argument === argument);
    return { table: known?.name ?? table ?? argument, row: headings ? 0 : row, heading: column, at: headings?.at };
  },
  heelControl: style('Last'),
  rasping: style('Most rasping'),
  mixLeap: (check) =>
    check.stock === undefined
      ? style('Most rasping')(check)
      : { table: stock.name, code: check.stock, heading: 'Most rasping' },
  leftLying: ofPart,
  heelBase: style('Heel taper'),
  rocker: last('Toe spring'),
  proud: style('Laying'),
  bend: ofPart,
  tubeUnknown: ofPart,
  toeGround: ofPart,
  leatherPairs: ofPart,
  leatherAnyWay: own(stock.name, 'Direction'),
  skiveWide: (check) => style(check.part === 'lift' ? 'Skive to' : 'Sole skive')(check),
  bareGround: style('Outsole'),
  bareEdge: style('Covered'),
  weltHidden: style('Projection'),
  shank: style('Shank'),
  heelHold: style('Heel core'),
  highBuild: style('Finished heel'),
  makeOrBuy: style('Bought price'),
  plainModel: last('Measured'),
  modelAgainstGaps: last('Measured'),
  twist: last('Measured'),
  gapsAgainstHeel: last('Measured'),
  widths: (check, lastOf) => last(check.of === 'waist' ? 'Waist' : 'Seat')(check, lastOf),
  farFromBase: last('Base size'),
  unusedPart: (check) => (check.part === 'lift' ? style('Raise')(check) : ofPart(check)),
  unreadRate: ({ rate: { row }, why }) => ({ table: rates.name, row, heading: UNREAD_AT[why] }),
  misfit: last('Waist height'),
  lasts: own(lasts.name, 'Pairs on hand'),
  lastsUnknown: own(lasts.name, 'Pairs on hand'),
  daysOnLast: own(lasts.name, 'Days on last'),
  late: ({ row }) => ({ table: pairage.name, row, heading: 'Due' }),
  daysUntold: () => ({ table: pairage.name, heading: 'Style' }),
  pairsCut: own(pairage.name, 'Cut'),
  stockCut: own(pairage.name, 'Stock cut'),
  doubledRow: ({ row }) => ({ table: pairage.name, row, heading: 'Style' }),
  dueFar: ({ row }) => ({ table: pairage.name, row, heading: 'Due' }),
  measuredApart: own(stock.name, 'Measured'),
  thicknessFar: own(stock.name, 'Thick'),
  leftOnHand: ({ offer, subject }) =>
    offer === undefined
      ? { table: stock.name, code: subject, heading: 'On hand' }
      : { table: offers.name, row: offer, heading: 'On hand' },
  price: own(stock.name, 'Price'),
  untimedWork: rate,
  workRate: rate,
  coverage: rate,
  paste: rate,
  spoiled: rate,
  minutesOnAll: ({ rates: [one] }) => ({ table: rates.name, row: one?.row, heading: 'For' }),
  layoutIgnored: own(layouts.name, 'Stock'),
  strayLayout: ({ row }) => ({ table: layouts.name, row, heading: 'Stock' }),
  layoutUsed: own(layouts.name, 'Stock'),
  strayOffcut: ({ row }) => ({ table: offcuts.name, row, heading: 'Stock' }),
  strayOffer: ({ row }) => ({ table: offers.name, row, heading: 'Stock' }),
  offcutsUsed: ({ codes: [code] }) => ({ table: offcuts.name, code, heading: 'Length' }),
  notSummed: ({ subject, row, heading }) => ({ table: subject, row, heading }),
  notRead: ({ subject, row }) => ({ table: subject, row, below: true }),
  unreadHeading: ({ subject, heading }) => ({ table: subject, heading }),
  doubtfulNoughts: ({ subject, headings: [heading] }) => ({ table: subject, heading }),
};

/** The input by which a check is put right or looked at. */
export function placeOfCheck(check: Check, lastOf: LastOf): InputPlace {
  return placeOf(check.kind, check, lastOf);
}

function placeOf<Kind extends CheckKind>(kind: Kind, check: CheckOf<Kind>, lastOf: LastOf): InputPlace {
  return PLACES[kind](check, lastOf);
}
