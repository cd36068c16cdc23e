import { describe, expect, it } from 'vitest';
import { Problem } from '../../src/core/problem';
import { startSection } from '../../src/taskpane/start-section';
import type { Watched } from '../../src/taskpane/watched';
import { blank } from '../../src/workbook/blank';
import { demo } from '../../src/workbook/demo';
import { tableCells } from '../demo-cells';
import { words } from './words-of';

const nothing = () => undefined;
const said = (workbook: typeof demo, problems: readonly Problem[] = []) => {
  const tables = new Map(Object.entries(tableCells(workbook)));
  const watched = { tables, problems, standing: { kind: 'plan' } } as unknown as Watched;
  return words(startSection(watched, nothing, nothing, undefined));
};

describe('how to begin', () => {
  it('asks to type over grey examples where a table that is open has some', () => {
    expect(said(blank)).toContain('Type over the grey examples.');
  });

  it('speaks of none in a run without any, whose costs are by chance those of the examples', () => {
    const slip = new Problem('invalid', { argument: 'pairage', table: 'Pairage', row: 1, column: 'Style' }, 'no');
    expect(said(demo, [slip])).toContain('finish Pairage');
    expect(said(demo, [slip])).not.toContain('grey examples');
  });
});
