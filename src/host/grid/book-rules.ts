import {
  DataValidationErrorStyle,
  DataValidationRenderMode,
  type IDataValidationRule,
  type IRange,
} from '@univerjs/core';
import type { BookRule } from '../../exchange/xlsx/book';
import type { Area } from '../../workbook/workbook';

const STYLES = [
  [DataValidationErrorStyle.STOP, 'stop'],
  [DataValidationErrorStyle.WARNING, 'warning'],
  [DataValidationErrorStyle.INFO, 'information'],
] as const;
/** Kinds that files know; the grid calls them by the same words. */
const KINDS: readonly string[] = ['list', 'whole', 'decimal', 'date', 'time', 'textLength', 'custom'];

/**
 * What a grid's cells take, as a file has it; undefined for kinds that files do not know.
 * @param workbook the grid's id of the workbook, which no reference of a file names
 */
export function bookRule(rule: IDataValidationRule, workbook: string): BookRule | undefined {
  if (!KINDS.includes(rule.type)) return undefined;
  const [first, second] = [rule.formula1, rule.formula2].map((formula) =>
    stored(rule.type, formula && withinWorkbook(formula, workbook)),
  );
  const others = rule.showErrorMessage
    ? (STYLES.find(([style]) => style === rule.errorStyle)?.[1] ?? 'stop')
    : undefined;
  const problem = words(rule.errorTitle, rule.error);
  const prompt = rule.showInputMessage ? words(rule.promptTitle, rule.prompt) : undefined;
  return {
    areas: (rule.ranges as readonly IRange[]).map(areaOf),
    kind: rule.type as BookRule['kind'],
    allowBlank: rule.allowBlank ?? false,
    ...(rule.operator && { operator: rule.operator }),
    ...(first !== undefined && { first }),
    ...(second !== undefined && { second }),
    ...(others && { others }),
    ...(problem && { problem }),
    ...(prompt && { prompt }),
  };
}

/** The other way round. */
export function gridRule(rule: BookRule, uid: string): IDataValidationRule {
  const { kind, operator, first, second, allowBlank, others, problem, prompt, areas } = rule;
  return {
    uid,
    type: kind,
    allowBlank,
    ranges: areas.map(rangeOf),
    ...(operator && { operator: operator as NonNullable<IDataValidationRule['operator']> }),
    ...(first !== undefined && { formula1: shown(kind, first) }),
    ...(second !== undefined && { formula2: shown(kind, second) }),
    ...(kind === 'list' && { showDropDown: true, renderMode: DataValidationRenderMode.ARROW }),
    ...(others && {
      showErrorMessage: true,
      errorStyle: STYLES.find(([, name]) => name === others)?.[0] ?? DataValidationErrorStyle.STOP,
    }),
    ...(problem?.title !== undefined && { errorTitle: problem.title }),
    ...(problem?.text !== undefined && { error: problem.text }),
    ...(prompt && { showInputMessage: true }),
    ...(prompt?.title !== undefined && { promptTitle: prompt.title }),
    ...(prompt?.text !== undefined && { prompt: prompt.text }),
  };
}

/** A formula without the workbook's own id before its sheets: in a file that would name another file. */
export function withinWorkbook(formula: string, workbook: string): string {
  if (!formula.startsWith('=')) return formula;
  return formula.replaceAll(`'[${workbook}]`, "'").replaceAll(`[${workbook}]`, '');
}

/** A list's words stand in quotes in a file, and everything else without "=". */
function stored(type: string, formula: string | undefined): string | undefined {
  if (formula === undefined || formula === '') return undefined;
  if (formula.startsWith('=')) return formula.slice(1);
  return type === 'list' ? `"${formula.replaceAll('"', '""')}"` : formula;
}

function shown(kind: string, stored: string): string {
  const listed = kind === 'list' && /^"(.*)"$/s.exec(stored)?.[1];
  if (typeof listed === 'string') return listed.replaceAll('""', '"');
  // A plain number stays one.
  return /^-?[\d.]+$/.test(stored) ? stored : `=${stored}`;
}

function words(title: string | undefined, text: string | undefined) {
  if (!title && !text) return undefined;
  return { ...(title && { title }), ...(text && { text }) };
}

export function areaOf({ startRow, endRow, startColumn, endColumn }: IRange): Area {
  return { row: startRow, column: startColumn, rows: endRow - startRow + 1, columns: endColumn - startColumn + 1 };
}

export function rangeOf({ row, column, rows, columns }: Area): IRange {
  return { startRow: row, endRow: row + rows - 1, startColumn: column, endColumn: column + columns - 1 };
}
