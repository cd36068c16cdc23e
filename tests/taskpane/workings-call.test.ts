import { describe, expect, it } from 'vitest';
import type { Block, Reference } from '../../src/host/host';
import { callIn, Unreadable } from '../../src/taskpane/workings-call';

/** A sheet whose cell in row r and column c holds 10 r + c, counted from 1; one table, Prices. */
async function read(reference: Reference): Promise<Block | undefined> {
  if (reference.kind === 'table') {
    if (reference.table !== 'Prices') return undefined;
    return { place: { sheet: 'Lists', row: 4, column: 2, rows: 2, columns: 1 }, cells: [['Price'], [9.5]] };
  }
  const { kind: _kind, ...place } = reference;
  const cells = Array.from({ length: place.rows }, (_, r) =>
    Array.from({ length: place.columns }, (_, c) => 10 * (place.row + r + 1) + place.column + c + 1),
  );
  return { place, cells };
}

const args = async (formula: string) => (await callIn(formula, 'Here', read))?.args.map(({ value }) => value);

describe('a call in a formula', () => {
  it('has numbers, text, blanks and arrays as they are written', async () => {
    expect(await args('=SOLEBENCH.UNIT(-12,"iron",)')).toEqual([-12, 'iron', null]);
    expect(await args('=SOLEBENCH.PAIRS(10,{1,2;3,4})')).toEqual([
      10,
      [
        [1, 2],
        [3, 4],
      ],
    ]);
  });

  it('has what stands in cells and tables, with their places', async () => {
    expect(await args("=solebench.layers($B$2,'My sheet'!A1:B2)")).toEqual([
      22,
      [
        [11, 12],
        [21, 22],
      ],
    ]);
    const call = await callIn('=SOLEBENCH.PAIRS(A3,Prices[#All])', 'Here', read);
    expect(call?.args.map(({ place }) => place?.sheet)).toEqual(['Here', 'Lists']);
    expect(call?.args[1]?.value).toEqual([['Price'], [9.5]]);
  });

  it('has the range whose blank cells its formula parts from 0, with its place', async () => {
    for (const ours of ['IF(Prices[#All]="","",Prices[#All])', 'if(Prices[#All] = "", "", Prices[#All])']) {
      const call = await callIn(`=SOLEBENCH.PAIRS(A3,${ours})`, 'Here', read);
      expect([call?.args[1]?.value, call?.args[1]?.place?.sheet]).toEqual([[['Price'], [9.5]], 'Lists']);
    }
    for (const other of ['IF(A1="","",B1)', 'IF(A1="","x",A1)', 'IF(A1="x","",A1)', 'IF(A1,"",A1)']) {
      await expect(args(`=SOLEBENCH.LAYERS(${other},7)`), other).rejects.toThrow(Unreadable);
    }
  });

  it('has arithmetic and calls of ours worked out', async () => {
    expect(await args('=SOLEBENCH.LAYERS(A1+2*B1,50%)')).toEqual([35, 0.5]);
    expect(await args('=SOLEBENCH.LAYERS(SOLEBENCH.HEELHEIGHT(45,8),7)')).toEqual([53, 7]);
  });

  it('is found within another formula, and not where there is none', async () => {
    const call = await callIn('=IF(A1>0,ROUND(SOLEBENCH.LAYERS(45,7),0),"")', 'Here', read);
    expect([call?.name, call?.whole]).toEqual(['LAYERS', false]);
    expect(await callIn('=SUM(A1:A3)', 'Here', read)).toBeUndefined();
    expect(await callIn('=SOLEBENCH.LAYERS(', 'Here', read)).toBeUndefined();
  });

  it('says so where an argument cannot be read', async () => {
    for (const formula of [
      '=SOLEBENCH.LAYERS(ROUND(A1,0),7)',
      '=SOLEBENCH.LAYERS(A:A,7)',
      '=SOLEBENCH.LAYERS(Height,7)',
    ]) {
      await expect(args(formula), formula).rejects.toThrow(Unreadable);
    }
  });
});
