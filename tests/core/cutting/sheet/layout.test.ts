import { describe, expect, it } from 'vitest';
import { allPlacements, laidSheets, type Layout, layoutOf } from '../../../../src/core/cutting/sheet/layout';

const format = {
  length: 1000,
  width: 500,
  knifeRoom: 4,
  edgeTrim: 10,
  offcuts: [
    { code: 'Rack 1', length: 300, width: 200 },
    { code: 'Rack 2', length: 400, width: 250 },
  ],
};
const at = (x: number) => ({ piece: 0, x, y: 0, turn: 0 });
const layout: Layout = { offcuts: [{ code: 'Rack 2', placements: [at(1)] }], sheets: [[at(2), at(3)], [at(4)]] };

describe('the sheets of a layout', () => {
  it('are the offcuts that are used, by their code and of their own size, and the whole sheets, numbered from 1', () => {
    const sheets = laidSheets(layout, format);
    expect(sheets.map(({ name }) => name)).toEqual([{ offcut: 'Rack 2' }, { sheet: 1 }, { sheet: 2 }]);
    expect(sheets.map(({ format: { length, width, knifeRoom } }) => [length, width, knifeRoom])).toEqual([
      [400, 250, 4],
      [1000, 500, 4],
      [1000, 500, 4],
    ]);
    expect(sheets.every((sheet) => sheet.format.offcuts === undefined)).toBe(true);
  });

  it('make the layout again, without those on which nothing lies', () => {
    const blank = [
      { name: { offcut: 'Rack 1' }, placements: [] },
      { name: { sheet: 9 }, placements: [] },
    ];
    expect(layoutOf([...blank, ...laidSheets(layout, format)])).toEqual(layout);
  });

  it('hold all placements', () => {
    expect(allPlacements(layout).map(({ x }) => x)).toEqual([1, 2, 3, 4]);
  });
});
