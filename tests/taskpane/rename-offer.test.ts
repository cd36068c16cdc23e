import { describe, expect, it } from 'vitest';
import type { Cells } from '../../src/tables/cell';
import { RenameOffer } from '../../src/taskpane/rename-offer';

const tables = (stocks: readonly string[], styles: readonly string[] = ['Betony']): ReadonlyMap<string, Cells> =>
  new Map<string, Cells>([
    ['Bottom stock', [['Stock'], ...stocks.map((code) => [code])]],
    ['Styles', [['Style', 'Lifts', 'Outsole'], ...styles.map((code) => [code, 'Cork 6, Cork 4', 'Rubber 4'])]],
    [
      'Pairage',
      [
        ['Style', 38],
        ['Betony', 2],
      ],
    ],
  ]);
const follow = (...states: ReadonlyMap<string, Cells>[]) => {
  let drawn = 0;
  const offer = new RenameOffer(() => drawn++);
  for (const state of states) offer.follow(state);
  return { offer, told: () => drawn };
};
const STOCKS = ['Cork 6', 'Cork 4', 'Rubber 4'];

describe('the offer to carry a renamed code through', () => {
  it('is made once a code that stood in its table is called otherwise there', () => {
    const { offer } = follow(tables(STOCKS), tables(['Cork 6', 'Cork quick', 'Rubber 4']));
    expect(offer.offered).toMatchObject({
      lost: { code: 'Cork 4', definedIn: 'Bottom stock', cells: [{ table: 'Styles', row: 1, column: 1 }] },
      to: ['Cork quick'],
    });
    // Not what is nearest to it, but what came in its place.
    expect(follow(tables(STOCKS), tables(['Cork 6', 'Bend 5', 'Rubber 4'])).offer.offered?.to).toEqual(['Bend 5']);
    expect(follow(tables(STOCKS), tables(STOCKS, ['Betony 2'])).offer.offered?.to).toEqual(['Betony 2']);
  });

  it('is not made of a code that never stood there, nor of one that only went', () => {
    expect(follow(tables(['Cork 6', 'Cork 5', 'Rubber 4'])).offer.offered).toBeUndefined();
    expect(follow(tables(STOCKS), tables(STOCKS)).offer.offered).toBeUndefined();
    expect(follow(tables([...STOCKS, 'Felt 3']), tables(STOCKS)).offer.offered).toBeUndefined();
  });

  it('names nothing that stood there before: of a row that was deleted another sheet would be a guess', () => {
    const idle = [...STOCKS, 'Cork 9'];
    expect(follow(tables(idle), tables(['Cork 6', 'Cork 4', 'Cork 9'])).offer.offered).toBeUndefined();
    expect(follow(tables(idle), tables(['Cork 6', 'Cork 4', 'Cork 9']), tables(idle)).offer.offered).toBeUndefined();
  });

  it('is made where the name is emptied first and another typed then', () => {
    const { offer } = follow(tables(STOCKS), tables(['Cork 6', 'Cork 4']), tables(['Cork 6', 'Cork 4', 'Crepe 4']));
    expect(offer.offered).toMatchObject({ lost: { code: 'Rubber 4' }, to: ['Crepe 4'] });
  });

  it('stands through other changes, and goes once the code is carried through or stands there again', () => {
    const renamed = tables(['Cork 6', 'Cork quick', 'Rubber 4']);
    const { offer } = follow(tables(STOCKS), renamed, tables(['Cork 6', 'Cork quick', 'Rubber 4', 'Bend 5']));
    expect(offer.offered?.to).toEqual(['Cork quick']);
    offer.follow(tables(STOCKS));
    expect(offer.offered).toBeUndefined();
  });

  it('is gone when it was declined, and comes back for another rename', () => {
    const { offer, told } = follow(tables(STOCKS), tables(['Cork 6', 'Cork quick', 'Rubber 4']));
    offer.decline(offer.offered!.lost);
    expect([offer.offered, told()]).toEqual([undefined, 1]);
    offer.follow(tables(['Cork 6', 'Cork quick', 'Sole rubber']));
    expect(offer.offered?.lost.code).toBe('Rubber 4');
    offer.follow(tables(STOCKS));
    offer.follow(tables(['Cork 6', 'Cork slow', 'Rubber 4']));
    expect(offer.offered?.to).toEqual(['Cork slow']);
  });
});
