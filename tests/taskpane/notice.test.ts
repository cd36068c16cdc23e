import { describe, expect, it } from 'vitest';
import { placeInWords } from '../../src/core/problem';
import { planCells } from '../../src/tables/plan-cells';
import { readPlan } from '../../src/tables/plan-input';
import { notice } from '../../src/taskpane/notice';
import type { Watched } from '../../src/taskpane/watched';
import { blank } from '../../src/workbook/blank';
import { tableCells } from '../demo-cells';
import { words } from './words-of';

/** The line above the pane's tabs, where blank tables have one row typed over: the given cells by heading, the others as they were. */
function said(table: string, own: Readonly<Record<string, unknown>>): string {
  const tables = new Map<string, unknown[][]>(Object.entries(tableCells(blank)));
  const [headings = [], first = [], ...rest] = tables.get(table) ?? [];
  const heading = (at: number) => String(headings[at]).split('\n')[0] ?? '';
  tables.set(table, [headings, first.map((cell, at) => (heading(at) in own ? own[heading(at)] : cell)), ...rest]);
  const { problems, plan } = readPlan(planCells(tables));
  const watched = { tables, problems: [...problems, ...plan.runs.problems], where: placeInWords } as unknown as Watched;
  const nothing = () => undefined;
  return words(notice(watched, nothing, nothing))
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ');
}

describe('the pane’s line for who begins', () => {
  it('asks to fill in what is blank', () => {
    expect(said('Bottom stock', { Stock: 'Bend 5', Material: '' })).toContain(
      'Still to fill in: row 1 of Bottom stock, Material: it is blank',
    );
  });

  it('asks to fill in what is named and not entered yet', () => {
    expect(said('Styles', { Outsole: 'Rubber 6' })).toMatch(
      /Still to fill in: row 1 of Styles, Outsole: "Rubber 6" is not in Bottom stock/,
    );
  });

  it('asks to put right what is entered and refused', () => {
    const line = said('Bottom stock', { Stock: 'Bend 5', 'Moulded face': 1000 });
    expect(line).toContain('To put right: row 1 of Bottom stock, Moulded face: 1000 is not known');
    expect(line).not.toContain('Still to fill in');
  });
});
