import { describe, expect, it } from 'vitest';
import { foreignUnit } from '../../src/tables/heading-unit';
import { INPUT_TABLES } from '../../src/tables/input-tables';
import { readTable } from '../../src/tables/read';
import type { Column } from '../../src/tables/schema';

const millimetres: Pick<Column, 'kind' | 'unit'> = { kind: 'number', unit: 'mm' };

describe('foreignUnit', () => {
  it('is none for the unit of the column, however spelt, and for notes', () => {
    for (const own of [undefined, 'mm', 'MM', 'millimetres', 'in mm', 'at seat', 'in all', 'net'])
      expect(foreignUnit(millimetres, own)).toBeUndefined();
    expect(foreignUnit({ kind: 'number', unit: '°' }, 'degrees')).toBeUndefined();
    expect(foreignUnit({ kind: 'number' }, 'm')).toBeUndefined();
    expect(foreignUnit({ kind: 'text', unit: 'mm' }, 'cm')).toBeUndefined();
  });

  it('tells by how much a number in it is to be multiplied', () => {
    // The inch is 25.4 mm; iron and ounce are 1/48 and 1/64 of it (US Federal Test Method Standard 311, 3.2.114).
    const factors = {
      cm: 10,
      'in cm': 10,
      inches: 25.4,
      'in.': 25.4,
      '"': 25.4,
      iron: 25.4 / 48,
      oz: 25.4 / 64,
      m: 1000,
    };
    for (const [own, factor] of Object.entries(factors))
      expect(foreignUnit(millimetres, own)).toMatchObject({ unit: own, factor });
    const density = { kind: 'number', unit: 'kg/m³' } as const;
    expect(foreignUnit(density, 'g/cm³')?.factor).toBe(1000);
    // 1 lb/ft³ = 16.018 46 kg/m³ (NIST Special Publication 811, Appendix B.9).
    expect(foreignUnit(density, 'lb/ft³')?.factor).toBeCloseTo(16.01846, 5);
  });

  it('knows a unit that measures something else', () => {
    for (const own of ['kg', '%', 'g/cm³', 'hours']) expect(foreignUnit(millimetres, own)?.factor).toBeUndefined();
  });
});

describe('a heading with another unit', () => {
  it('is refused with what to do: its numbers would be taken for mm', () => {
    const { problems } = readTable(INPUT_TABLES.stock, [
      ['Stock', 'Material', 'Thick\nmm', 'Width (cm)', 'Length\nmm'],
      ['Cork 6', 'cork', 6, 50, 1000],
    ]);
    expect(problems.map(({ message }) => message)).toEqual([
      'Bottom stock, Width: the heading says cm, but Width is in mm; enter the numbers in mm, or each with its unit, such as 5 cm, and write the heading as Width mm',
    ]);
  });
});
