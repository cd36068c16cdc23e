import { readFileSync } from 'node:fs';
import { type Context, createContext } from 'node:vm';
import { describe, expect, it } from 'vitest';
import { planCells, STOCKS } from '../core/samples';
import { type Bundle, CellError, loadInto } from '../bundle';

const TEXT = readFileSync('dist/functions.js', 'utf8');
const KEEPS = /solebench keeps [0-9a-f]{16}/g;
/** The same bundle as another build would have it. */
const OTHER_BUILD = TEXT.replace(KEEPS, 'solebench keeps 0123456789abcdef');

interface Kept {
  readonly made: number;
  readonly bytes: number;
}

/** What the bundles of a context keep of plans, one for each build that has kept something. */
function kept(context: Context): readonly Kept[] {
  return Object.getOwnPropertySymbols(context)
    .filter((one) => String(one).includes('solebench keeps'))
    .map((one) => (context as unknown as Record<symbol, Map<string, Kept>>)[one]!.get('plan memory')!);
}

const args = (tables: Parameters<typeof planCells>[0] = {}) => {
  const { pairage, styles, lasts, stock, rates } = planCells(tables);
  return [pairage, styles, lasts, stock, rates];
};
const FUNCTIONS = ['PIECES', 'CUTTING', 'ORDER', 'COST', 'CHECKS', 'BATCHES'];
const answers = ({ call }: Bundle, tables?: Parameters<typeof planCells>[0]) =>
  FUNCTIONS.map((name) => call(name, ...args(tables)));

describe('two bundles in one page', () => {
  it('work out a plan once between them', () => {
    const context = createContext({});
    const [first, second] = [loadInto(context), loadInto(context)];
    const one = answers(first);
    const [{ made }] = kept(context) as [Kept];
    // Eight tables and a plan, three sizes of a last and of a bottom, four layouts.
    expect(made).toBeGreaterThan(8 + 1 + 3 + 3 + 4 - 1);
    expect(answers(second)).toEqual(one);
    // A plan that is there already: not even its tables are read anew.
    expect(kept(context).map((all) => all.made)).toEqual([made]);
    // After an edit it is the same the other way round: a price takes a table and a plan, no geometry.
    const stock = STOCKS.map((entry) => ({ ...entry, Price: 12 }));
    const dearer = answers(second, { stock });
    expect(kept(context)[0]!.made).toBe(made + 2);
    expect(answers(first, { stock })).toEqual(dearer);
    expect(kept(context)[0]!.made).toBe(made + 2);
    expect(dearer).not.toEqual(one);
  });

  it('say the same of what has no answer, each to its own host', () => {
    const context = createContext({});
    const [first, second] = [loadInto(context), loadInto(context)];
    const stock = STOCKS.map((one) => ({ ...one, Width: 60 }));
    for (const { call } of [first, second, first]) {
      expect(() => call('CUTTING', ...args({ stock }))).toThrow(CellError);
      expect(() => call('CUTTING', ...args({ stock }))).toThrow(/^row 1 of Bottom stock, Stock: Cork 6, Betony/);
      expect(JSON.stringify(call('ORDER', ...args({ stock })))).toContain('All, not whole');
      expect(JSON.stringify(call('CHECKS', ...args({ stock })))).toContain('take a larger sheet');
    }
    // A layout that fits no longer and a style that is not there: problems that a plan of the other bundle throws.
    expect(() => second.call('TICKET', 'Fennel', ...args())).toThrow(
      /"Fennel" is not in Styles; choose one that has pairs: Betony/,
    );
  });

  it('keep apart where they come of different builds', () => {
    const context = createContext({});
    const one = answers(loadInto(context));
    const [{ made }] = kept(context) as [Kept];
    const other = loadInto(context, OTHER_BUILD);
    expect(OTHER_BUILD).not.toBe(TEXT);
    expect(answers(other)).toEqual(one);
    expect(kept(context).map((all) => all.made)).toEqual([made, made]);
  });

  it('work each by itself in a page to which nothing can be added', () => {
    const context = createContext({});
    // As where the page's globals are sealed.
    const shut = loadInto(context, `Reflect.defineProperty = () => false;${TEXT}`);
    expect(answers(shut)).toEqual(answers(loadInto(createContext({}))));
    expect(kept(context)).toEqual([]);
  });
});
