import { describe, expect, it } from 'vitest';
import { tableReferences, withReferences } from '../../src/host/formulas';
import { demo } from '../../src/workbook/demo';

describe('withReferences', () => {
  const references = new Map([
    ['Lasts', 'Lasts!$A$3:$N$40'],
    ['Bottom stock', "'Bottom stock'!$A$3:$S$60"],
  ]);

  it('puts references in the place of tables in braces', () => {
    expect(withReferences('=SOLEBENCH.PIECES({Lasts},{Bottom stock},A4)', references)).toBe(
      "=SOLEBENCH.PIECES(Lasts!$A$3:$N$40,'Bottom stock'!$A$3:$S$60,A4)",
    );
  });

  it('leaves array constants as they are', () => {
    for (const formula of ['={1,2;3,4}', '={"a","b"}', '=SUM({-1.5,2})', '={TRUE,FALSE}']) {
      expect(withReferences(formula, references)).toBe(formula);
    }
  });

  it('names a table that the plan lacks', () => {
    expect(() => withReferences('=SUM({Shelf})', references)).toThrow('names the table "Shelf", which the plan lacks');
  });

  it('finds every table of the demo', () => {
    const found = tableReferences(demo);
    for (const { tables } of demo.sheets)
      for (const { name } of tables) expect(found.get(name)).toMatch(/!\$[A-Z]+\$\d+:/);
  });
});
