import { beforeAll, describe, expect, it } from 'vitest';
import type { Book } from '../../../src/exchange/xlsx/book';
import { readBook } from '../../../src/exchange/xlsx/read';
import { valuesOnly } from '../../../src/exchange/xlsx/values-only';
import { writeBook } from '../../../src/exchange/xlsx/write';
import { bookOfGrid } from '../../../src/host/grid/book-of-grid';
import { gridOfBook } from '../../../src/host/grid/grid-of-book';
import { snapshotOf } from '../../../src/host/grid/snapshot';
import { blank } from '../../../src/workbook/blank';
import { demo } from '../../../src/workbook/demo';
import { CORPUS } from './corpus/workbooks';
import { sampleBook } from './sample-book';
import { faultsOf, type Parts, partsOf, SCHEMAS } from './standard';

const ofGrid = (plan: typeof demo) => bookOfGrid(snapshotOf(plan, 'workbook'));

const WRITTEN: readonly (readonly [string, () => Book | Promise<Book>])[] = [
  ['the sample', () => sampleBook],
  ['the demo', () => ofGrid(demo)],
  ['the blank tables', () => ofGrid(blank)],
  ['the sample’s values alone', () => valuesOnly(sampleBook)],
  ...CORPUS.map(
    ({ name, bytes }) =>
      [
        `what the page saves of a workbook of others: ${name}`,
        async () => bookOfGrid(gridOfBook(readBook(await bytes()).book, 'Own', 'workbook')),
      ] as const,
  ),
];

const sheet = 'xl/worksheets/sheet1.xml';
const styles = 'xl/styles.xml';
const SPOILT: readonly (readonly [what: string, part: string, found: RegExp, put: string])[] = [
  ['columns after the cells', sheet, /(<cols>.*?<\/cols>)(<sheetData>.*?<\/sheetData>)/s, '$2$1'],
  ['a cell beyond the sheet', sheet, /<c r="A1"/, '<c r="XFE1"'],
  ['a cell of four letters', sheet, /<c r="A1"/, '<c r="AAAA1"'],
  ['a row twice', sheet, /(<row r="1".*?<\/row>)/s, '$1$1'],
  ['a kind of value that there is not', sheet, / t="b"/, ' t="d1"'],
  ['no height of rows', sheet, / defaultRowHeight="[^"]*"/, ''],
  ['an attribute that there is not', sheet, /<sheetData>/, '<sheetData lang="en">'],
  ['a look that there is not', sheet, / s="1"/, ' s="999"'],
  ['a text that there is not', sheet, / t="s"><v>0</, ' t="s"><v>999<'],
  ['a rule without cells', sheet, /(<dataValidation [^>]*) sqref="[^"]*"/, '$1'],
  ['a count that is not true', styles, /<fonts count="\d+"/, '<fonts count="99"'],
  ['a colour of three parts', styles, / rgb="FF/, ' rgb="'],
  ['a weight of lines that there is not', styles, / style="thin"/, ' style="thinner"'],
  ['elements of a lettering in another order', styles, /(<sz [^>]*>)(<color [^>]*>)/, '$2$1'],
  ['a sheet’s name of 32 letters', 'xl/workbook.xml', /<sheet name="[^"]*"/, `<sheet name="${'x'.repeat(32)}"`],
  ['a sheet without a part', 'xl/_rels/workbook.xml.rels', /worksheets\/sheet1\.xml/, 'worksheets/sheet9.xml'],
  ['a part without its kind', '[Content_Types].xml', / ContentType="[^"]*"/, ''],
  ['a comment without a cell', 'xl/comments1.xml', /<comment ref="[^"]*"/, '<comment'],
  ['a property without a number', 'docProps/custom.xml', / pid="2"/, ''],
];

describe('a file', () => {
  const found = new Map<string, readonly string[]>();
  const parts = new Map<string, Parts>();
  beforeAll(async () => {
    for (const [name, book] of WRITTEN) parts.set(name, partsOf(writeBook(await book())));
    const faults = await faultsOf([...parts.values()]);
    [...parts.keys()].forEach((name, at) => found.set(name, faults[at] ?? ['not looked at']));
  }, 120_000);

  it.each(WRITTEN)('is as the standard has it: %s', (name) => {
    const names = [...(parts.get(name)?.keys() ?? [])];
    expect(names.length).toBeGreaterThan(7);
    // Boxes of comments are in an older language, of which there is no schema.
    const unchecked = names.filter((one) => !SCHEMAS.some(([pattern]) => pattern.test(one)));
    expect(unchecked.filter((one) => !one.endsWith('.vml'))).toEqual([]);
    expect(found.get(name)).toEqual([]);
  });

  it('is found out where it is spoilt, so that the checks are worth something', async () => {
    const good = partsOf(writeBook(sampleBook));
    const spoilt = SPOILT.map(([what, part, pattern, put]): Parts => {
      const changed = good.get(part)?.replace(pattern, put) ?? '';
      expect(changed, what).not.toBe(good.get(part));
      return new Map([...good, [part, changed]]);
    });
    const faults = await faultsOf(spoilt);
    expect(SPOILT.filter((_, at) => faults[at]?.length === 0).map(([what]) => what)).toEqual([]);
  }, 60_000);
});
