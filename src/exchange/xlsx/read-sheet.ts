import { itemAt } from '../../core/item-at';
import type { Area } from '../../workbook/workbook';
import {
  type BookCell,
  type BookColumns,
  type BookRow,
  type BookRule,
  type BookSheet,
  type BookValue,
  type Look,
  MOST,
} from './book';
import { colourOf, type Theme } from './colours';
import type { Container } from './container';
import type { Counter } from './limits';
import { isOfDay } from './number-formats';
import { withOneOfRanges } from './one-cell-of-range';
import type { FileStyles } from './read-styles';
import { type Attributes, Copy, decimal, isTrue, readXml, whole } from './read-xml';
import { areaAt, areasAt, placeOf } from './references';
import { formulaAt, relativeFormula, type RelativeFormula } from './relative-formula';
import { writtenFormula } from './stored-formula';
import { fromCellText } from './xml-text';

/** What a sheet's part refers to in the rest of the file. */
export interface FileContent {
  readonly texts: readonly string[];
  /** Numbers of texts whose letters have several looks. */
  readonly mixed: ReadonlySet<number>;
  readonly styles: FileStyles;
  readonly theme: Theme;
  /** Days are counted from 1904. */
  readonly from1904: boolean;
}

/** A sheet but for its name and comments; and what of it is not read, in words. */
export type SheetContent = Omit<BookSheet, 'name' | 'hidden' | 'deeplyHidden' | 'comments'> & {
  readonly left: ReadonlySet<string>;
};

type Draft<T> = { -readonly [key in keyof T]: T[key] };

/** A day of 1904's count in that of 1900. */
const DAYS_TO_1904 = 1462;
const DIGIT = 7;
const SIDES = 5;
const POINTS = 0.75;

/** Elements that are carried along as they are. */
const KEPT = new Set([
  'pageSetUpPr',
  'sheetProtection',
  'autoFilter',
  'conditionalFormatting',
  'printOptions',
  'pageMargins',
  'pageSetup',
  'headerFooter',
  'rowBreaks',
  'colBreaks',
]);
/** What cannot be kept, in words. */
const LEFT: Readonly<Record<string, string>> = {
  drawing: 'pictures, shapes or charts',
  picture: 'a background picture',
  oleObjects: 'embedded objects',
  controls: 'form controls',
  hyperlinks: 'links',
  sparklineGroups: 'sparklines',
  protectedRanges: 'ranges with passwords',
  scenarios: 'scenarios',
  dataConsolidate: 'a consolidation',
};

const MIXED = 'letters of several looks in one cell; they have one';
const GROUPS = 'groups of rows or columns';

/** Reads a sheet's part. Its dimension is ignored, and no range is ever gone through cell by cell. */
export function readSheet(container: Container, name: string, file: FileContent, counter: Counter): SheetContent {
  const reader = new SheetReader(file, counter);
  readXml(container, name, reader);
  return reader.finished();
}

class SheetReader {
  private readonly cells: Draft<BookCell>[] = [];
  private readonly columns: BookColumns[] = [];
  private readonly rows = new Map<number, BookRow>();
  private readonly merged: Area[] = [];
  private readonly rules: Draft<BookRule>[] = [];
  private readonly kept: Record<string, string> = {};
  private readonly left = new Set<string>();
  private readonly arrays: Area[] = [];
  /** Formulas that others share, in a form that does not depend on the cell. */
  private readonly sharedFormulas = new Map<string, RelativeFormula>();
  private readonly sheet: Partial<Draft<BookSheet>> = {};
  private frozen = { rows: 0, columns: 0 };
  private gridLines = true;

  private row = -1;
  private column = -1;
  private cell: Draft<BookCell> | undefined;
  private given: Attributes = {};
  private formulaGiven: Attributes | undefined;
  private texts = { v: '', f: '', t: '' };
  private rule: Draft<BookRule> | undefined;
  private ruleText = '';
  private copy: Copy | undefined;
  /** Whether a cell was met that may be changed although the sheet is locked. */
  private unlocked = false;

  constructor(
    private readonly file: FileContent,
    private readonly counter: Counter,
  ) {}

  open(name: string, given: Attributes, inside: readonly string[]): void {
    if (this.copy) return this.copy.start(name, given);
    if (name === 'c' && inside.at(-1) === 'row') return this.openCell(given);
    if (name === 'rPr' && this.cell) this.left.add(MIXED);
    if (name === 'f' && this.cell) this.formulaGiven = given;
    else if (name === 'row') this.openRow(given);
    else if (KEPT.has(name) && inside.length <= 2) (this.copy = new Copy()).start(name, given);
    else if (name === 'dataValidation') this.openRule(given);
    else this.take(name, given, inside);
  }

  text(text: string, inside: readonly string[]): void {
    if (this.copy) {
      this.counter.add('letters', 'letters', text.length);
      return this.copy.text(text);
    }
    const of = inside.at(-1);
    if (this.rule) this.ruleText += text;
    else if (this.cell && (of === 'v' || of === 'f' || of === 't') && !inside.includes('rPh')) {
      this.counter.add('letters', 'letters', text.length);
      this.texts[of] += text;
    }
  }

  close(name: string, inside: readonly string[]): void {
    if (this.copy) {
      this.copy.end(name);
      if (!this.copy.busy) {
        this.kept[name] = (this.kept[name] ?? '') + this.copy.toString();
        this.copy = undefined;
      }
    } else if (name === 'c' && inside.at(-1) === 'row') this.closeCell();
    else if (this.rule) this.closeInRule(name);
  }

  finished(): SheetContent {
    // Files may have cells in any order.
    const ordered = this.cells.every((cell, at) => at === 0 || isAfter(cell, itemAt(this.cells, at - 1)));
    if (!ordered) this.cells.sort((one, other) => one.row - other.row || one.column - other.column);
    const cells = withoutRepeated(this.cells);
    markSpilled(cells, this.arrays);
    const { frozen, gridLines, columns, rows, merged, rules, kept, left } = this;
    // Which cells are open is not kept, and a lock on all of them would be more than there was.
    if (this.unlocked && kept['sheetProtection'] !== undefined) {
      delete kept['sheetProtection'];
      left.add('a lock that leaves some cells open');
    }
    const sized = rules.filter(({ areas, kind }) => areas.length > 0 && kind !== undefined);
    return { ...this.sheet, frozen, gridLines, cells, columns, rows, merged, rules: sized, kept, left };
  }

  private openRow(given: Attributes): void {
    this.row = Math.min(MOST.rows - 1, (whole(given['r'], MOST.rows) ?? this.row + 2) - 1);
    this.column = -1;
    if (whole(given['outlineLevel'])) this.left.add(GROUPS);
    const height = decimal(given['ht']);
    const hidden = isTrue(given['hidden']);
    if (height === undefined && !hidden) return;
    this.counter.add('cells', 'cells');
    const px = height === undefined ? undefined : Math.round(Math.min(409.5, Math.max(0, height)) / POINTS);
    const fitted = px !== undefined && !isTrue(given['customHeight']);
    this.rows.set(this.row, {
      ...(px !== undefined && { height: px }),
      ...(fitted && { fitted }),
      ...(hidden && { hidden }),
    });
  }

  private openCell(given: Attributes): void {
    this.counter.add('cells', 'cells');
    const { row, column } = placeOf(given, Math.max(0, this.row), this.column);
    this.column = Math.min(column, MOST.columns - 1);
    this.cell = { row, column: this.column };
    this.given = given;
    this.formulaGiven = undefined;
    this.texts = { v: '', f: '', t: '' };
  }

  private closeCell(): void {
    const { cell, given } = this;
    if (!cell) return;
    this.cell = undefined;
    const style = whole(given['s']);
    const look = this.lookOf(style);
    if (look) cell.look = look;
    const value = this.value(look);
    if (value !== undefined) cell.value = value;
    if (this.formulaGiven) this.takeFormula(cell, this.formulaGiven);
    if (cell.value !== undefined || cell.formula !== undefined || look) this.cells.push(cell);
  }

  /** A cell's or column's look; what of it is not read is told. */
  private lookOf(style: number | undefined): Look | undefined {
    if (!style) return undefined;
    const { looks, missing, unlocked } = this.file.styles;
    for (const what of missing[style] ?? []) this.left.add(what);
    if (unlocked.has(style)) this.unlocked = true;
    return looks[style];
  }

  private value(look: Look | undefined): BookValue | undefined {
    const { v, t } = this.texts;
    const kind = this.given['t'];
    if (kind === 'inlineStr') return fromCellText(t);
    if (v === '') return kind === 'str' ? '' : undefined;
    if (kind === 's') {
      const number = whole(v) ?? -1;
      if (this.file.mixed.has(number)) this.left.add(MIXED);
      return this.file.texts[number] ?? '';
    }
    if (kind === 'str') return fromCellText(v);
    if (kind === 'b') return isTrue(v.trim());
    if (kind === 'e') return { fault: v };
    if (kind === 'd') return dayOf(v) ?? v;
    const number = decimal(v);
    if (number === undefined) return fromCellText(v);
    return this.file.from1904 && look?.format && isOfDay(look.format) ? number + DAYS_TO_1904 : number;
  }

  private takeFormula(cell: Draft<BookCell>, given: Attributes): void {
    const text = fromCellText(this.texts.f);
    const kind = given['t'];
    if (kind === 'shared') {
      const formula = this.shared(given['si'] ?? '', text, cell);
      if (formula !== undefined) cell.formula = formula;
    } else if (kind === 'dataTable') {
      this.left.add('a what-if table, which keeps its last values');
    } else if (text.length > this.counter.limits.formula) {
      this.left.add('a formula that is longer than any may be, which keeps its last value');
    } else if (text.trim() !== '') {
      this.counter.add('formulaLetters', 'letters in formulas', text.length);
      const formula = writtenFormula(text);
      const marked = kind === 'array' || this.given['cm'] !== undefined;
      cell.formula = marked ? formula : withOneOfRanges(formula);
      const area = kind === 'array' ? areaAt(given['ref']) : undefined;
      if (area && area.row === cell.row && area.column === cell.column) {
        if (area.rows * area.columns > 1) {
          this.counter.add('spilled', 'cells that tables spill over', area.rows * area.columns);
          cell.spill = { rows: area.rows, columns: area.columns };
          this.arrays.push(area);
        }
      }
    }
  }

  /** The first cell of those that share a formula has its text. */
  private shared(key: string, text: string, { row, column }: BookCell): string | undefined {
    if (text !== '' && text.length <= this.counter.limits.formula) {
      this.counter.add('formulaLetters', 'letters in formulas', text.length);
      const formula = withOneOfRanges(writtenFormula(text));
      this.sharedFormulas.set(key, relativeFormula(formula, row, column));
      return formula;
    }
    const relative = this.sharedFormulas.get(key);
    if (relative === undefined) return undefined;
    const formula = formulaAt(relative, row, column);
    this.counter.add('formulaLetters', 'letters in formulas', formula.length);
    return formula;
  }

  private take(name: string, given: Attributes, inside: readonly string[]): void {
    if (name === 'col') this.takeColumns(given);
    else if (name === 'mergeCell') this.takeMerged(given);
    else if (name === 'sheetFormatPr') this.takeSizes(given);
    else if (name === 'sheetView') {
      this.gridLines = isTrue(given['showGridLines'], true);
      const zoom = whole(given['zoomScale'], 400);
      if (zoom !== undefined && zoom >= 10 && zoom !== 100) this.sheet.zoom = zoom;
      if (isTrue(given['rightToLeft'])) this.left.add('that it runs from right to left');
    } else if (name === 'pane') {
      if (given['state']?.startsWith('frozen')) this.takePane(given);
      else this.left.add('a window that is split');
    } else if (name === 'tabColor' && inside.at(-1) === 'sheetPr') {
      const colour = colourOf(given, this.file.theme);
      if (colour) this.sheet.tabColour = colour;
    } else if (name === 'conditionalFormattings') this.left.add('newer kinds of conditional formats');
    else if (LEFT[name] !== undefined) this.left.add(LEFT[name]);
  }

  private takeColumns({ min, max, width, style, hidden, outlineLevel }: Attributes): void {
    if (whole(outlineLevel)) this.left.add(GROUPS);
    this.counter.add('others', 'kinds of columns');
    const first = (whole(min, MOST.columns) ?? 0) - 1;
    const last = Math.min(MOST.columns, whole(max) ?? 0) - 1;
    if (first < 0 || last < first) return;
    const digits = decimal(width);
    const look = this.lookOf(whole(style));
    this.columns.push({
      first,
      last,
      ...(digits !== undefined && { width: pixels(digits) }),
      ...(isTrue(hidden) && { hidden: true }),
      ...(look && { look }),
    });
  }

  private takeMerged({ ref }: Attributes): void {
    this.counter.add('others', 'merged cells');
    const area = areaAt(ref);
    if (area && area.rows * area.columns > 1) this.merged.push(area);
  }

  private takeSizes({ defaultRowHeight, defaultColWidth }: Attributes): void {
    const [height, width] = [decimal(defaultRowHeight), decimal(defaultColWidth)];
    if (height !== undefined && height > 0) this.sheet.defaultRowHeight = Math.round(Math.min(409.5, height) / POINTS);
    if (width !== undefined && width > 0) this.sheet.defaultColumnWidth = pixels(width);
  }

  private takePane({ xSplit, ySplit }: Attributes): void {
    this.frozen = { rows: whole(ySplit, 10_000) ?? 0, columns: whole(xSplit, 1_000) ?? 0 };
  }

  private openRule(given: Attributes): void {
    this.counter.add('others', 'rules');
    const { type, operator, sqref, allowBlank, errorStyle, showErrorMessage, showInputMessage } = given;
    const kind = KINDS.find((one) => one === type);
    const rule: Draft<BookRule> = {
      areas: areasAt(sqref),
      kind: kind as BookRule['kind'],
      allowBlank: isTrue(allowBlank),
    };
    if (operator !== undefined && OPERATORS.has(operator)) rule.operator = operator;
    if (isTrue(showErrorMessage)) {
      rule.others = errorStyle === 'warning' || errorStyle === 'information' ? errorStyle : 'stop';
      const problem = words(given['errorTitle'], given['error']);
      if (problem) rule.problem = problem;
    }
    const prompt = isTrue(showInputMessage) ? words(given['promptTitle'], given['prompt']) : undefined;
    if (prompt) rule.prompt = prompt;
    this.rule = rule;
    this.ruleText = '';
  }

  /** A newer rule has its formulas and areas in elements of their own. */
  private closeInRule(name: string): void {
    const { rule } = this;
    if (!rule) return;
    const text = this.ruleText.trim();
    if (name === 'formula1' && text !== '') rule.first = ruleFormula(text);
    else if (name === 'formula2' && text !== '' && rule.kind !== 'list' && rule.kind !== 'custom')
      rule.second = ruleFormula(text);
    else if (name === 'sqref') rule.areas = areasAt(text);
    else if (name === 'dataValidation') {
      if (this.file.from1904 && rule.kind === 'date') moveDays(rule);
      this.rules.push(rule);
      this.rule = undefined;
    } else return;
    this.ruleText = '';
  }
}

/** ST_DataValidationOperator; without one, a rule is between two bounds. */
const OPERATORS: ReadonlySet<string> = new Set([
  'between',
  'notBetween',
  'equal',
  'notEqual',
  'lessThan',
  'lessThanOrEqual',
  'greaterThan',
  'greaterThanOrEqual',
]);
const KINDS = ['list', 'whole', 'decimal', 'date', 'time', 'textLength', 'custom'] as const;

/** Moves the bounds of a rule, where they are numbers of days, to the count from 1900. */
function moveDays(rule: Draft<BookRule>): void {
  for (const bound of ['first', 'second'] as const) {
    const day = decimal(rule[bound]);
    if (day !== undefined) rule[bound] = String(day + DAYS_TO_1904);
  }
}

function ruleFormula(stored: string): string {
  const text = fromCellText(stored);
  return text.startsWith('"') ? text : writtenFormula(text).slice(1);
}

function words(title: string | undefined, text: string | undefined) {
  if (title === undefined && text === undefined) return undefined;
  return {
    ...(title !== undefined && { title: fromCellText(title) }),
    ...(text !== undefined && { text: fromCellText(text) }),
  };
}

function pixels(digits: number): number {
  return Math.round(Math.min(255, Math.max(0, digits)) * DIGIT + (digits > 0 ? SIDES : 0));
}

/** The number of a day that is written by the calendar (ISO 8601); undefined for anything else. */
function dayOf(text: string): number | undefined {
  const time = Date.parse(/[zZ]|[+-]\d\d:?\d\d$/.test(text) || text.length <= 10 ? text : `${text}Z`);
  return Number.isNaN(time) ? undefined : time / 86_400_000 + 25_569;
}

function isAfter(cell: BookCell, before: BookCell): boolean {
  return cell.row > before.row || (cell.row === before.row && cell.column > before.column);
}

/** Of cells that a file has twice, the last. */
function withoutRepeated(cells: Draft<BookCell>[]): Draft<BookCell>[] {
  const same = (one: BookCell, other: BookCell | undefined) => one.row === other?.row && one.column === other.column;
  return cells.some((cell, at) => same(cell, cells[at + 1]))
    ? cells.filter((cell, at) => !same(cell, cells[at + 1]))
    : cells;
}

/** Marks the cells over which formulas' tables spill: their values are those of the table. */
function markSpilled(cells: readonly Draft<BookCell>[], arrays: readonly Area[]): void {
  if (arrays.length === 0) return;
  const byRow = [...arrays].sort((one, other) => one.row - other.row);
  let first = 0;
  let open: Area[] = [];
  for (const cell of cells) {
    while ((byRow[first]?.row ?? Infinity) <= cell.row) open.push(itemAt(byRow, first++));
    open = open.filter(({ row, rows }) => row + rows > cell.row);
    const over = open.some(
      ({ row, column, columns }) =>
        cell.column >= column && cell.column < column + columns && !(cell.row === row && cell.column === column),
    );
    if (over && cell.formula === undefined) cell.spilled = true;
  }
}
