import { readdirSync, readFileSync } from 'node:fs';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

/**
 * One thing, one word: words that gave way to others, each with today's, and where alone it may still be. What makers
 * read is looked through: every piece of text in the sources, the docstrings of functions, the guide, README, manifest
 * and pages.
 */
interface Retired {
  readonly word: RegExp;
  readonly today: string;
  /** Files in which the word has another meaning. */
  readonly except?: RegExp;
}

const RETIRED: readonly Retired[] = [
  { word: /reckon/i, today: 'Workings, worked out' },
  { word: /\bput in\b/i, today: 'Figures used' },
  { word: /\b(come|came) by\b/i, today: 'worked out' },
  { word: /^Lies$|\bpiece lies$/, today: 'Direction' },
  { word: /^Counts$|\bwhat it counts\b|\bcounts as a limit\b|where it counts\b/, today: 'Unit' },
  {
    word: /\brounds\b(?! uncracked)|^Rounds?\b(?! \d|ing)/i,
    today: 'batches; a sole is rounded',
    // How lines end, in words of the file format.
    except: /exchange\/pdf(kit\.d)?\.ts$/,
  },
  { word: /second waste/i, today: 'Lost outside' },
  { word: /first waste/i, today: 'Lost between', except: /(functions|workings)\/sheets\.ts$|README/ },
  { word: /edge left|sole edge|kept edge|edge is kept|edge_left|edge_thickness/i, today: 'Skive to' },
  { word: /^Edge(\n|$)/, today: 'Skive to' },
  { word: /bevel/i, today: 'skive' },
  { word: /^Glue(\n.*)?$|^Glue (ml|¤|l)\b/, today: 'Adhesive' },
  { word: /over the outside|outside of a curve|outside \(over/i, today: 'over, hollow' },
  { word: /\b(enter )?one row an? /i, today: 'One row for each' },
  { word: /\bmend(s|ed|ing)?\b/i, today: 'put right' },
  { word: /^(. )?look$/, today: 'look at' },
  { word: /^Rasping$|\[rasping\]/, today: 'Most rasping' },
  { word: /rough edge/i, today: 'Rounding allowance' },
  { word: /projection joint/i, today: 'Projection tread' },
  { word: /\b(sole|welt) runs?\b/i, today: 'Sole ends, Welt ends' },
  { word: /mixed.?cutting/i, today: 'LAYOUTSEARCH' },
  { word: /^Do$/, today: 'What to do' },
  { word: /^Before$|^Sheet before$/, today: 'Previous' },
  { word: /best kept/i, today: 'Best found' },
  { word: /\bdrop (it|what)\b/i, today: 'Discard' },
  { word: /\bcould do\b/i, today: 'would be enough' },
  { word: /\bbent[ -]on\b/i, today: 'bent round, bent' },
  { word: /\bparted\b|\bparts arguments\b/i, today: 'separated' },
  { word: /\bstands? (in|below)\b/i, today: 'is in' },
  { word: /side shoulder/i, today: 'Half shoulder' },
  {
    word: /^(Heel height|Curve of the last|Twist of the last|Shank|Leather pairs), mm$/,
    today: 'the limit’s own name',
  },
  { word: /(numbered|of the piece) .*from the last down/i, today: 'of bent lifts alone' },
];

/** Where a file's former words stand, which are read and never written. */
const FORMER = new Set(['former', 'formerly', 'FORMER']);

interface Said {
  readonly where: string;
  readonly text: string;
}

/** Every text of a source: what is quoted, and what stands between the values of a template; docstrings where they are help. */
function saidIn(file: string): readonly Said[] {
  const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true);
  const said: Said[] = [];
  const add = (node: ts.Node, text: string) => {
    const { line } = source.getLineAndCharacterOfPosition(node.getStart());
    // Lines of a template are one sentence.
    const words = text.replace(/\s+/g, ' ').trim();
    if (words) said.push({ where: `${file}:${line + 1}`, text: text.includes('<') ? words : text.trim() });
    for (const part of text.split(/<[^>]*>/)) {
      const alone = part.replace(/\s+/g, ' ').trim();
      if (alone && alone !== words) said.push({ where: `${file}:${line + 1}`, text: alone });
    }
  };
  const visit = (node: ts.Node): void => {
    if ((ts.isPropertyAssignment(node) || ts.isVariableDeclaration(node)) && FORMER.has(node.name.getText())) return;
    if (ts.isImportDeclaration(node)) return;
    if (ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node)) {
      add(node, node.text);
    }
    if (
      ts.isFunctionDeclaration(node) &&
      ts.getJSDocTags(node).some(({ tagName }) => tagName.text === 'customfunction')
    ) {
      for (const doc of ts.getJSDocCommentsAndTags(node)) if (ts.isJSDoc(doc)) add(doc, doc.getText());
      for (const { name } of node.parameters) add(name, `[${name.getText()}]`);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return said;
}

const files = readdirSync('src', { recursive: true, encoding: 'utf8' }).map(
  (file) => `src/${file.replaceAll('\\', '/')}`,
);
const sources = files.filter((file) => file.endsWith('.ts'));
const pages = ['README.md', 'manifest.xml', ...files.filter((file) => /\.(html|md)$/.test(file))];

describe('words that makers read', () => {
  const said = [
    ...sources.flatMap(saidIn),
    ...pages.flatMap((file) =>
      readFileSync(file, 'utf8')
        .split(/\n\s*\n/)
        .map((text) => ({ where: file, text: text.replace(/\s+/g, ' ').trim() })),
    ),
  ];

  it('are found where they stand', () => {
    expect(said.length).toBeGreaterThan(3000);
    for (const known of ['Bottom stock', '△ look at', 'Skive to', 'Adhesive for an area of faces']) {
      expect(
        said.some(({ text }) => text.includes(known)),
        known,
      ).toBe(true);
    }
  });

  it.each(RETIRED.map((one) => [String(one.word), one] as const))(
    'are others than %s',
    (_, { word, today, except }) => {
      const found = said
        .filter(({ where, text }) => word.test(text) && !except?.test(where.replace(/:\d+$/, '')))
        .map(({ where, text }) => `${where}: ${text.slice(0, 120)}`);
      expect(found, `today: ${today}`).toEqual([]);
    },
  );
});
