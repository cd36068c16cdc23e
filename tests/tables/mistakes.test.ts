import { describe, expect, it } from 'vitest';
import { checkInWords } from '../../src/tables/check-in-words';
import { placeOfCheck } from '../../src/tables/check-place';
import { INPUT_TABLES } from '../../src/tables/input-tables';
import { readPlan } from '../../src/tables/plan-input';
import { blank } from '../../src/workbook/blank';
import { tableCells } from '../demo-cells';

/**
 * Mistakes that a maker makes who starts from blank tables, each with what tells of it. The messages are ours; what is
 * held here is that none goes unsaid and that each says what to change.
 */
type Tables = Record<'pairage' | 'styles' | 'lasts' | 'stock' | 'rates' | 'outlines', unknown[][]>;
type Edit = (tables: Tables) => void;

function fresh(): Tables {
  const cells = tableCells(blank);
  const of = (name: string) => structuredClone(cells[name] ?? []);
  return {
    pairage: of('Pairage'),
    styles: of('Styles'),
    lasts: of('Lasts'),
    stock: of('Bottom stock'),
    rates: of('Costs and times'),
    outlines: [],
  };
}

const at = (cells: unknown[][], heading: string) => {
  const index = (cells[0] ?? []).findIndex((cell) => String(cell).split('\n')[0] === heading);
  if (index < 0) throw new Error(`No column is headed ${heading}.`);
  return index;
};
const set =
  (table: keyof Tables, heading: string, value: unknown, row = 1): Edit =>
  (tables) => {
    const line = tables[table][row];
    if (line) line[at(tables[table], heading)] = value;
  };
const head =
  (table: keyof Tables, heading: string, value: unknown): Edit =>
  (tables) =>
    ((tables[table][0] as unknown[])[at(tables[table], heading)] = value);
const swap =
  (table: keyof Tables, a: string, b: string): Edit =>
  (tables) => {
    const [i, j] = [at(tables[table], a), at(tables[table], b)];
    for (const line of tables[table].slice(1)) [line[i], line[j]] = [line[j], line[i]];
  };
const rate =
  (...row: unknown[]): Edit =>
  ({ rates }) => {
    const blankRow = rates.findIndex((line, i) => i > 0 && line.every((cell) => cell === ''));
    rates[blankRow < 0 ? rates.length : blankRow] = row;
  };
const gaps =
  (...points: readonly (readonly [number, number])[]): Edit =>
  (tables) => {
    set('lasts', 'Measured', 'Gaps')(tables);
    tables.outlines = [['Code', 'Role', 'x', 'y'], ...points.map(([x, y]) => ['Gaps', 'gap', x, y])];
  };
const sizes =
  (change: (size: number) => unknown, pairs?: (n: unknown) => unknown): Edit =>
  ({ pairage }) => {
    const [headings = [], row = []] = pairage;
    headings.forEach((cell, i) => {
      if (typeof cell !== 'number') return;
      if (pairs) row[i] = pairs(row[i]);
      headings[i] = change(cell);
    });
  };
const same = (size: number) => size;

/** All that is said of the tables: what keeps them from being read, and what the checks say. */
function said(...edits: readonly Edit[]): readonly string[] {
  const tables = fresh();
  for (const edit of edits) edit(tables);
  const { plan, problems } = readPlan(tables);
  return problems.length > 0
    ? problems.map(({ message }) => message)
    : plan.checks.filter(({ verdict }) => verdict !== 'holds').map((check) => checkInWords(check).say);
}

const MISTAKES: readonly (readonly [what: string, edit: Edit, say: string])[] = [
  [
    'a style mistyped in Pairage',
    set('pairage', 'Style', 'Exampel'),
    '"Exampel" is not in Styles; is "Example" meant?',
  ],
  ['no pairs', sizes(same, () => 0), 'Pairage: no size has any pairs; enter them under the sizes'],
  ['blank pairs', sizes(same, () => ''), 'Pairage: no size has any pairs; enter them under the sizes'],
  ['half a pair', set('pairage', '38', 2.5), 'row 1 of Pairage, 38: 2.5 is not possible; give a whole number'],
  ['pairs in words', set('pairage', '38', 'two'), 'row 1 of Pairage, 38: "two" is not a number'],
  ['far too many pairs', set('pairage', '38', 100_000), 'give 10000 or less'],
  [
    'English sizes under a continental last',
    sizes((size) => size - 32),
    'are no sizes of EU, the System of the last, which runs from about 16 to 52; UK 5 is about EU 37.5: enter the pairs under columns headed by sizes of EU, or UK under System in Pairage, or give the last in UK',
  ],
  ['a heading with its system', head('pairage', '38', 'EU 38'), '"EU 38" heads no size; write the number alone'],
  ['a size typed backwards', head('pairage', '38', 83), '83 is no size of EU'],
  ['a size far from the base size', head('pairage', '38', 26), 'size 26 is graded far from the last as measured'],
  [
    'a day without its year',
    set('pairage', 'Due', '14 June'),
    '"14 June" has no year, and no other day tells the year of the run; enter it such as 2027-06-14',
  ],
  [
    'a day in words',
    set('pairage', 'Due', 'midsummer'),
    '"midsummer" is no day that the sheet knows; enter one such as 2027-06-14',
  ],
  ['a last mistyped', set('styles', 'Last', 'Last45'), '"Last45" is not in Lasts; is "Last 45" meant?'],
  ['another last', set('styles', 'Last', 'Last 60'), '"Last 60" is not in Lasts; enter it there or name another'],
  ['no last', set('styles', 'Last', ''), 'row 1 of Styles, Last: it is blank; enter it'],
  ['a stock mistyped', set('styles', 'Lifts', 'cork6'), '"cork6" is not in Bottom stock; is "Cork 6" meant?'],
  ['stocks separated by a slash', set('styles', 'Lifts', 'Cork 6/Cork 4'), 'part several by commas'],
  ['no lifts', set('styles', 'Lifts', ''), 'a wedge needs stock for its lifts; name one or more'],
  [
    'lifts with nothing to raise',
    set('styles', 'Raise', ''),
    'lifts are named and Raise is none, so they are not built',
  ],
  [
    'a heeled last without a heel',
    set('styles', 'Raise', 'none'),
    'set Raise to wedge or heel, or take a last of that heel',
  ],
  ['a word that is none of a column’s', set('styles', 'Raise', 'weg'), '"weg" is not known; use wedge, heel or none'],
  ['a top piece under a wedge', set('styles', 'Top piece', 'Rubber 4'), 'a top piece belongs under a heel'],
  [
    'bare foam on the ground',
    set('styles', 'Outsole', 'Foam 10'),
    'bare foam wears fast on the ground: add an outsole',
  ],
  ['a bare cork heel', set('styles', 'Raise', 'heel'), 'bare cork wears fast on the ground: add a top piece'],
  [
    'an edge as thick as a lift',
    set('styles', 'Skive to', 7),
    'row 1 of Styles, Skive to: lift 1 is 5 mm thick and cannot be skived to 7 mm; give less',
  ],
  ['a finished heel below the last', set('styles', 'Finished heel', 40), 'stands 49 mm high already; ask for more'],
  ['a finished heel in cm', set('styles', 'Finished heel', 7), 'stands 49 mm high already'],
  [
    'a finished heel that the platform misses',
    set('styles', 'Finished heel', 75),
    'allow 4.0 mm (Most rasping in Styles) or add a thickness',
  ],
  ['less than nothing', set('styles', 'Rounding allowance', -2), '-2 is not possible; give 0 mm or more'],
  ['a heel in cm', set('lasts', 'Heel height', 4.5), 'no layers of 6, 4 mm reach 4.5 mm'],
  ['a length in cm', set('lasts', 'Bottom length', 25.5), '25.5 is not possible; give 50 mm or more'],
  [
    'length and heel swapped',
    swap('lasts', 'Bottom length', 'Heel height'),
    'Heel height: 255 is not possible; give 150 mm or less',
  ],
  [
    'seat and tread swapped',
    swap('lasts', 'Seat', 'Tread'),
    'the seat is wider than the tread: look whether the widths are in',
  ],
  ['a waist wider than the tread', set('lasts', 'Waist', 95), 'the waist is wider than the tread'],
  ['a base size of another system', set('lasts', 'System', 'UK'), 'row 1 of Lasts, Base size: 38 is no size of UK'],
  [
    'an English base size',
    set('lasts', 'Base size', 5),
    'row 1 of Lasts, Base size: 5 is no size of EU, which runs from about 16 to 52; UK 5 is about EU 37.5; correct it, or the System',
  ],
  ['a heel that no last has', set('lasts', 'Heel height', 120), 'check both, or give measured gaps'],
  [
    'a heel that slope and waist do not fit',
    set('lasts', 'Waist height', 60),
    'the curve misses the waist height by so much',
  ],
  ['gaps that are not there', set('lasts', 'Measured', 'Gaps'), 'nothing measured is in Outlines under Gaps'],
  ['gaps that begin late', gaps([20, 40], [80, 20], [160, 0]), 'the first gap lies at 20 mm; begin at the back, at 0'],
  ['gaps of another heel', gaps([0, 60], [80, 20], [160, 0]), 'the first gap is not the heel height that Lasts gives'],
  [
    'groups of sizes that overlap',
    set('lasts', 'Size groups', '36-38; 38-40'),
    'the groups must rise and may not overlap',
  ],
  ['no pairs of lasts', set('lasts', 'Pairs on hand', 0), 'has no pair on hand: enter it in Lasts'],
  [
    'a heading cut short',
    head('lasts', 'Heel height', 'Heel'),
    'no column is headed Heel height; the table’s first row must hold the headings; it has "Heel", which no column is called',
  ],
  ['no thickness', set('stock', 'Thick', 0), '0 is not possible; give 0.1 mm or more'],
  ['thickness and width swapped', swap('stock', 'Thick', 'Width'), 'Thick: 500 is not possible; give 300 mm or less'],
  [
    'sheets in cm',
    (tables) => {
      set('stock', 'Width', 50)(tables);
      set('stock', 'Length', 100)(tables);
    },
    'take a larger sheet or let the piece lie another way',
  ],
  [
    'a price in words',
    set('stock', 'Price', 'about 15'),
    '"about 15" is not a number; enter the number alone, such as 15',
  ],
  [
    'a price of two meanings',
    set('stock', 'Price', '1.500'),
    '"1.500" may be 1.5 or 1500; enter the one that is meant',
  ],
  [
    'a sheet measured far from what it is sold as',
    set('stock', 'Measured', 5.2),
    'the measured thickness counts, and it is not what the sheet is sold as',
  ],
  ['no price', set('stock', 'Price', ''), 'no price is given, so order and cost lack it: enter it in Bottom stock'],
  [
    'by weight without a density',
    (tables) => {
      set('stock', 'Sold by', 'kg')(tables);
      set('stock', 'Density', '')(tables);
    },
    'what is sold by kg needs its density; enter it in kg/m³',
  ],
  ['a density in g/cm³', set('stock', 'Density', 0.24), '0.24 is not possible; give 5 kg/m³ or more'],
  [
    'a share that may be of one or of a hundred',
    set('stock', 'Usable share', 2),
    '2 is not possible; give a share from 5 % to 100 %, such as 80 or 0.8',
  ],
  [
    'more sanded off than there is',
    set('stock', 'Face loss', 8),
    '8 mm sanded off leave less than 0.1 mm of it; give less',
  ],
  [
    'a stock twice',
    set('stock', 'Stock', 'cork 6', 2),
    '"cork 6" is in row 1 of Bottom stock already; give each its own',
  ],
  [
    'a material that is none',
    set('stock', 'Material', 'paper'),
    'use cork, foam, leather, rubber, board, fabric or steel',
  ],
  [
    'a cell that shows an error',
    set('stock', 'Thick', '#REF!'),
    'the cell shows an error (#REF!); put that cell right first',
  ],
  [
    'a rate for nothing that there is',
    set('rates', 'For', 'Corc'),
    '"Corc" is no style, stock or material of this plan',
  ],
  ['a rate given twice', rate('Second', '', 50, 'money an hour'), 'money an hour is given twice for the same'],
  [
    'spoilage in per cent',
    rate('Spoilage', '', 1, 'share spoiled'),
    '1 is not possible where the unit is share spoiled; give less than all, such as 5 or 0.05 for 5 %; 1 % is 0.01',
  ],
  ['a coverage of nothing', rate('Other', 'cork', 0, 'm² a litre'), 'give more than 0, or leave the row out'],
  [
    'a minute a day',
    rate('Bench', '', 0.01, 'hours a day'),
    '0.01 is not possible where the unit is hours a day; give the hours that the bench works in a day, from 0.25 to 24',
  ],
  ['no coats', rate('Coats', '', 0, 'coats'), '0 is not possible where the unit is coats; give 1 or more'],
  [
    'a limit that no check has',
    rate('Shank', '', 25, 'limit'),
    '"Shank" is no limit that a check knows; use one of Heel control',
  ],
  [
    'Outlines under other headings',
    (tables) => {
      tables.outlines = [
        ['a', 'b'],
        ['x', 2],
      ];
    },
    'Outlines: no column is headed Code, nor x, nor y',
  ],
];

describe('a mistake in the tables', () => {
  it.each(MISTAKES)('such as %s is told of with what to change', (_what, edit, say) => {
    expect(said(edit).join('\n')).toContain(say);
  });

  it('is none where the tables are as they come', () => {
    expect(said()).toEqual([expect.stringContaining('stability'), expect.stringContaining('no minutes are given for')]);
  });

  it('is none either where the maker only writes otherwise', () => {
    const usual = said();
    const otherwise: readonly Edit[] = [
      set('pairage', 'Style', ' example '),
      set('lasts', 'Heel height', '4.5 cm'),
      set('lasts', 'Bottom length', '255,0'),
      set('styles', 'Shank', false),
      set('stock', 'Sold by', 'SHEET'),
      set('stock', 'Usable share', '100 %'),
      set('stock', 'Usable share', 100),
      set('pairage', 'Due', '2027-06-14'),
      head('stock', 'Thick', 'Thick (mm)'),
      head('stock', 'Price', 'Price, € a sheet'),
      head('pairage', '38', '38,0'),
      (tables) =>
        (tables.outlines = [
          ['a', 'b'],
          ['', ''],
        ]),
    ];
    for (const edit of otherwise.slice(0, -1)) expect(said(edit)).toEqual(usual);
    expect(said(otherwise.at(-1) as Edit).filter((say) => say.includes('Stock'))).toEqual([]);
  });

  it('is led back to a column that its table has', () => {
    for (const [, edit] of MISTAKES) {
      const tables = fresh();
      edit(tables);
      const { plan, problems } = readPlan(tables);
      if (problems.length > 0) continue;
      for (const check of plan.checks) {
        const { table, heading } = placeOfCheck(check, () => 'Last 45');
        const found = Object.values(INPUT_TABLES).find(({ name }) => name === table);
        expect(found, table).toBeDefined();
        const known = Object.values(found?.columns ?? {}).some((column) => column.heading === heading);
        if (heading !== undefined && !/^\d/.test(heading) && check.kind !== 'unreadHeading')
          expect(known, heading).toBe(true);
      }
    }
  });
});
