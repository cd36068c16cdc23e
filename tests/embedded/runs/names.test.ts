import { describe, expect, it } from 'vitest';
import { beside, named, numbered, tidied } from '../../../src/embedded/runs/names';
import { runName } from '../../../src/host/grid/as-entered';
import { small } from './small-workbook';

describe('names of runs', () => {
  it('take the next number that is free, whatever their letters’ case', () => {
    expect(numbered('Autumn', [])).toBe('Autumn');
    expect(numbered('Autumn', ['autumn'])).toBe('Autumn 2');
    expect(numbered('Autumn', ['Autumn', 'AUTUMN 2', 'Autumn 3'])).toBe('Autumn 4');
    expect(numbered('Autumn 2', ['Autumn 2'])).toBe('Autumn 3');
    expect(numbered('Autumn 2027', ['Autumn 2027'])).toBe('Autumn 2027 2');
    expect(numbered('2', ['2'])).toBe('2 2');
  });

  it('are tidied of what would make them formulas or run over', () => {
    expect(tidied('  Autumn \n run ')).toBe('Autumn run');
    expect(tidied('==1+2')).toBe('1+2');
    expect(tidied(' = ')).toBe('');
    expect(tidied('x'.repeat(200))).toHaveLength(80);
  });

  it('of files are taken where a run that is here has the title already; else it stays', () => {
    const ours = (title: string) => {
      const workbook = small(title);
      return {
        ...workbook,
        sheets: { ...workbook.sheets, one: { ...workbook.sheets['one'], custom: { kind: 'run' } } },
      };
    };
    const [autumn, others] = [ours('Autumn: 1/2'), small('Autumn')];
    expect(beside(autumn, 'A-changed', [])).toBe(autumn);
    expect(beside(autumn, 'A-changed', ['Winter', 'Autumn 1'])).toBe(autumn);
    expect(runName(beside(autumn, 'A-changed', ['Winter', 'autumn: 1/2']))).toBe('A-changed');
    // Files may not be called all that runs are.
    expect(beside(autumn, 'Autumn 1 2', ['Autumn: 1/2'])).toBe(autumn);
    expect(beside(autumn, ' ', ['Autumn: 1/2'])).toBe(autumn);
    expect(beside(others, 'A-changed', ['Autumn'])).toBe(others);
  });

  it('go into the title that stands by itself, and never into a heading', () => {
    const spring = small('Spring');
    const autumn = named(spring, 'Autumn');
    expect(runName(autumn)).toBe('Autumn');
    expect(autumn.sheets['one']?.cellData?.[0]?.[0]).toEqual({ v: 'Autumn' });
    expect(runName(spring)).toBe('Spring');
    for (const first of [
      // A table at the head of the sheet, a formula, nothing.
      { 0: { 0: { v: 'Style' }, 1: { v: 'Last' } } },
      { 0: { 0: { f: '=B7', v: 'Style' } } },
      { 0: {} },
    ]) {
      const headed = small('', first);
      const other = named(headed, 'Autumn');
      expect([runName(headed), runName(other)]).toEqual(['Small', 'Autumn']);
      expect(other.sheets).toBe(headed.sheets);
    }
  });
});
