import { describe, expect, it } from 'vitest';
import { runs } from '../../../src/core/plan/runs';
import { inputOf, USUAL_TABLES } from '../samples';

describe('runs', () => {
  it('puts the pairs of all customers of a style together, smallest size first', () => {
    const { styles } = runs(
      inputOf({
        pairage: [
          { Style: 'Betony', 39: 1, 37: 2 },
          { Style: 'BETONY ', 38: 3, 37: 1 },
        ],
      }),
    );
    expect(styles[0]?.sizes.map(({ size, pairs }) => [size, pairs])).toEqual([
      [37, 3],
      [38, 3],
      [39, 1],
    ]);
    expect(styles[0]?.pairs).toBe(7);
  });

  it('can be a single pair', () => {
    const { styles, problems } = runs(inputOf({ pairage: [{ Style: 'Betony', 38: 1 }] }));
    expect(styles.map(({ pairs }) => pairs)).toEqual([1]);
    expect(problems).toEqual([]);
  });

  it('leaves out styles and sizes without pairs', () => {
    const styles = [...USUAL_TABLES.styles, { ...USUAL_TABLES.styles[0], Style: 'Teasel' }];
    const found = runs(
      inputOf({
        styles,
        pairage: [
          { Style: 'Betony', 38: 1, 39: 0 },
          { Style: 'Teasel', 38: 0 },
        ],
      }),
    );
    expect(found.styles.map(({ style, sizes }) => [style.code, sizes.length])).toEqual([['Betony', 1]]);
    expect(found.problems).toEqual([]);
  });

  it('tells of a slip once, however many sizes it spoils, and builds the others', () => {
    const styles = [...USUAL_TABLES.styles, { ...USUAL_TABLES.styles[0], Style: 'Teasel', Lifts: 'Cork 9' }];
    const pairage = [
      { Style: 'Betony', 38: 1 },
      { Style: 'Teasel', 37: 1, 38: 1, 39: 1 },
    ];
    const found = runs(inputOf({ styles, pairage }));
    expect(found.problems.map(({ message }) => message)).toEqual([
      expect.stringContaining('row 2 of Styles, Lifts: "Cork 9"'),
    ]);
    expect(found.styles.map(({ style }) => style.code)).toEqual(['Betony']);
  });

  it('builds a style of one part, and refuses one of none', () => {
    const of = (named: object) => runs(inputOf({ styles: [{ Style: 'Betony', Last: 'Round', ...named }] }));
    expect(of({ Sole: 'Bend 4' }).styles[0]?.sizes[0]?.bottom.layers).toHaveLength(1);
    expect(of({}).problems.map(({ message }) => message)).toEqual([
      expect.stringContaining('row 1 of Styles, Style: it names nothing to build its bottom from'),
    ]);
  });

  it('says once of a style that its pairs stand under the sizes of another system than its last has, and what would do', () => {
    const lasts = [{ ...USUAL_TABLES.lasts[0], System: 'UK', 'Base size': 6 }];
    const pairage = [{ Style: USUAL_TABLES.styles[0]!.Style, 39: 1, 40: 2, 44: 1 }];
    const { problems, leftOut, styles } = runs(inputOf({ lasts, pairage }));
    expect(styles).toEqual([]);
    expect(problems.map(({ message }) => message)).toEqual([
      'row 1 of Pairage, 39: 39, 40, 44 are no sizes of UK, the System of the last, which runs from about 0 to 16; EU 39 is about UK 6: enter the pairs under columns headed by sizes of UK, or EU under System in Pairage, or give the last in EU',
    ]);
    expect(leftOut).toHaveLength(1);
    const named = runs(inputOf({ lasts, pairage: [{ ...pairage[0], System: 'EU' }] }));
    expect(named.problems).toEqual([]);
  });

  it('says once of a style that is gone how many rows name it', () => {
    const { problems, leftOut } = runs(
      inputOf({
        pairage: [
          { Style: 'Betony', 38: 1 },
          ...Array.from({ length: 21 }, () => ({ Style: 'Gone', 38: 1 })),
          { Style: 'Betonny', 38: 1 },
          { Style: 'betonny', 38: 1 },
        ],
      }),
    );
    expect(problems.map(({ message }) => message)).toEqual([
      'row 2 of Pairage, Style: "Gone", here and in 20 more rows, is not in Styles, which holds Betony; enter it there or name another',
      'row 23 of Pairage, Style: "Betonny", here and in another row, is not in Styles; is "Betony" meant?',
    ]);
    expect(leftOut.map(({ name }) => name)).toEqual(['Gone', 'Betonny']);
  });
});
