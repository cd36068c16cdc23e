import { createCanvas, GlobalFonts } from '@napi-rs/canvas';
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { styleOf } from '../../src/host/grid/look';
import { blank } from '../../src/workbook/blank';
import { demo } from '../../src/workbook/demo';

describe('sheets of rows that begin with a name', () => {
  it('keep that column beside what is scrolled past: Run and every table', () => {
    for (const { sheets } of [demo, blank])
      for (const { name, frozen, kind } of sheets)
        if (kind === 'run' || kind === 'inputs') expect([name, frozen.columns]).toEqual([name, 1]);
  });
});

describe('the title of a sheet', () => {
  it('has room in the columns that stay in sight, in the letters of the page', () => {
    GlobalFonts.registerFromPath('node_modules/@expo-google-fonts/arimo/600SemiBold/Arimo_600SemiBold.ttf', 'Title');
    const letters = createCanvas(1, 1).getContext('2d');
    letters.font = `${(styleOf({ role: 'title' }).fs ?? 0) * (4 / 3)}px Title`;
    // A run is called what its maker likes.
    const held = demo.sheets.filter(({ kind, frozen }) => kind !== 'run' && frozen.columns > 0);
    expect(held.length).toBeGreaterThan(10);
    for (const { name, cells, widths, frozen } of held) {
      const title = cells.find(({ role }) => role === 'title')?.value;
      const room = widths.slice(0, frozen.columns).reduce((sum, width) => sum + width, 0);
      expect(room, name).toBeGreaterThan(letters.measureText(String(title)).width + 6);
    }
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
