import { itemAt } from '../../core/item-at';
import { cellAddress } from '../../tables/cell-address';
import {
  type BookCell,
  type BookColumns,
  type BookRule,
  type BookSheet,
  type BookValue,
  isFault,
  type Look,
  MOST,
} from './book';
import { storedColour } from './colours';
import { withoutMarks } from './one-cell-of-range';
import { areaText } from './references';
import { answersWithTable, storedFormula } from './stored-formula';
import { cellText, counted, element, part } from './xml-text';

const NAMESPACES = {
  xmlns: 'http://schemas.openxmlformats.org/spreadsheetml/2006/main',
  'xmlns:r': 'http://schemas.openxmlformats.org/officeDocument/2006/relationships',
};
/** A point is 4/3 px. */
const POINTS = 0.75;
/** Columns are measured in digits of the first lettering, 7 px each, with 5 px at their sides (18.3.1.13). */
const DIGIT = 7;
const SIDES = 5;
/** The longest list of words that a rule may hold. */
export const LONGEST_LIST = 255;
/** Errors that the standard knows; others are of newer programs. */
const FAULTS = new Set(['#NULL!', '#DIV/0!', '#VALUE!', '#REF!', '#NAME?', '#NUM!', '#N/A']);

/** What a sheet's part needs of the whole workbook. */
export interface Shared {
  readonly look: (look: Look | undefined) => number;
  readonly text: (text: string) => number;
}

/** A sheet as its part of a file, in the order that the standard demands of its elements (18.3.1.99). */
export function sheetPart(sheet: BookSheet, shared: Shared, active: boolean): string {
  const { kept } = sheet;
  const has = (name: string) => kept[name] ?? '';
  return part(
    element(
      'worksheet',
      NAMESPACES,
      [
        sheetProperties(sheet),
        element('sheetViews', {}, sheetView(sheet, active)),
        element('sheetFormatPr', {
          defaultColWidth: sheet.defaultColumnWidth === undefined ? undefined : width(sheet.defaultColumnWidth),
          defaultRowHeight: (sheet.defaultRowHeight ?? 20) * POINTS,
          customHeight: sheet.defaultRowHeight !== undefined || undefined,
        }),
        columns(sheet.columns, shared),
        element('sheetData', {}, rows(sheet, shared)),
        has('sheetProtection'),
        has('autoFilter'),
        counted(
          'mergeCells',
          sheet.merged.map((area) => element('mergeCell', { ref: areaText(area) })),
        ),
        has('conditionalFormatting'),
        counted('dataValidations', sheet.rules.map(rule)),
        has('printOptions'),
        has('pageMargins'),
        has('pageSetup'),
        has('headerFooter'),
        has('rowBreaks'),
        has('colBreaks'),
        sheet.comments.length > 0 ? element('legacyDrawing', { 'r:id': 'rId1' }) : '',
      ].join(''),
    ),
  );
}

function sheetProperties({ tabColour, kept }: BookSheet): string {
  const rgb = storedColour(tabColour);
  const content = (rgb ? element('tabColor', { rgb }) : '') + (kept['pageSetUpPr'] ?? '');
  return content === '' ? '' : element('sheetPr', {}, content);
}

function sheetView({ frozen, gridLines, zoom }: BookSheet, active: boolean): string {
  const { rows, columns } = frozen;
  const pane = rows > 0 && columns > 0 ? 'bottomRight' : rows > 0 ? 'bottomLeft' : 'topRight';
  const frozenPane =
    rows > 0 || columns > 0
      ? element('pane', {
          xSplit: columns || undefined,
          ySplit: rows || undefined,
          topLeftCell: cellAddress(rows, columns),
          activePane: pane,
          state: 'frozen',
        }) + element('selection', { pane })
      : '';
  const showGridLines = gridLines ? undefined : false;
  return element(
    'sheetView',
    { showGridLines, tabSelected: active || undefined, zoomScale: zoom, workbookViewId: 0 },
    frozenPane,
  );
}

function width(px: number): number {
  return Math.max(0, Math.round(((px - SIDES) / DIGIT) * 256) / 256);
}

function columns(all: readonly BookColumns[], { look }: Shared): string {
  const elements = all.map(({ first, last, width: px, hidden, look: own }) =>
    element('col', {
      min: first + 1,
      max: Math.min(last + 1, MOST.columns),
      width: width(px ?? 64),
      style: look(own) || undefined,
      hidden: hidden || undefined,
      customWidth: px !== undefined || undefined,
    }),
  );
  return elements.length === 0 ? '' : element('cols', {}, elements.join(''));
}

function rows({ cells, rows: sized }: BookSheet, shared: Shared): string {
  const parts: string[] = [];
  const pending = [...sized].sort(([one], [other]) => one - other);
  let at = 0;
  let next = 0;
  while (at < cells.length || next < pending.length) {
    const row = Math.min(cells[at]?.row ?? Infinity, pending[next]?.[0] ?? Infinity);
    const size = pending[next]?.[0] === row ? pending[next++]?.[1] : undefined;
    const content: string[] = [];
    for (; cells[at]?.row === row; at++) content.push(cell(itemAt(cells, at), shared));
    const ht = size?.height === undefined ? undefined : size.height * POINTS;
    const customHeight = (ht !== undefined && !size?.fitted) || undefined;
    const given = { r: row + 1, ht, hidden: size?.hidden || undefined, customHeight };
    parts.push(element('row', given, content.join('')));
  }
  return parts.join('');
}

function cell({ row, column, value, formula, spill, look }: BookCell, shared: Shared): string {
  const place = `<c r="${cellAddress(row, column)}"`;
  const number = shared.look(look);
  const styled = number > 0 ? `${place} s="${number}"` : place;
  if (formula !== undefined) return formulaCell(styled, { row, column, formula, ...(spill && { spill }) }, value);
  if (value === undefined) return `${styled}/>`;
  if (typeof value === 'string') return `${styled} t="s"><v>${shared.text(value)}</v></c>`;
  const { type, text } = stored(value);
  return `${styled}${type && ` t="${type}"`}><v>${text}</v></c>`;
}

function formulaCell(
  open: string,
  { row, column, formula, spill }: Pick<BookCell, 'row' | 'column' | 'spill'> & { readonly formula: string },
  value: BookValue | undefined,
): string {
  const { type, text } = stored(value ?? '');
  const typed = value === undefined || type === '' ? open : `${open} t="${type}"`;
  const last = value === undefined ? '' : `<v>${text}</v>`;
  const unmarked = spill ? undefined : withoutMarks(formula);
  const content = cellText(storedFormula(unmarked ?? formula));
  if (unmarked !== undefined) return `${typed}><f>${content}</f>${last}</c>`;
  if (!spill && !answersWithTable(formula)) return `${typed}><f>${content}</f>${last}</c>`;
  // cm="1" is the entry of the metadata part that lets a table spill.
  const ref = areaText({ row, column, ...(spill ?? { rows: 1, columns: 1 }) });
  return `${typed} cm="1"><f t="array" ref="${ref}">${content}</f>${last}</c>`;
}

/** A value's kind and text in a file. */
function stored(value: BookValue): { readonly type: string; readonly text: string } {
  if (isFault(value)) return { type: 'e', text: FAULTS.has(value.fault) ? value.fault : '#VALUE!' };
  if (typeof value === 'string') return { type: 'str', text: cellText(value) };
  if (typeof value === 'boolean') return { type: 'b', text: value ? '1' : '0' };
  return Number.isFinite(value) ? { type: '', text: String(value) } : { type: 'e', text: '#NUM!' };
}

function rule({ areas, kind, operator, first, second, allowBlank, others, problem, prompt }: BookRule): string {
  return element(
    'dataValidation',
    {
      type: kind,
      errorStyle: others === undefined || others === 'stop' ? undefined : others,
      operator: operator === 'between' ? undefined : operator,
      allowBlank: allowBlank || undefined,
      showInputMessage: prompt ? true : undefined,
      showErrorMessage: others ? true : undefined,
      errorTitle: problem?.title,
      error: problem?.text,
      promptTitle: prompt?.title,
      prompt: prompt?.text,
      sqref: areas.map(areaText).join(' '),
    },
    [
      first === undefined ? '' : `<formula1>${cellText(ruleFormula(first))}</formula1>`,
      second === undefined ? '' : `<formula2>${cellText(ruleFormula(second))}</formula2>`,
    ].join(''),
  );
}

function ruleFormula(formula: string): string {
  return formula.startsWith('"') ? formula : storedFormula(`=${formula}`);
}
