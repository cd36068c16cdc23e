import { type Bottom, buildBottom } from '../bottom/bottom';
import { chooseMixes } from '../bottom/courses';
import { pricePerArea } from '../stock/price';
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
import { type Construction, constructionOf, lastsOf } from './kept-bottoms';
import { nearestCode } from './nearest-code';

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

/** A style on its last, to be built in any size. */
export interface Build {
  /** Its bottoms depend on this and on prices alone. */
  readonly construction: Construction;
  /** Those that decide between mixes of thicknesses that are equal otherwise. */
  readonly prices: string;
  /**
   * @param place the cell that asks for the size
   * @throws Problem where the bottom does not come out; it names the cell to change.
   */
  in(size: number, system: SizeSystem, place: Place): Bottom;
}

/** Finds what styles name by code, and builds lasts and bottoms once for each content. */
export class Finder {
  private readonly lasts: ReadonlyMap<string, Last>;
  private readonly stocks: ReadonlyMap<string, Stock>;
  private readonly outlines: readonly Outline[];
  private readonly contents = new Map<Last, string>();

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
    if (last.measured !== undefined && !this.pointsOf(last.measured)) {
      throw new Problem(
        'invalid',
        lastCell('Measured'),
        `nothing measured is in Outlines under ${last.measured}; enter it there, with the role gap for gaps, or leave this blank`,
      );
    }
    return lastsOf(this.contentOf(last)).get(size, system, () => {
      try {
        return lastInSize(last, size, system, this.measured(last));
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

  /** All that shapes a last and what was measured of it: lasts that are the same in it are one. */
  contentOf(last: Last): string {
    let content = this.contents.get(last);
    if (content === undefined) {
      const { row: _row, code: _code, daysOnLast: _days, pairsBySize: _pairs, pairsOnHand: _hand, ...shape } = last;
      const points = last.measured === undefined ? undefined : this.pointsOf(last.measured);
      content = JSON.stringify([{ ...shape, measured: undefined }, points]);
      this.contents.set(last, content);
    }
    return content;
  }

  private pointsOf(code: string): LastPoints | undefined {
    const lists: Partial<Record<keyof LastPoints, Ring>> = {};
    for (const outline of this.outlines) {
      const role = MEASURED_ROLES[outline.role];
      if (role && fold(outline.code) === fold(code)) lists[role] = outline.points;
    }
    return Object.keys(lists).length > 0 ? lists : undefined;
  }

  /** A style on its last: styles that are built alike on lasts that are one share their bottoms. */
  build(style: Style, last: Last): Build {
    const { row: _row, code: _code, last: _last, quality: _quality, shank: _shank, ...build } = style;
    const {
      boughtPrice: _price,
      boughtTooling: _tooling,
      boughtMinimum: _minimum,
      boughtSizeMinimum: _sizeMinimum,
      boughtFitting: _fitting,
      ...shape
    } = build;
    const shaping = stocksOf(style).map((code) => {
      const stock = this.stock(code);
      return (
        stock && [
          stock.code,
          stock.material,
          stock.thickness,
          stock.roundingAllowance,
          stock.blockAllowance,
          stock.mostRasping,
        ]
      );
    });
    const construction = constructionOf(JSON.stringify([this.contentOf(last), shape, shaping]));
    const mixed = style.finishedHeel === undefined ? style.lifts : [...style.lifts, ...style.platform];
    const priceOf = (stock: Stock | undefined) => stock && pricePerArea(stock);
    const prices = JSON.stringify(mixed.map((code) => priceOf(this.stock(code))));
    const find: FindStock = (code, heading) => {
      const stock = this.stock(code);
      if (!stock) throw notFound(styleCell(style, heading), code, 'Bottom stock', codesOf(this.stocks));
      return stock;
    };
    return {
      construction,
      prices,
      in: (size, system, place) => {
        const inSize = this.lastInSize(last, size, system, place);
        const mixes = construction.mixes(size, system, prices, () => chooseMixes(style, inSize, find));
        return construction.bottom(size, system, mixes, () => buildBottom(style, inSize, find, mixes));
      },
    };
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
