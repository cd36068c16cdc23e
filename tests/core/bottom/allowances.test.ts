import { describe, expect, it } from 'vitest';
import { buildBottom } from '../../../src/core/bottom/bottom';
import { mostRasping, roundingAllowance } from '../../../src/core/bottom/allowances';
import { Problem } from '../../../src/core/problem';
import { lastInSize } from '../../../src/core/last/last-in-size';
import { CORK_6, findSample, lastOf, type Named, stockOf, styleOf } from '../samples';

describe('what is left for rasping', () => {
  const style = styleOf({ 'Rounding allowance': 2, 'Most rasping': 1 });

  it('is what the style leaves where its stock says nothing', () => {
    expect(roundingAllowance(style, stockOf())).toBe(2);
    expect(roundingAllowance(style, stockOf(), true)).toBe(2);
    expect(mostRasping(style, [stockOf()])).toBe(1);
  });

  it('is by the stock and what is done: an edge rasped, a block sawn, a height levelled (usual: common practice)', () => {
    const cork = stockOf({ 'Rounding allowance': 1, 'Block allowance': 4, 'Most rasping': 2 });
    expect([roundingAllowance(style, cork), roundingAllowance(style, cork, true), mostRasping(style, [cork])]).toEqual([
      1, 4, 2,
    ]);
    expect(roundingAllowance(style, stockOf({ 'Rounding allowance': 1 }), true)).toBe(1);
  });

  it('off a height is the least of what its stocks allow', () => {
    const [hard, soft] = [stockOf({ 'Most rasping': 0.5 }), stockOf({ 'Most rasping': 2 })];
    expect(mostRasping(style, [hard, soft])).toBe(0.5);
  });

  it('is named by its column where no mix comes out: Styles’, or that of the sheet which allows less', () => {
    const last = lastInSize(lastOf(), 38, 'EU');
    const said = (own: Named) => {
      const find = () => stockOf({ ...CORK_6, Thick: 7, ...own });
      try {
        return buildBottom(styleOf({ Raise: 'wedge', Lifts: 'Cork 6' }), last, find).layers.length;
      } catch (error) {
        return error instanceof Problem ? error.message : error;
      }
    };
    expect(said({})).toMatch(/at most 1 mm to rasp; allow 4\.0 mm \(Most rasping in Styles\) or add a thickness$/);
    expect(said({})).toMatch(/^row 1 of Styles, Most rasping: /);
    // It is put right in the cell that is named.
    expect(said({ 'Most rasping': 0.5 })).toMatch(
      /^row 1 of Bottom stock, Most rasping: of Betony, .*\(Most rasping of Cork 6 in Bottom stock\)/,
    );
    // What a rasp does not take off is put right by another sheet, under Lifts.
    expect(said({ Thick: 28 })).toMatch(/^row 1 of Styles, Lifts: /);
  });

  it('widens a piece by as much a side, and a block by what its saw needs (derived)', () => {
    const last = lastInSize(lastOf(), 38, 'EU');
    const width = (named: Named, cork: Named) =>
      buildBottom(styleOf({ 'Most rasping': 6, ...named }), last, (code) =>
        code === 'Cork 6' ? stockOf({ ...CORK_6, ...cork }) : findSample(code),
      ).layers.at(-1)?.width ?? NaN;
    const sole: Named = { Sole: 'Cork 6' };
    const block: Named = { Raise: 'heel', Lifts: 'Cork 6', Laying: 'block' };
    expect(width(sole, { 'Rounding allowance': 5 }) - width(sole, {})).toBeCloseTo(2 * (5 - 2), 1);
    expect(width(block, { 'Block allowance': 4 }) - width(block, {})).toBeCloseTo(2 * (4 - 2), 1);
    expect(width(sole, { 'Block allowance': 4 })).toBe(width(sole, {}));
  });
});
