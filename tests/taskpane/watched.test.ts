import { beforeAll, describe, expect, it, vi } from 'vitest';
import type { Failed, Host, Selection, TablePlace } from '../../src/host/host';
import type { Cells } from '../../src/tables/cell';
import { checkInWords } from '../../src/tables/check-in-words';
import { Watched } from '../../src/taskpane/watched';
import { demo } from '../../src/workbook/demo';
import { finished } from '../../src/core/stepwise';
import { planMemory } from '../../src/core/plan/plan-memory';
import { type PlanArguments, reading } from '../../src/functions/plan-arguments';
import { planArguments, tableCells } from '../demo-cells';

/** A workbook that holds the demo's tables, without anything that shows it. */
class Workbook implements Pick<
  Host,
  'tables' | 'tablePlace' | 'tablePlaces' | 'onContent' | 'onSelection' | 'beforeWorkedOut'
> {
  cells: ReadonlyMap<string, Cells> = new Map(Object.entries(tableCells()));
  /** Why listeners are not heard; undefined where they are. */
  refused: Error | undefined;
  private changed: () => void = () => undefined;
  private selected: (selection: Selection | undefined) => void = () => undefined;

  async tables() {
    return this.cells;
  }

  /** First rows below tables that hold something, on their sheets. */
  readonly filledBelow = new Map<string, number>();

  async tablePlaces() {
    const places = demo.sheets.flatMap(({ name: sheet, tables }) => tables.map((table) => ({ sheet, ...table })));
    return new Map(
      places.map(({ sheet, name, area }) => [name, { sheet, ...area, filledBelow: this.filledBelow.get(name) }]),
    );
  }

  async tablePlace(name: string): Promise<TablePlace | undefined> {
    for (const { name: sheet, tables } of demo.sheets) {
      const area = tables.find((table) => table.name === name)?.area;
      if (area) return { sheet, ...area };
    }
    return undefined;
  }

  onContent(listener: () => void, failed: Failed) {
    if (this.refused) failed(this.refused);
    else this.changed = listener;
    return () => undefined;
  }

  private ahead: (tables: ReadonlyMap<string, Cells>) => Promise<void> = async () => undefined;

  beforeWorkedOut(work: (tables: ReadonlyMap<string, Cells>) => Promise<void>) {
    this.ahead = work;
    return () => undefined;
  }

  onSelection(listener: (selection: Selection | undefined) => void, failed: Failed) {
    if (this.refused) failed(this.refused);
    else this.selected = listener;
    return () => undefined;
  }

  /** Replaces a cell of a table, its headings in row 0. */
  enter(table: string, row: number, column: number, value: unknown): void {
    this.put(table, row, column, value);
    this.changed();
  }

  /** The same before anything is worked out; what was to be done first is done. */
  enterAhead(table: string, row: number, column: number, value: unknown): Promise<void> {
    this.put(table, row, column, value);
    return this.ahead(this.cells);
  }

  workOut(): void {
    this.changed();
  }

  private put(table: string, row: number, column: number, value: unknown): void {
    const old = this.cells.get(table) ?? [];
    const cells = old.map((line, r) => (r === row ? line.map((cell, c) => (c === column ? value : cell)) : line));
    this.cells = new Map([...this.cells, [table, cells]]);
  }

  /** Selects a cell of a table. */
  async select(table: string, row: number, column: number): Promise<void> {
    const place = await this.tablePlace(table);
    if (!place) throw new Error(`The demo has no ${table}.`);
    const value = (this.cells.get(table)?.[row]?.[column] ?? null) as Selection['value'];
    this.selectCell(place.sheet, place.row + row, place.column + column, value);
  }

  selectCell(sheet: string, row: number, column: number, value: Selection['value'] = null): void {
    this.selected({
      sheet,
      row,
      column,
      rows: 1,
      columns: 1,
      address: '',
      value,
      text: String(value ?? ''),
      formula: undefined,
      problem: undefined,
    });
  }
}

const watch = () => {
  const workbook = new Workbook();
  return { workbook, watched: new Watched(workbook as unknown as Host) };
};
const until = async (holds: () => unknown) => {
  for (let i = 0; i < 2000 && !holds(); i++) await new Promise((resolve) => setTimeout(resolve, 5));
  expect(holds()).toBeTruthy();
};

// The first plan of the demo, hides and all, takes its time on a busy machine.
describe('what the pane watches', { timeout: 60_000 }, () => {
  beforeAll(() => {
    vi.stubGlobal('requestAnimationFrame', (act: () => void) => setTimeout(act, 0));
  });

  it('is the whole plan, the geometry first', async () => {
    const { watched } = watch();
    await until(() => watched.bottom);
    await until(() => watched.results);
    expect(watched.shown?.style).toBe('Betony');
    expect(watched.results?.cuttings.length).toBeGreaterThan(10);
    expect(watched.counts?.putRight).toBe(0);
  });

  it('is what the functions of the sheet have worked out already, where they have', async () => {
    const args = planArguments() as unknown as PlanArguments;
    const { plan } = reading(args);
    for (const { work } of plan.steps) finished(work());
    const { made } = planMemory;
    const { watched } = watch();
    await until(() => watched.results);
    expect(planMemory.made).toBe(made);
    expect(watched.standing).toMatchObject({ kind: 'plan', plan });
    expect(watched.results?.checks).toBe(plan.checks);
  });

  it('follows a selected style, size, last and stock', async () => {
    const { workbook, watched } = watch();
    await until(() => watched.results);
    const column = (workbook.cells.get('Pairage')?.[0] ?? []).indexOf(39);
    const row = (workbook.cells.get('Pairage') ?? []).findIndex(([style]) => style === 'Fennel');
    await workbook.select('Pairage', row, column);
    await until(() => watched.shown?.style === 'Fennel' && watched.shown.size === 39);
    const last = (workbook.cells.get('Lasts') ?? []).findIndex(([code]) => code === 'Low 12');
    await workbook.select('Lasts', last, 1);
    await until(() => watched.shown?.style === 'Yarrow');
    const stock = (workbook.cells.get('Bottom stock') ?? []).findIndex(([code]) => code === 'Rubber 6');
    await workbook.select('Bottom stock', stock, 3);
    await until(() => watched.cutting?.stock.code === 'Rubber 6');
  });

  it('shows what an edit comes to and costs before it is worked out, and checks after it', async () => {
    const { workbook, watched } = watch();
    await until(() => watched.results);
    const [headings = [], ...rows] = workbook.cells.get('Pairage') ?? [];
    const [row, column] = [1 + rows.findIndex(([style]) => style === 'Teasel'), headings.indexOf(39)];
    const before = watched.results;
    const pairs = () => watched.runs.flatMap(({ sizes }) => sizes).reduce((sum, { pairs: ofSize }) => sum + ofSize, 0);
    const were = pairs();
    await workbook.enterAhead('Pairage', row, column, Number(rows[row - 1]?.[column]) + 9);
    expect(pairs()).toBe(were + 9);
    expect(watched.results).toBeUndefined();
    expect(watched.before?.orders).not.toEqual(before?.orders);
    expect(watched.before?.checks).toBe(before?.checks);
    const { orders } = watched.before ?? {};
    workbook.workOut();
    await until(() => watched.results);
    // What was shown ahead is what it comes to.
    expect(watched.results?.orders).toEqual(orders);
    expect(watched.results?.checks).not.toBe(before?.checks);
  });

  it('plans the rest although no word comes that the sheets are worked out', async () => {
    const { workbook, watched } = watch();
    await until(() => watched.results);
    const [headings = []] = workbook.cells.get('Pairage') ?? [];
    await workbook.enterAhead('Pairage', 1, headings.indexOf(38), 8);
    expect(watched.results).toBeUndefined();
    await until(() => watched.results);
    expect(watched.results?.orders).toEqual(watched.sound?.orders);
  });

  it('leaves what is to be put right until it is worked out, and plans nothing for the same tables', async () => {
    const { workbook, watched } = watch();
    await until(() => watched.results);
    const { results, standing } = watched;
    await workbook.enterAhead('Lasts', 1, 3, 'long');
    expect(watched.results).toBe(results);
    expect(watched.standing).toBe(standing);
    workbook.workOut();
    await until(() => watched.standing.kind === 'slips');
    const other = watch();
    await until(() => other.watched.results);
    const known = other.watched.results;
    await other.workbook.enterAhead('Lasts', 1, 3, other.workbook.cells.get('Lasts')?.[1]?.[3]);
    expect(other.watched.results).toBe(known);
  });

  it('says what keeps the tables from being read, and goes on when it is mended', async () => {
    const { workbook, watched } = watch();
    await until(() => watched.results);
    const before = (workbook.cells.get('Lasts') ?? [])[1]?.[3];
    workbook.enter('Lasts', 1, 3, 'long');
    await until(() => watched.problems.length > 0);
    expect(watched.problems[0]?.message).toMatch(/^row 1 of Lasts, Bottom length: "long" is not a number/);
    // The sheet Lasts has its headings in row 3; the fourth column is D.
    expect(watched.problems[0]?.inWords(watched.where)).toMatch(/^Lasts, D4, Bottom length: "long"/);
    expect(watched.cellAt({ table: 'Lasts', row: 1, heading: 'Bottom length' })).toBe('Lasts, D4');
    // Styles on other lasts are built all the same.
    await until(() => watched.standing.kind === 'slips');
    expect(watched.bottom).toBeDefined();
    const code = workbook.cells.get('Lasts')?.[1]?.[0];
    expect(watched.runs.filter(({ last }) => last.code === code)).toEqual([]);
    expect(watched.results).toBeUndefined();
    workbook.enter('Lasts', 1, 3, before);
    await until(() => watched.results && watched.problems.length === 0);
  });

  it('tells of what stands below a table, where nothing reads it', async () => {
    const { workbook, watched } = watch();
    await until(() => watched.results);
    const { area } = demo.sheets.flatMap(({ tables }) => tables).find(({ name }) => name === 'Bottom stock')!;
    workbook.filledBelow.set('Bottom stock', area.row + area.rows + 4);
    // Order stands below Pairage.
    workbook.filledBelow.set('Pairage', 30);
    watched.workOn();
    await until(() => watched.results?.checks[0]?.kind === 'notRead');
    const told = watched.results!.checks.filter(({ kind }) => kind === 'notRead');
    expect(told.map((check) => checkInWords(check, { where: watched.where }).say)).toEqual([
      expect.stringMatching(new RegExp(`^Bottom stock, row ${area.row + area.rows + 5}: what stands from here down`)),
    ]);
    expect(watched.counts?.putRight).toBe(1);
  });

  it('keeps the results before while new ones are worked out, stops on request and goes on', async () => {
    const { workbook, watched } = watch();
    await until(() => watched.results);
    const first = watched.results;
    workbook.enter('Pairage', 1, 4, 9);
    await until(() => watched.before === first);
    watched.stopWorking();
    expect(watched.stopped).toBe(true);
    await new Promise((resolve) => setTimeout(resolve, 60));
    expect(watched.results).toBeUndefined();
    watched.workOn();
    await until(() => watched.results);
    expect(watched.results?.orders.length).toBe(first?.orders.length);
    expect(watched.before).toBeUndefined();
  });

  it('keeps what stood while new results are worked out: counts, problems and what is shown', async () => {
    const { workbook, watched } = watch();
    await until(() => watched.results);
    const row = workbook.cells.get('Pairage')!.findIndex(([style]) => style === 'Fennel');
    await workbook.select('Pairage', row, 0);
    await until(() => watched.shown?.style === 'Fennel');
    const { shown } = watched;
    const seen: string[] = [];
    const kinds: string[] = [];
    watched.onChange(() => {
      const { counts, problems } = watched;
      if (problems.length > 0) kinds.push(watched.standing.kind);
      seen.push(
        `${counts ? 'counts' : '-'} ${problems.length} ${JSON.stringify(watched.shown) === JSON.stringify(shown)}`,
      );
    });
    const first = watched.results;
    workbook.enter('Pairage', 1, 4, 9);
    await until(() => watched.results && watched.results !== first);
    expect(new Set(seen)).toEqual(new Set(['counts 0 true']));
    // A slip is told at once, and what can be built stays while it is found out what goes without it.
    seen.length = 0;
    const before = workbook.cells.get('Lasts')![1]![3];
    workbook.enter('Lasts', 1, 3, 'long');
    await until(() => watched.standing.kind === 'slips');
    expect(kinds[0]).toBe('plan');
    expect(seen[0]).toMatch(/^counts [1-9]\d* true$/);
    expect(seen.filter((one) => one.includes(' 0 '))).toEqual([]);
    workbook.enter('Lasts', 1, 3, before);
    await until(() => watched.results && watched.problems.length === 0);
  });

  it('says why where the workbook cannot be read, and reads it when asked again', async () => {
    const { workbook, watched } = watch();
    await until(() => watched.results);
    const read = workbook.tables;
    workbook.tables = () => Promise.reject(new Error('A cell is being edited.'));
    watched.workOn();
    await until(() => watched.trouble);
    expect(watched.trouble).toBe('A cell is being edited.');
    workbook.tables = read;
    watched.workOn();
    await until(() => watched.results);
    expect(watched.trouble).toBeUndefined();
  });

  it('says why where the workbook’s changes are not heard, and listens anew when asked again', async () => {
    const workbook = new Workbook();
    workbook.refused = new Error('Excel was busy and dropped the request.');
    const watched = new Watched(workbook as unknown as Host);
    await until(() => watched.results);
    expect(watched.trouble).toBe('Excel was busy and dropped the request.');
    workbook.refused = undefined;
    watched.workOn();
    expect(watched.trouble).toBeUndefined();
    const before = watched.results;
    workbook.enter('Pairage', 1, 4, 9);
    await until(() => watched.results && watched.results !== before);
  });

  it('says why where what is selected cannot be followed, until it can', async () => {
    const { workbook, watched } = watch();
    await until(() => watched.results);
    const placed = workbook.tablePlace;
    workbook.tablePlace = () => Promise.reject(new Error('The workbook is protected.'));
    workbook.selectCell(demo.sheets[0]!.name, 0, 0);
    await until(() => watched.trouble);
    expect(watched.trouble).toBe('The workbook is protected.');
    workbook.tablePlace = placed;
    workbook.selectCell(demo.sheets[0]!.name, 0, 1);
    await until(() => watched.trouble === undefined);
  });
});
