import { type Bottom, buildBottom } from '../bottom/bottom';
import { chooseMixes, type Mixes } from '../bottom/courses';
import type { FindStock, Stock } from '../stock/stock';
import type { Style } from '../bottom/style';
import { styleCell } from '../bottom/style-problem';
import type { Ring } from '../geometry/ring';
import type { Last } from '../last/last';
import { type LastInSize, lastInSize } from '../last/last-in-size';
import { type LastPoints, type MeasuredLast, measuredLast } from '../last/measured-last';
import { type Place, Problem } from '../problem';
import type { SizeSystem } from '../sizes/systems';
import { byCode, fold } from './codes';
import type { Outline, OutlineRole, PlanInput } from './inputs';
import { identity, Memo } from '../memo';
import { nearestCode } from './nearest-code';

const lastsInSize = new Memo<LastInSize>(2048);
const mixes = new Memo<Mixes>(2048);
const bottoms = new Memo<Bottom>(4096);

/** Roles of Outlines that measure a last. */
const MEASURED_ROLES: Readonly<Partial<Record<OutlineRole, keyof LastPoints>>> = {
  gap: 'gap',
  'gap inside': 'gapInside',
  'gap outside': 'gapOutside',
  'half-width inside': 'halfWidthInside',
  'half-width outside': 'halfWidthOutside',
  bottom: 'bottom',
};

/** Headings of Lasts by what a problem of the calculation is about. */
const LAST_HEADINGS: Readonly<Record<string, string>> = {
  'heel height': 'Heel height',
  'toe spring': 'Toe spring',
  'seat pitch': 'Seat pitch',
  'size groups': 'Size groups',
  'measured gaps': 'Measured',
  'measured bottom': 'Measured',
  'half-widths': 'Measured',
};

/** Finds what styles name by code, and builds lasts and bottoms once for each content. */
export class Finder {
  private readonly lasts: ReadonlyMap<string, Last>;
  private readonly stocks: ReadonlyMap<string, Stock>;
  private readonly outlines: readonly Outline[];

  constructor(input: Pick<PlanInput, 'lasts' | 'stock' | 'outlines'>) {
    this.lasts = byCode(input.lasts);
    this.stocks = byCode(input.stock);
    this.outlines = input.outlines;
  }

  stock(code: string): Stock | undefined {
    return this.stocks.get(fold(code));
  }

  /** @throws Problem where the style's last is not among the lasts. */
  last(style: Style): Last {
    const last = this.lasts.get(fold(style.last));
    if (!last) throw notFound(styleCell(style, 'Last'), style.last, 'Lasts', codesOf(this.lasts));
    return last;
  }

  /** @throws Problem for a size that the last cannot have, and for gaps that are missing or unsound. */
  lastInSize(last: Last, size: number, system: SizeSystem, place: Place): LastInSize {
    const lastCell = (column: string): Place => ({
      argument: 'lasts',
      table: 'Lasts',
      row: last.row,
      ...(column && { column }),
    });
    const points = last.measured === undefined ? undefined : this.pointsOf(last.measured);
    if (last.measured !== undefined && !points) {
      throw new Problem(
        'invalid',
        lastCell('Measured'),
        `nothing measured is in Outlines under ${last.measured}; enter it there, with the role gap for gaps, or leave this blank`,
      );
    }
    const { daysOnLast: _days, pairsBySize: _pairs, pairsOnHand: _hand, ...shape } = last;
    return lastsInSize.get(JSON.stringify([shape, points, size, system]), () => {
      try {
        return lastInSize(last, size, system, points && measuredLast(points, last.length));
      } catch (error) {
        if (!(error instanceof Problem)) throw error;
        const { argument } = error.place;
        throw new Problem(
          error.code,
          argument === 'size' ? place : lastCell(LAST_HEADINGS[argument] ?? ''),
          error.reason,
        );
      }
    });
  }

  /** What was measured of a last, or undefined where nothing was. */
  measured(last: Last): MeasuredLast | undefined {
    const points = last.measured === undefined ? undefined : this.pointsOf(last.measured);
    return points && measuredLast(points, last.length);
  }

  private pointsOf(code: string): LastPoints | undefined {
    const lists: Partial<Record<keyof LastPoints, Ring>> = {};
    for (const outline of this.outlines) {
      const role = MEASURED_ROLES[outline.role];
      if (role && fold(outline.code) === fold(code)) lists[role] = outline.points;
    }
    return Object.keys(lists).length > 0 ? lists : undefined;
  }

  /** @throws Problem where the bottom does not come out; it names the cell to change. */
  bottom(style: Style, last: LastInSize): Bottom {
    const find: FindStock = (code, heading) => {
      const stock = this.stock(code);
      if (!stock) throw notFound(styleCell(style, heading), code, 'Bottom stock', codesOf(this.stocks));
      return stock;
    };
    const named = stocksOf(style).map((code) => this.stock(code));
    const shaping = named.map(
      (stock) =>
        stock && [
          stock.code,
          stock.material,
          stock.thickness,
          stock.roundingAllowance,
          stock.blockAllowance,
          stock.mostRasping,
        ],
    );
    // Prices decide between mixes that are equal otherwise, but the bottom depends on the mix alone.
    const prices = named.map((stock) => stock?.price);
    const key = `${identity(last)} ${JSON.stringify([style, shaping])}`;
    const chosen = mixes.get(`${key} ${JSON.stringify(prices)}`, () => chooseMixes(style, last, find));
    const counts = [chosen.lifts?.counts, chosen.platform?.counts];
    return bottoms.get(`${key} ${JSON.stringify(counts)}`, () => buildBottom(style, last, find, chosen));
  }
}

function codesOf(records: ReadonlyMap<string, { readonly code: string }>): readonly string[] {
  return [...records.values()].map(({ code }) => code);
}

/** Codes of all stock that a style names. */
export function stocksOf(style: Style): readonly string[] {
  const { insole, welt, midsole, sole, lifts, platform, outsole, topPiece, cover } = style;
  return [insole, welt, midsole, sole, ...lifts, ...platform, outsole, topPiece, cover].filter(
    (code) => code !== undefined,
  );
}

function notFound(place: Place, code: string, table: string, codes: readonly string[]): Problem {
  const near = nearestCode(code, codes);
  const several = /\/|&| and /i.test(code) ? '; part several by commas' : '';
  const mend = near === undefined ? `enter it there or name another${several}` : `is "${near}" meant?`;
  return new Problem('invalid', place, `"${code}" is not in ${table}; ${mend}`);
}
