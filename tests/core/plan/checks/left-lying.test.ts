import { describe, expect, it } from 'vitest';
import { Problem } from '../../../../src/core/problem';
import { Plan } from '../../../../src/core/plan/plan';
import { checkInWords } from '../../../../src/tables/check-in-words';
import { placeOfCheck } from '../../../../src/tables/check-place';
import { CORK_6, inputOf, type Named, STOCKS, USUAL_TABLES } from '../../samples';

/** The 45 mm of lifts of Betony from cork of 6 mm and another. */
function checksWith(other: Named) {
  const styles = [{ ...USUAL_TABLES.styles[0], Lifts: `Cork 6, ${String(other.Stock)}`, 'Most rasping': 3 }];
  const { checks } = new Plan(inputOf({ stock: [...STOCKS, { ...CORK_6, ...other }], styles }));
  return checks.filter(({ kind }) => kind === 'leftLying' || kind === 'thicknessFar');
}

// Of sheets of 6 mm 45 mm are 8, 48 mm with 3 to rasp (derived).
describe('sheets that are named and that nothing is built from', () => {
  it('are told where they are stouter than what is to be built: 60 for 6', () => {
    const found = checksWith({ Stock: 'Cork 60', Thick: 60 });
    expect(found.map((check) => [check.subject, check.verdict, checkInWords(check).say])).toEqual([
      [
        'Betony',
        'lookAt',
        'nothing is built from Cork 60: a sheet of 60 is stouter than the 48 that are built; look at Thick in Bottom stock, or name another sheet',
      ],
      [
        'Cork 60',
        'lookAt',
        'cork is seldom sold thicker than that: look at Thick in Bottom stock, where a point may lack, and leave it if the sheet measures so',
      ],
    ]);
    expect(found.map((check) => placeOfCheck(check, () => undefined))).toEqual([
      { table: 'Styles', code: 'Betony', heading: 'Lifts' },
      { table: 'Bottom stock', code: 'Cork 60', heading: 'Thick' },
    ]);
  });

  // One of 40 mm takes another of 6 on it: 2 layers, 46 mm (derived).
  it('are not told of where some are built in', () => {
    expect(checksWith({ Stock: 'Cork 40', Thick: 40 })).toEqual([]);
  });

  // 5 of 6 mm and 3 of 5 are 45 with nothing to rasp, in 8 layers too; with sheets of 1 mm it would be 10 (derived).
  it('hold where the others reach the height with as few layers', () => {
    expect(checksWith({ Stock: 'Cork 5', Thick: 5 })).toEqual([]);
    const found = checksWith({ Stock: 'Cork 1', Thick: 1 });
    expect(found).toMatchObject([{ subject: 'Betony', verdict: 'holds', stock: 'Cork 1', part: 'lift' }]);
  });
});

describe('a thickness in which a material is not sold', () => {
  it('is told of any sheet, used or not, unless it measures otherwise, which is told by itself', () => {
    const far = (other: Named) =>
      new Plan(inputOf({ stock: [...STOCKS, { ...CORK_6, Stock: 'Other', ...other }] })).checks.filter(
        ({ subject }) => subject === 'Other',
      );
    // Sole leather of 4 mm, ten times as thick, and foam ten times as thin (derived).
    expect(far({ Material: 'leather', Thick: 40 })).toMatchObject([{ kind: 'thicknessFar', found: 40, wanted: 10 }]);
    expect(far({ Material: 'foam', Thick: 0.6 })).toMatchObject([{ kind: 'thicknessFar', found: 0.6, wanted: 1 }]);
    expect(far({ Material: 'leather', Thick: 4 })).toEqual([]);
    expect(far({ Material: 'leather', Thick: 40, Measured: 4 })).toMatchObject([{ kind: 'measuredApart' }]);
  });

  // Cork is sold as blocks of 50 mm, and no insole or welt is as stout (common practice).
  it('is told of what is cut from a sheet too, where its material is sold so thick', () => {
    const { checks } = new Plan(
      inputOf({
        stock: [...STOCKS, { ...CORK_6, Stock: 'Other', Thick: 30 }],
        styles: [{ ...USUAL_TABLES.styles[0], Insole: 'other' }],
      }),
    );
    expect(checks.filter(({ kind }) => kind === 'thicknessFar')).toMatchObject([
      { subject: 'Other', part: 'insole', found: 30, wanted: 20 },
    ]);
  });

  it('is told beside slips, whose cause it may be, while all else that is only to be looked at waits', () => {
    const plan = new Plan(
      inputOf({ stock: [...STOCKS, { ...CORK_6, Stock: 'Other', Material: 'leather', Thick: 80 }] }),
    );
    const slip = new Problem('invalid', { argument: 'rates', table: 'Costs and times', row: 1 }, 'no');
    expect(plan.checks.some(({ kind, verdict }) => verdict === 'lookAt' && kind !== 'thicknessFar')).toBe(true);
    const beside = plan.checksBeside([slip]).filter(({ verdict }) => verdict === 'lookAt');
    expect(beside).toMatchObject([{ kind: 'thicknessFar', subject: 'Other', found: 80, wanted: 10 }]);
  });
});
