import { readFileSync } from 'node:fs';
import { strFromU8, unzipSync } from 'fflate';
import { SaxesParser } from 'saxes';
import { validateXML } from 'xmllint-wasm';

const file = (name: string) => ({
  fileName: name,
  contents: readFileSync(`tests/exchange/xlsx/schema/${name}`, 'utf8'),
});

/** What each part is held to: our own statement of ECMA-376 as far as our files use it. */
export const SCHEMAS = [
  [
    /^xl\/(worksheets\/sheet\d+|workbook|styles|sharedStrings|metadata|comments\d+|externalLinks\/externalLink\d+)\.xml$/,
    'spreadsheet.xsd',
  ],
  [/\.rels$/, 'relationships.xsd'],
  [/^\[Content_Types\]\.xml$/, 'kinds.xsd'],
  [/^docProps\/core\.xml$/, 'core.xsd'],
  [/^docProps\/custom\.xml$/, 'properties.xsd'],
] as const;
const IMPORTED = ['references.xsd', 'xml.xsd', 'texts.xsd'].map(file);

/** Texts of a file's parts, by name. */
export type Parts = ReadonlyMap<string, string>;

export function partsOf(bytes: Uint8Array): Parts {
  return new Map(Object.entries(unzipSync(bytes)).map(([name, part]) => [name, strFromU8(part)]));
}

/**
 * What of some files' parts is not as the standard has it, by file. All are looked at together: to start the validator takes
 * longer than its work.
 */
export async function faultsOf(files: readonly Parts[]): Promise<readonly (readonly string[])[]> {
  const found = files.map((parts) => [...countsIn(parts), ...missingIn(parts)]);
  for (const [pattern, schema] of SCHEMAS) {
    const xml = files.flatMap((parts, at) =>
      [...parts]
        .filter(([name]) => pattern.test(name))
        .map(([name, contents]) => ({ fileName: `${at} ${name.replaceAll(/[/[\]]/g, ' ')}`, contents })),
    );
    // Without a file the validator tells how it is used.
    if (xml.length === 0) continue;
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
      [...xml.matchAll(/Target="([^"]+)"(?! TargetMode="External")/g)].map(([, target]) =>
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
