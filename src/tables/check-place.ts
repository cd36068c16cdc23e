import { HEADINGS } from '../core/bottom/layer';
import type { Check } from '../core/plan/checks/check';
import { INPUT_TABLES } from './input-tables';

/** Where the maker changes something: in a table, the row that a code heads or of a number, under a heading. */
export interface InputPlace {
  /** The table's name. */
  readonly table: string;
  readonly code?: string | undefined;
  /** Counted from 1 below the headings. */
  readonly row?: number | undefined;
  readonly heading?: string | undefined;
  /** Whether the row is one below the table. */
  readonly below?: boolean | undefined;
}

const { styles, lasts, pairage, stock, rates, layouts, offcuts, offers } = INPUT_TABLES;

/**
 * The input by which a check is put right or looked at.
 * @param lastOf the code of a style's last
 */
export function placeOfCheck(check: Check, lastOf: (style: string) => string | undefined): InputPlace {
  const { subject } = check;
  const style = (heading: string): InputPlace => ({ table: styles.name, code: subject, heading });
  const last = (heading: string): InputPlace => ({ table: lasts.name, code: lastOf(subject) ?? subject, heading });
  switch (check.kind) {
    case 'problem': {
      const { argument, table, row, column } = check.problem.place;
      const known = Object.values(INPUT_TABLES).find((one) => one.argument === argument);
      return { table: known?.name ?? table ?? argument, row, heading: column };
    }
    case 'heelControl':
      return style('Last');
    case 'rasping':
      return style('Most rasping');
    case 'mixLeap':
      return check.stock === undefined
        ? style('Most rasping')
        : { table: stock.name, code: check.stock, heading: 'Most rasping' };
    case 'heelBase':
      return style('Heel taper');
    case 'rocker':
      return last('Toe spring');
    case 'proud':
      return style('Laying');
    case 'bend':
    case 'tubeUnknown':
    case 'leatherPairs':
      return style(HEADINGS[check.part]);
    case 'skiveWide':
      return style(check.part === 'lift' ? 'Skive to' : 'Sole skive');
    case 'bareGround':
      return style('Outsole');
    case 'weltHidden':
      return style('Projection');
    case 'shank':
      return style('Shank');
    case 'heelHold':
      return style('Heel core');
    case 'highBuild':
      return style('Finished heel');
    case 'makeOrBuy':
      return style('Bought price');
    case 'plainModel':
    case 'modelAgainstGaps':
    case 'twist':
    case 'gapsAgainstHeel':
      return last('Measured');
    case 'widths':
      return last(check.of === 'waist' ? 'Waist' : 'Seat');
    case 'farFromBase':
      return last('Base size');
    case 'unusedPart':
      return style(check.part === 'lift' ? 'Raise' : HEADINGS[check.part]);
    case 'unreadRate':
      return { table: rates.name, row: check.rate.row, heading: check.why === 'scope' ? 'For' : 'Unit' };
    case 'misfit':
      return last('Waist height');
    case 'lasts':
    case 'lastsUnknown':
      return { table: lasts.name, code: subject, heading: 'Pairs on hand' };
    case 'daysOnLast':
      return { table: lasts.name, code: subject, heading: 'Days on last' };
    case 'late':
      return { table: pairage.name, code: subject, heading: 'Due' };
    case 'dueFar':
      return { table: pairage.name, row: check.row, heading: 'Due' };
    case 'measuredApart':
      return { table: stock.name, code: subject, heading: 'Measured' };
    case 'price':
      return { table: stock.name, code: subject, heading: 'Price' };
    case 'untimedWork':
    case 'workRate':
    case 'coverage':
      return { table: rates.name, heading: 'Value' };
    case 'layoutIgnored':
    case 'layoutUsed':
      return { table: layouts.name, code: subject, heading: 'Stock' };
    case 'strayOffcut':
      return { table: offcuts.name, row: check.row, heading: 'Stock' };
    case 'strayOffer':
      return { table: offers.name, row: check.row, heading: 'Stock' };
    case 'offcutsUsed':
      return { table: offcuts.name, code: check.codes[0] as string, heading: 'Length' };
    case 'notSummed':
      return { table: subject, row: check.row, heading: check.heading };
    case 'notRead':
      return { table: subject, row: check.row, below: true };
    case 'unreadHeading':
      return { table: subject, heading: check.heading };
    case 'doubtfulNoughts':
      return { table: subject, heading: check.headings[0] as string };
  }
}
