import { readFileSync } from 'node:fs';
import { strFromU8, unzipSync } from 'fflate';
import { SaxesParser } from 'saxes';
import { beforeAll, describe, expect, it } from 'vitest';
import { validateXML } from 'xmllint-wasm';
import { loadFunctions } from '../../../src/cli/functions-bundle';
import { recompute } from '../../../src/cli/recompute-workbook';
import type { Book } from '../../../src/exchange/xlsx/book';
import { readBook } from '../../../src/exchange/xlsx/read';
import { valuesOnly } from '../../../src/exchange/xlsx/values-only';
import { writeBook } from '../../../src/exchange/xlsx/write';
import { bookOfGrid } from '../../../src/host/grid/book-of-grid';
import { gridOfBook } from '../../../src/host/grid/grid-of-book';
import { snapshotOf } from '../../../src/host/grid/snapshot';
import { blank } from '../../../src/workbook/blank';
import { demo } from '../../../src/workbook/demo';
import { smallFile } from '../../cli/small-run';
import { CORPUS } from './corpus/workbooks';
import { sampleBook } from './sample-book';

const file = (name: string) => ({
  fileName: name,
  contents: readFileSync(`tests/exchange/xlsx/schema/${name}`, 'utf8'),
});

/** What each part is held to: our own statement of ECMA-376 as far as our files use it. */
const SCHEMAS = [
  [/^xl\/(worksheets\/sheet\d+|workbook|styles|sharedStrings|metadata|comments\d+)\.xml$/, 'spreadsheet.xsd'],
  [/\.rels$/, 'relationships.xsd'],
  [/^\[Content_Types\]\.xml$/, 'kinds.xsd'],
  [/^docProps\/custom\.xml$/, 'properties.xsd'],
] as const;
const IMPORTED = ['references.xsd', 'xml.xsd', 'texts.xsd'].map(file);

type Parts = ReadonlyMap<string, string>;

function partsOf(bytes: Uint8Array): Parts {
  return new Map(Object.entries(unzipSync(bytes)).map(([name, part]) => [name, strFromU8(part)]));
}

/**
 * What of some files' parts is not as the standard has it, by file. All are looked at together: to start the validator takes
 * longer than its work.
 */
async function faultsOf(files: readonly Parts[]): Promise<readonly (readonly string[])[]> {
  const found = files.map((parts) => [...countsIn(parts), ...missingIn(parts)]);
  for (const [pattern, schema] of SCHEMAS) {
    const xml = files.flatMap((parts, at) =>
      [...parts]
        .filter(([name]) => pattern.test(name))
        .map(([name, contents]) => ({ fileName: `${at} ${name.replaceAll(/[/[\]]/g, ' ')}`, contents })),
    );
    const { errors } = await validateXML({ xml, schema: [file(schema)], preload: IMPORTED });
    for (const { rawMessage } of errors) found[parseInt(rawMessage)]?.push(rawMessage);
  }
  return found;
}

/** Elements with a count that is not true; those of texts count how often they are used, those of later data what they stand for. */
function countsIn(parts: Parts): readonly string[] {
  const found: string[] = [];
  for (const [part, xml] of parts) {
    const open: { readonly name: string; readonly count: number; children: number }[] = [];
    const parser = new SaxesParser<{ xmlns: false }>({ xmlns: false });
    parser.on('opentag', ({ name, attributes }) => {
      const around = open.at(-1);
      if (around) around.children++;
      open.push({ name, count: Number(attributes['count'] ?? NaN), children: 0 });
    });
    parser.on('closetag', () => {
      const { name, count, children } = open.pop() ?? { name: '', count: NaN, children: 0 };
      if (!Number.isNaN(count) && !['sst', 'futureMetadata'].includes(name) && count !== children)
        found.push(`${part}: ${name} has ${children}, and counts ${count}`);
    });
    parser.write(xml).close();
  }
  return found;
}

/** Parts that are referred to and not there, and numbers that lead to nothing. */
function missingIn(parts: Parts): readonly string[] {
  const part = (name: string) => parts.get(name) ?? '';
  const listed = [...part('[Content_Types].xml').matchAll(/PartName="\/([^"]+)"/g)].map(([, name]) => name ?? '');
  const related = [...parts]
    .filter(([name]) => name.endsWith('.rels'))
    .flatMap(([name, xml]) =>
      [...xml.matchAll(/Target="([^"]+)"/g)].map(([, target]) =>
        new URL(target ?? '', `http://x/${name.replace(/_rels\/[^/]*$/, '')}`).pathname.slice(1),
      ),
    );
  const inside = (xml: string, element: string) => xml.split(`<${element} `)[1]?.split(`</${element}>`)[0] ?? '';
  const styles = part('xl/styles.xml');
  const looks = inside(styles, 'cellXfs').split('<xf ').length - 1;
  const fonts = inside(styles, 'fonts').split('<font>').length - 1;
  const fills = inside(styles, 'fills').split('<fill>').length - 1;
  const borders = inside(styles, 'borders').split('<border>').length - 1;
  const texts = part('xl/sharedStrings.xml').split('<si>').length - 1;
  const numbers = (xml: string, pattern: RegExp) => [...xml.matchAll(pattern)].map(([, number]) => Number(number));
  const sheets = [...parts].filter(([name]) => name.startsWith('xl/worksheets/sheet')).map(([, xml]) => xml);
  const beyond = [
    ...sheets.flatMap((xml) => numbers(xml, / (?:s|style)="(\d+)"/g).map((number) => ['look', number, looks] as const)),
    ...sheets.flatMap((xml) => numbers(xml, / t="s"><v>(\d+)</g).map((number) => ['text', number, texts] as const)),
    ...numbers(styles, / fontId="(\d+)"/g).map((number) => ['lettering', number, fonts] as const),
    ...numbers(styles, / fillId="(\d+)"/g).map((number) => ['ground', number, fills] as const),
    ...numbers(styles, / borderId="(\d+)"/g).map((number) => ['border', number, borders] as const),
  ].filter(([, number, of]) => number >= of);
  return [
    ...[...listed, ...related].filter((name) => !parts.has(name)).map((name) => `there is no ${name}`),
    ...beyond.map(([what, number, of]) => `there is no ${what} ${number} among ${of}`),
  ];
}

const ofGrid = (plan: typeof demo) => bookOfGrid(snapshotOf(plan, 'workbook'));

const WRITTEN: readonly (readonly [string, () => Book | Promise<Book>])[] = [
  ['the sample', () => sampleBook],
  ['the demo', () => ofGrid(demo)],
  ['the blank tables', () => ofGrid(blank)],
  ['the sample’s values alone', () => valuesOnly(sampleBook)],
  ['a run that is worked out', async () => (await recompute(smallFile(), [], loadFunctions('dist'))).book],
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
