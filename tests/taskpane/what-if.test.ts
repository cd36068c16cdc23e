import { describe, expect, it, vi } from 'vitest';
import { placeInWords } from '../../src/core/problem';
import { whatIfPicture } from '../../src/drawing/what-if-picture';
import type { Host } from '../../src/host/host';
import type { Cells } from '../../src/tables/cell';
import { INPUT_TABLES } from '../../src/tables/input-tables';
import { type TriedCell, triedCell } from '../../src/tables/what-if/tried-cell';
import type { PictureFrame } from '../../src/taskpane/picture-frame';
import type { Watched } from '../../src/taskpane/watched';
import { WhatIf } from '../../src/taskpane/what-if';
import { whatIfSection } from '../../src/taskpane/what-if-section';
import { whatIfSheet } from '../../src/workbook/what-if-sheet';
import { cellsOf, inputOf, ROUND, STOCKS, USUAL_TABLES } from '../core/samples';
import { Plan } from '../../src/core/plan/plan';
import { words } from './words-of';

const records = { ...USUAL_TABLES, stock: STOCKS.map((one) => ({ ...one, Price: 10 })) };
const tables: ReadonlyMap<string, Cells> = new Map(
  Object.entries(INPUT_TABLES).map(([argument, { name }]) => {
    const own = (records as Readonly<Record<string, typeof STOCKS | undefined>>)[argument];
    return [name, own ? cellsOf(own) : []] as const;
  }),
);
const [table, heel] = ['Lasts', Object.keys(ROUND).indexOf('Heel height')];
const cell = triedCell(table, tables.get(table)!, 1, heel) as TriedCell;

async function tried(list: string): Promise<WhatIf> {
  const whatIf = new WhatIf(() => undefined);
  whatIf.take(cell);
  whatIf.enter({ list });
  whatIf.start(tables, placeInWords);
  await vi.waitFor(() => expect(whatIf.running).toBe(false), { timeout: 60_000, interval: 20 });
  return whatIf;
}

describe('what if', { timeout: 120_000 }, () => {
  it('plans each number, today’s among them, and a number that cannot be has its sentence in its row', async () => {
    const whatIf = await tried('40; 50; -3');
    expect(whatIf.tried.map(({ value }) => value)).toEqual([-3, 40, 45, 50]);
    expect(whatIf.tried[0]).toMatchObject({ outcome: undefined, why: expect.stringContaining('Heel height') });
    expect(whatIf.tried.slice(1).every(({ outcome }) => outcome && outcome.sheets > 0)).toBe(true);
  });

  it('says what to enter otherwise, and can be stopped', () => {
    const whatIf = new WhatIf(() => undefined);
    whatIf.take(cell);
    whatIf.enter({ from: 'low' });
    whatIf.start(tables, placeInWords);
    expect(whatIf.fault).toMatch(/Enter a number for From/);
    whatIf.enter({ from: '40', to: '50', step: '1' });
    whatIf.start(tables, placeInWords);
    whatIf.stop();
    expect(whatIf.running).toBe(false);
  });

  it('says that it is on a sheet only as long as that is there', async () => {
    const whatIf = await tried('40');
    whatIf.wrote('What if');
    const read = vi
      .fn<Host['read']>()
      .mockResolvedValueOnce({ cells: [['']] } as never)
      .mockResolvedValue(undefined);
    await whatIf.look({ read });
    expect(whatIf.written).toBe('What if');
    await whatIf.look({ read });
    expect(whatIf.written).toBeUndefined();
    await whatIf.look({ read });
    expect(read).toHaveBeenCalledTimes(2);
  });

  it('is drawn, told as a table and written as a sheet with the same numbers', async () => {
    const whatIf = await tried('40; 50; -3');
    const plan = new Plan(inputOf({}));
    const watched = { standing: { kind: 'plan', plan }, tables, places: new Map(), money: '€' } as unknown as Watched;
    const frame = {
      view: ({ draw }: { draw: (width: number) => { label: string } }) => draw(90).label,
    } as unknown as PictureFrame;
    const said = words(whatIfSection(watched, whatIf, frame, 360, () => undefined)).replace(/\s+/g, ' ');
    expect(said).toContain('45, today');
    expect(said).toContain('Round, Heel height, 4 values from −3 to 50');
    expect(said).toContain('Write to a sheet');
    const sheet = whatIfSheet(cell, whatIf.tried, '€');
    const at = (row: number, column: number) =>
      sheet.cells.find((one) => one.row === row && one.column === column)?.value;
    expect([3, 4, 5, 6].map((row) => at(row, 0))).toEqual([-3, 40, 45, 50]);
    expect([4, 5, 6].map((row) => at(row, 1))).toEqual(whatIf.tried.slice(1).map(({ outcome }) => outcome?.sheets));
    const measure = { words: 'Bench, h', of: () => 1, digits: 1 };
    const { marks, facts } = whatIfPicture({ ...cell, tried: whatIf.tried, measure }, 90);
    expect(facts.filter(([what]) => !what.startsWith('Step'))).toHaveLength(4);
    expect(JSON.stringify(marks)).not.toMatch(/NaN|null|Infinity/);
    expect(JSON.stringify(marks)).toContain('today 45');
  });
});
