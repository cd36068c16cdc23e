import type { Beside, Book, BookComment, BookLink, BookName, BookSheet, Look, ReadBook } from './book';
import { readTheme } from './colours';
import { Container } from './container';
import { readCore } from './core-properties';
import { readLinks } from './external-links';
import { type FileTable, withoutFileReferences } from './file-references';
import { Counter, LIMITS, type Limits, Refusal } from './limits';
import { readComments } from './read-comments';
import { readPersons, withoutNotice, withThreads } from './read-threads';
import { type FileContent, readSheet } from './read-sheet';
import { NO_STYLES, readStyles } from './read-styles';
import { FIRST_FONT } from './styles-part';
import { type Attributes, Copy, isTrue, readXml, relationId, whole } from './read-xml';
import { areaAt } from './references';
import { type Relationship, relationshipsOf } from './relationships';
import { writtenFormula } from './stored-formula';
import { fromCellText } from './xml-text';

/** What the workbook's own part says. */
interface Contents {
  readonly sheets: {
    readonly name: string;
    readonly hidden: boolean;
    readonly deeplyHidden: boolean;
    readonly id: string | undefined;
  }[];
  readonly names: BookName[];
  /** Relationships of links to other workbooks. */
  readonly links: (string | undefined)[];
  lock: string;
  calculation: Readonly<Record<string, string>>;
  from1904: boolean;
}

/**
 * Reads a workbook file (.xlsx, ECMA-376), within limits and whoever made it. Nothing in it is run, followed or fetched.
 * @throws Refusal whose message ends the sentence "The file cannot be read: …"
 */
export function readBook(bytes: Uint8Array, limits: Limits = LIMITS): ReadBook {
  const counter = new Counter(limits);
  try {
    return read(new Container(bytes, counter), counter);
  } catch (error) {
    if (error instanceof Refusal) throw error;
    // What is damaged in a way that nobody foresaw.
    throw new Refusal(`it is damaged (${error instanceof Error ? error.message : String(error)})`);
  }
}

function read(container: Container, counter: Counter): ReadBook {
  const main = relationshipsOf(container, '').find(
    ({ kind, outside }) => kind === 'officeDocument' && !outside,
  )?.target;
  if (main === undefined || !container.has(main)) throw new Refusal(whatElse(container));
  if (main.endsWith('.bin')) throw new Refusal('it is a binary workbook (.xlsb); save it as .xlsx');
  const related = relationshipsOf(container, main);
  const partOf = (name: string) => {
    const target = related.find(({ kind, outside }) => kind === name && !outside)?.target;
    return target !== undefined && container.has(target) ? target : undefined;
  };
  const contents = readContents(container, main, counter);
  const left: string[] = leftOfFile(container, related);
  const themePart = partOf('theme');
  const theme = themePart ? readTheme(container, themePart) : [];
  const stylesPart = partOf('styles');
  const styles = stylesPart ? readStyles(container, stylesPart, theme, counter) : NO_STYLES;
  const textsPart = partOf('sharedStrings');
  const texts = textsPart ? readTexts(container, textsPart, counter) : { texts: [], mixed: new Set<number>() };
  const personsPart = partOf('person');
  const persons = personsPart ? readPersons(container, personsPart, counter) : new Map<string, string>();
  const tables: FileTable[] = [];
  const sheets: BookSheet[] = [];
  contents.sheets.forEach(({ name, hidden, deeplyHidden, id }) => {
    const sheet = related.find((one) => one.id === id);
    if (!sheet || sheet.kind !== 'worksheet' || sheet.outside) {
      left.push(`${name}: a sheet that is no spreadsheet (${sheet?.kind ?? 'missing'})`);
      return;
    }
    const { left: missed, ...content } = readSheet(
      container,
      sheet.target,
      { ...texts, styles, theme, from1904: contents.from1904 },
      counter,
    );
    left.push(...[...missed].map((what) => `${name}: ${what}`));
    const beside = relationshipsOf(container, sheet.target);
    left.push(...leftOfSheet(beside).map((what) => `${name}: ${what}`));
    tables.push(...tablesOf(container, beside, name, counter));
    sheets.push({
      ...content,
      name,
      ...(hidden && { hidden }),
      ...(deeplyHidden && { deeplyHidden }),
      comments: commentsOf(container, beside, persons, counter),
    });
  });
  if (sheets.length === 0) throw new Refusal('it has no sheet');
  const beside = besideOf(contents, readLinks(container, contents.links, related, counter), readCore(container));
  const book: Book = {
    sheets,
    ...(beside && { beside }),
    // Names of sheets that are not read count differently then; a name of one sheet needs them as they were.
    names:
      sheets.length === contents.sheets.length
        ? contents.names
        : contents.names.filter((one) => one.sheet === undefined),
    properties: readProperties(container),
    ...(styles.conditional !== undefined && { conditionalLooks: styles.conditional }),
    ...(styles.looks[0] && !isUsual(styles.looks[0]) && { ground: styles.looks[0] }),
  };
  return withoutFileReferences(book, tables, left);
}

/** What an archive is that is no workbook of the standard: those of ISO/IEC 26300 (.ods) have their content in one part. */
function whatElse(container: Container): string {
  return container.has('content.xml') && container.has('META-INF/manifest.xml')
    ? 'it is a spreadsheet of another kind (.ods); save it as .xlsx in the program it came from'
    : 'it is not a workbook (.xlsx)';
}

/** Whether cells of which nothing is said look as in most files. */
function isUsual({ font, ...more }: Look): boolean {
  const { family = FIRST_FONT.family, points = FIRST_FONT.points, colour: _colour, ...letters } = font ?? {};
  const first = family === FIRST_FONT.family && points === FIRST_FONT.points;
  return first && Object.keys(letters).length === 0 && Object.keys(more).length === 0;
}

function readContents(container: Container, main: string, counter: Counter): Contents {
  const contents: Contents = { sheets: [], names: [], links: [], lock: '', calculation: {}, from1904: false };
  const taken = new Set<string>();
  let name: { -readonly [key in keyof BookName]: BookName[key] } | undefined;
  readXml(container, main, {
    open(element, given) {
      if (element === 'workbookPr') contents.from1904 = isTrue(given['date1904']);
      if (element === 'sheet') {
        counter.add('sheets', 'sheets');
        const sheet = sheetName(fromCellText(given['name'] ?? ''), taken);
        const deeplyHidden = given['state'] === 'veryHidden';
        const hidden = given['state'] === 'hidden' || deeplyHidden;
        contents.sheets.push({ name: sheet, hidden, deeplyHidden, id: relationId(given) });
      }
      if (element === 'externalReference') {
        counter.add('others', 'links to other workbooks');
        contents.links.push(relationId(given));
      }
      if (element === 'workbookProtection') contents.lock = lockOf(given);
      if (element === 'calcPr') contents.calculation = calculationOf(given);
      if (element !== 'definedName') return;
      counter.add('others', 'names');
      name = { name: fromCellText(given['name'] ?? ''), meaning: '' };
      if (given['comment']) name.comment = fromCellText(given['comment']);
      const sheet = whole(given['localSheetId']);
      if (sheet !== undefined) name.sheet = sheet;
      if (isTrue(given['hidden'])) name.hidden = true;
    },
    text(text) {
      if (!name) return;
      counter.add('letters', 'letters', text.length);
      name.meaning += text;
    },
    close(element) {
      if (element !== 'definedName' || !name) return;
      const meaning = writtenFormula(fromCellText(name.meaning.trim())).slice(1);
      if (name.name !== '' && meaning !== '') contents.names.push({ ...name, meaning });
      name = undefined;
    },
  });
  return contents;
}

function besideOf(
  { lock, calculation }: Contents,
  links: readonly BookLink[],
  core: Readonly<Record<string, string>>,
): Beside | undefined {
  const beside: Beside = {
    ...(lock !== '' && { lock }),
    ...(Object.keys(calculation).length > 0 && { calculation }),
    ...(Object.keys(core).length > 0 && { core }),
    ...(links.length > 0 && { links }),
  };
  return Object.keys(beside).length > 0 ? beside : undefined;
}

function lockOf(given: Attributes): string {
  const copy = new Copy();
  copy.start('workbookProtection', given);
  copy.end('workbookProtection');
  const lock = copy.toString();
  return lock.includes('=') ? lock : '';
}

/** How a workbook is worked out (18.2.2), where it is not the usual way. */
const CALCULATION = {
  calcMode: /^(manual|autoNoTable)$/,
  fullPrecision: /^(0|false)$/,
  iterate: /^(1|true)$/,
  iterateCount: /^\d{1,9}$/,
  iterateDelta: /^\d*\.?\d+(e[+-]?\d{1,3})?$/i,
} as const;

function calculationOf(given: Attributes): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(CALCULATION).flatMap(([name, allowed]) => {
      const value = given[name];
      return value !== undefined && allowed.test(value) ? [[name, value]] : [];
    }),
  );
}

/** A sheet's name as the standard allows it: of 31 letters at most, and unlike any other. */
function sheetName(given: string, taken: Set<string>): string {
  const stem =
    given
      .replace(/[:\\/?*[\]]/g, ' ')
      .trim()
      .slice(0, 31) || 'Sheet';
  let name = stem;
  for (let at = 2; taken.has(name.toUpperCase()); at++) name = `${stem.slice(0, 31 - 1 - String(at).length)} ${at}`;
  taken.add(name.toUpperCase());
  return name;
}

/** Texts of cells; of one whose letters differ in look, its letters; without how it is read aloud. */
function readTexts(container: Container, name: string, counter: Counter): Pick<FileContent, 'texts' | 'mixed'> {
  const texts: string[] = [];
  const mixed = new Set<number>();
  let text = '';
  readXml(container, name, {
    open(element) {
      if (element === 'rPr') mixed.add(texts.length);
      if (element !== 'si') return;
      counter.add('cells', 'texts');
      text = '';
    },
    text(letters, inside) {
      if (inside.at(-1) !== 't' || inside.includes('rPh')) return;
      counter.add('letters', 'letters', letters.length);
      text += letters;
    },
    close(element) {
      if (element === 'si') texts.push(fromCellText(text));
    },
  });
  return { texts, mixed };
}

function readProperties(container: Container): Record<string, string> {
  const part = relationshipsOf(container, '').find(
    ({ kind, outside }) => kind === 'custom-properties' && !outside,
  )?.target;
  if (part === undefined || !container.has(part)) return {};
  const found = new Map<string, string>();
  let name = '';
  readXml(container, part, {
    open(element, given) {
      if (element === 'property') name = fromCellText(given['name'] ?? '');
    },
    text(text, inside) {
      if (name !== '' && inside.at(-2) === 'property' && found.size < 1000) {
        found.set(name, (found.get(name) ?? '') + fromCellText(text));
      }
    },
  });
  return Object.fromEntries(found);
}

function commentsOf(
  container: Container,
  beside: readonly Relationship[],
  persons: ReadonlyMap<string, string>,
  counter: Counter,
): readonly BookComment[] {
  const partOf = (name: string) => {
    const part = beside.find(({ kind, outside }) => kind === name && !outside)?.target;
    return part !== undefined && container.has(part) ? part : undefined;
  };
  const [part, threads] = [partOf('comments'), partOf('threadedComment')];
  const comments = part === undefined ? [] : readComments(container, part, counter);
  return threads === undefined
    ? comments.map(withoutNotice)
    : withThreads(comments, container, threads, persons, counter);
}

/** The tables of a sheet that formulas may name. */
function tablesOf(
  container: Container,
  beside: readonly Relationship[],
  sheet: string,
  counter: Counter,
): readonly FileTable[] {
  return beside
    .filter(({ kind, outside, target }) => kind === 'table' && !outside && container.has(target))
    .flatMap(({ target }) => {
      const columns: string[] = [];
      let [name, totals] = ['', 0];
      let area: ReturnType<typeof areaAt>;
      readXml(container, target, {
        open(element, given) {
          if (element === 'tableColumn') {
            counter.add('others', 'columns of tables');
            columns.push(fromCellText(given['name'] ?? ''));
          }
          if (element !== 'table') return;
          name = given['displayName'] ?? given['name'] ?? '';
          totals = whole(given['totalsRowCount']) ?? 0;
          area = areaAt(given['ref']);
        },
      });
      return area && name !== '' ? [{ name, sheet, area, columns, totals }] : [];
    });
}

/** What belongs to the whole file and is not read. */
function leftOfFile(container: Container, related: readonly Relationship[]): string[] {
  const kinds = new Set(related.map(({ kind }) => kind));
  const found: string[] = [];
  if ([...container.names].some((name) => name.endsWith('vbaproject.bin'))) found.push('macros; none was run');
  if (kinds.has('externalLink')) found.push('links to other workbooks; none was followed');
  if (kinds.has('connections')) found.push('connections to data elsewhere; none was opened');
  if (kinds.has('pivotCacheDefinition')) found.push('pivot tables, which are kept as values');
  return found;
}

function leftOfSheet(beside: readonly Relationship[]): string[] {
  const kinds = new Set(beside.map(({ kind }) => kind));
  return [
    ...(kinds.has('threadedComment') ? ['answers to comments, which are kept as plain comments'] : []),
    ...(kinds.has('table') ? ['tables, which are kept as cells'] : []),
  ];
}
