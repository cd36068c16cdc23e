import { strFromU8, unzipSync } from 'fflate';
import { SaxesParser } from 'saxes';
import { describe, expect, it } from 'vitest';
import { writeBook } from '../../../src/exchange/xlsx/write';
import { bookOfGrid } from '../../../src/host/grid/book-of-grid';
import { snapshotOf } from '../../../src/host/grid/snapshot';
import { demo } from '../../../src/workbook/demo';
import { sampleBook } from './sample-book';

/** What may stand in an element and in which order: the sequences of ECMA-376 part 1, annex A.2 (sml.xsd), as far as used. */
const SEQUENCES: Readonly<Record<string, string>> = {
  worksheet:
    'sheetPr dimension sheetViews sheetFormatPr cols sheetData sheetCalcPr sheetProtection protectedRanges scenarios ' +
    'autoFilter sortState dataConsolidate customSheetViews mergeCells phoneticPr conditionalFormatting dataValidations ' +
    'hyperlinks printOptions pageMargins pageSetup headerFooter rowBreaks colBreaks customProperties cellWatches ' +
    'ignoredErrors smartTags drawing legacyDrawing legacyDrawingHF picture oleObjects controls webPublishItems tableParts extLst',
  sheetPr: 'tabColor outlinePr pageSetUpPr',
  sheetView: 'pane selection pivotSelection extLst',
  c: 'f v is extLst',
  dataValidation: 'formula1 formula2',
  workbook:
    'fileVersion fileSharing workbookPr workbookProtection bookViews sheets functionGroups externalReferences ' +
    'definedNames calcPr oleSize customWorkbookViews pivotCaches extLst',
  styleSheet: 'numFmts fonts fills borders cellStyleXfs cellXfs cellStyles dxfs tableStyles colors extLst',
  border: 'left right top bottom diagonal vertical horizontal',
  patternFill: 'fgColor bgColor',
  xf: 'alignment protection extLst',
  metadata: 'metadataTypes metadataStrings mdxMetadata futureMetadata cellMetadata valueMetadata extLst',
  comments: 'authors commentList extLst',
  si: 't r rPh phoneticPr',
};

/** Elements with a count, which must be true. */
function faultsIn(xml: string): string[] {
  const faults: string[] = [];
  const stack: { name: string; last: number; children: number; count: number | undefined }[] = [];
  const parser = new SaxesParser<{ xmlns: false }>({ xmlns: false });
  parser.on('error', (error) => faults.push(error.message));
  parser.on('opentag', ({ name, attributes }) => {
    const parent = stack.at(-1);
    if (parent) {
      parent.children++;
      const order = SEQUENCES[parent.name]?.split(' ');
      const at = order?.indexOf(name) ?? parent.last;
      if (at < parent.last || at < 0) faults.push(`${name} in ${parent.name}`);
      parent.last = at;
    }
    stack.push({
      name,
      last: 0,
      children: 0,
      count: attributes['count'] === undefined ? undefined : Number(attributes['count']),
    });
  });
  parser.on('closetag', () => {
    const { name, children, count } = stack.pop()!;
    if (count !== undefined && name !== 'sst' && name !== 'futureMetadata' && count !== children)
      faults.push(`count of ${name}`);
  });
  parser.write(xml).close();
  return faults;
}

describe.each([
  ['the sample', sampleBook],
  ['the demo', bookOfGrid(snapshotOf(demo, 'workbook'))],
])('the parts of %s', (_, book) => {
  const parts = Object.entries(unzipSync(writeBook(book))).map(([name, bytes]) => [name, strFromU8(bytes)] as const);

  it('are well formed and have their elements in the order that the standard demands', () => {
    expect(parts.length).toBeGreaterThan(8);
    for (const [name, xml] of parts) expect(faultsIn(xml), name).toEqual([]);
  });

  it('are each listed with their kind, and each relationship leads to one', () => {
    const names = new Set(parts.map(([name]) => name));
    const kinds = parts.find(([name]) => name === '[Content_Types].xml')![1];
    for (const [, name] of kinds.matchAll(/PartName="\/([^"]+)"/g)) expect(names).toContain(name);
    for (const [name, xml] of parts.filter(([one]) => one.endsWith('.rels'))) {
      const folder = name.replace(/_rels\/[^/]*$/, '');
      for (const [, target] of xml.matchAll(/Target="([^"]+)"/g)) {
        expect(names).toContain(new URL(target!, `http://x/${folder}`).pathname.slice(1));
      }
    }
  });
});
