import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { blank } from '../../src/workbook/blank';
import { demo } from '../../src/workbook/demo';

describe('sheets of rows that begin with a name', () => {
  it('keep that column beside what is scrolled past: Run and every table', () => {
    for (const { sheets } of [demo, blank])
      for (const { name, frozen, kind } of sheets)
        if (kind === 'run' || kind === 'inputs') expect([name, frozen.columns]).toEqual([name, 1]);
  });
});

describe('the head of a run', () => {
  it('says where the functions are not at work, by formulas that every spreadsheet has', () => {
    for (const { sheets } of [demo, blank]) {
      const said = sheets[0]?.cells.filter(({ formula }) => formula?.startsWith('=IF(ISERROR(SOLEBENCH.'));
      expect(said).toHaveLength(1);
      expect(said?.[0]?.formula).toMatch(/,"Nothing can be worked out here: .*",""\)$/);
    }
  });
});

describe('the functions of a workbook', () => {
  it('are all there: by another name a formula is an error wherever it is worked out', () => {
    const folder = 'src/functions';
    const there = new Set(
      readdirSync(folder).flatMap((file) =>
        [...readFileSync(`${folder}/${file}`, 'utf8').matchAll(/@customfunction (\w+)/g)].map(([, name]) => name),
      ),
    );
    expect(there.size).toBeGreaterThan(40);
    for (const { sheets } of [demo, blank]) {
      const named = sheets.flatMap(({ cells }) =>
        cells.flatMap(({ formula = '' }) => [...formula.matchAll(/SOLEBENCH\.(\w+)/g)].map(([, name]) => name)),
      );
      expect(named.length).toBeGreaterThan(8);
      expect(named.filter((name) => !there.has(name))).toEqual([]);
    }
  });
});
