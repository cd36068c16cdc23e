import { describe, expect, it } from 'vitest';
import * as SheetJS from 'xlsx';
import type { Book } from '../../../src/exchange/xlsx/book';
import { readBook } from '../../../src/exchange/xlsx/read';
import { writeBook } from '../../../src/exchange/xlsx/write';
import { bookOfGrid } from '../../../src/host/grid/book-of-grid';
import { gridOfBook } from '../../../src/host/grid/grid-of-book';
import { packageOf } from './package';
import { faultsOf, partsOf } from './standard';

const RELATIONS = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006/relationships';
const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const linked = (target: string) =>
  `<Relationships xmlns="${PACKAGE}"><Relationship Id="rId7" Type="${RELATIONS}/externalLinkPath" Target="${target}" TargetMode="External"/></Relationships>`;
const link = (value: number) =>
  `<externalLink xmlns="${MAIN}"><externalBook xmlns:r="${RELATIONS}" r:id="rId7"><later:alternateUrls xmlns:later="x"><later:a/></later:alternateUrls>` +
  `<sheetNames><sheetName val="Sheet1"/></sheetNames><sheetDataSet><sheetData sheetId="0"><row r="1"><cell r="A1"><v>${value}</v></cell></row></sheetData></sheetDataSet></externalBook></externalLink>`;

const file = packageOf(
  '<sheetViews><sheetView zoomScale="85" workbookViewId="0"/></sheetViews>' +
    '<sheetData><row r="1"><c r="A1"><f>[2]Sheet1!$A$1*2</f><v>27.2</v></c><c r="B1"><f>Price</f><v>13.6</v></c></row></sheetData>',
  {
    '_rels/.rels':
      `<Relationships xmlns="${PACKAGE}"><Relationship Id="a" Type="${RELATIONS}/officeDocument" Target="xl/workbook.xml"/>` +
      '<Relationship Id="b" Type="http://schemas.openxmlformats.org/package/2006/relationships/metadata/core-properties" Target="docProps/core.xml"/></Relationships>',
    'docProps/core.xml':
      '<cp:coreProperties xmlns:cp="http://schemas.openxmlformats.org/package/2006/metadata/core-properties" xmlns:dc="http://purl.org/dc/elements/1.1/" ' +
      'xmlns:dcterms="http://purl.org/dc/terms/"><dc:title>Spring &amp; autumn</dc:title><dc:creator>Ida</dc:creator><cp:keywords>cork</cp:keywords>' +
      '<dcterms:created>2026-11-27T14:27:18Z</dcterms:created></cp:coreProperties>',
    'xl/_rels/workbook.xml.rels':
      `<Relationships xmlns="${PACKAGE}">` +
      ['worksheets/sheet1.xml', 'worksheets/sheet2.xml']
        .map((target, at) => `<Relationship Id="rId${at + 1}" Type="${RELATIONS}/worksheet" Target="${target}"/>`)
        .join('') +
      ['externalLinks/externalLink1.xml', 'externalLinks/externalLink2.xml']
        .map((target, at) => `<Relationship Id="x${at}" Type="${RELATIONS}/externalLink" Target="${target}"/>`)
        .join('') +
      '</Relationships>',
    'xl/worksheets/sheet2.xml': `<worksheet xmlns="${MAIN}"><sheetData/></worksheet>`,
    'xl/externalLinks/externalLink1.xml': link(1),
    'xl/externalLinks/_rels/externalLink1.xml.rels': linked('Other.xlsx'),
    'xl/externalLinks/externalLink2.xml': link(13.6),
    'xl/externalLinks/_rels/externalLink2.xml.rels': linked('Prices.xlsx'),
  },
  0,
  '<workbookProtection lockStructure="1"/><sheets><sheet name="One" sheetId="1" r:id="rId1"/>' +
    '<sheet name="Deep" sheetId="2" state="veryHidden" r:id="rId2"/></sheets>' +
    '<externalReferences><externalReference r:id="x0"/><externalReference r:id="x1"/></externalReferences>' +
    '<definedNames><definedName name="Price">[2]Sheet1!$A$1</definedName></definedNames>' +
    '<calcPr calcId="124519" calcMode="manual" iterate="1" iterateCount="50" fullPrecision="0" fullCalcOnLoad="1"/>',
);

describe('what a file has beside its sheets', () => {
  const read = readBook(file).book;
  const saved = writeBook(bookOfGrid(gridOfBook(read, 'Own', 'workbook')));
  const parts = partsOf(saved);

  it('is read', () => {
    expect(read.beside).toMatchObject({
      lock: '<workbookProtection lockStructure="1"/>',
      calculation: { calcMode: 'manual', iterate: '1', iterateCount: '50', fullPrecision: '0' },
      core: { title: 'Spring & autumn', creator: 'Ida', keywords: 'cork', created: '2026-11-27T14:27:18Z' },
    });
    expect(read.beside?.links?.map(({ target }) => target?.address)).toEqual(['Other.xlsx', 'Prices.xlsx']);
    expect(read.sheets.map(({ hidden, deeplyHidden, zoom }) => [hidden, deeplyHidden, zoom])).toEqual([
      [undefined, undefined, 85],
      [true, true, undefined],
    ]);
  });

  it('stays where a sheet is deleted, but for workbooks that nothing names any more', () => {
    const { names, ...unnamed } = read;
    const without = (book: Book, sheet: number) => {
      const grid = gridOfBook(book, 'Own', 'workbook');
      const sheetOrder = grid.sheetOrder.filter((_, at) => at !== sheet);
      return bookOfGrid({ ...grid, sheetOrder });
    };
    expect(names).toHaveLength(1);
    expect(without(read, 0).beside).toEqual(read.beside);
    expect(without({ ...unnamed, names: [] }, 1).beside).toEqual(read.beside);
    const { links, ...others } = read.beside ?? {};
    expect(links).toHaveLength(2);
    const own = { ...unnamed, names: [], properties: { Season: 'autumn' } };
    expect(without(own, 0)).toMatchObject({ beside: others, properties: own.properties });
    expect(without(own, 0).beside).not.toHaveProperty('links');
  });

  it('is in the file that the page saves, which is as the standard has it', async () => {
    expect(readBook(saved).book.beside).toEqual(read.beside);
    expect(readBook(saved).book.names).toEqual(read.names);
    expect(parts.get('xl/externalLinks/externalLink2.xml')).toContain('<v>13.6</v>');
    expect(parts.get('xl/externalLinks/_rels/externalLink2.xml.rels')).toContain('Target="Prices.xlsx"');
    expect(parts.get('xl/workbook.xml')).toContain('state="veryHidden"');
    expect(parts.get('xl/worksheets/sheet1.xml')).toContain('zoomScale="85"');
    expect(await faultsOf([parts])).toEqual([[]]);
  });

  it('is what another reader finds in it (SheetJS)', () => {
    const found = SheetJS.read(saved, { bookProps: false, cellFormula: true });
    expect(found.Props).toMatchObject({ Title: 'Spring & autumn', Author: 'Ida', Keywords: 'cork' });
    expect(found.Workbook?.Sheets?.map(({ Hidden }) => Hidden)).toEqual([0, 2]);
    expect(found.Sheets['One']?.['A1']).toMatchObject({ f: '[2]Sheet1!$A$1*2', v: 27.2 });
  });
});
