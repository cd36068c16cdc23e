import { leastOf } from '../../numerics/extremes';
import { costOfSheets } from '../../stock/purchase';
import { areaWithRoom, leastSheets, offcutsHold } from '../sheet/least-sheets';
import { roomOn, type SheetFormat } from '../sheet/sheet';
import type { BuyAnswer, BuyFormat, BuyJob, BuyShare } from './job';

/** What the sheets of layouts cost to buy. */
export function costOfShares(shares: readonly BuyShare[], formats: readonly BuyFormat[]): number {
  return shares.reduce(
    (sum, { format, layout }) => sum + (costOfSheets(formats[format]!.terms, layout.sheets.length) ?? Infinity),
    0,
  );
}

/** The quick rows as they are, where nothing else is looked for. @param why nothing else is */
export function plainAnswer(job: BuyJob, why?: string): BuyAnswer {
  const cost = costOfShares(job.plain, job.formats);
  return { shares: job.plain, cost, least: Math.min(cost, leastOfJob(job)), known: 0, why };
}

/** The least that the sheets could cost: of one format by its fewest sheets, of several by the cheapest area. */
function leastOfJob({ pieces, formats }: BuyJob): number {
  const [only, ...others] = formats;
  if (!only) return 0;
  if (others.length === 0) return costOfSheets(only.terms, leastSheets(pieces, only.format)) ?? 0;
  if (formats.some(({ format }) => format.natural)) return 0;
  const onHand = formats.reduce(
    (sum, { format, terms }) =>
      sum + offcutsHold(format) + roomArea(format) * terms.reduce((all, one) => all + one.onHand, 0),
    0,
  );
  const lack = Math.max(0, areaWithRoom(pieces, only.format) - onHand);
  const prices = formats.flatMap(({ format, terms }) =>
    terms.flatMap(({ price }) => (price === undefined ? [] : [price / roomArea(format)])),
  );
  return prices.length > 0 ? lack * leastOf(prices) : 0;
}

function roomArea(format: SheetFormat): number {
  const { length, width } = roomOn(format);
  return Math.max(1, length) * Math.max(1, width);
}
