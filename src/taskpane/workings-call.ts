import { type AstExpression, parse, parseA1Ref, parseStructRef, tokenize } from '@borgar/fx';
import type { Block, Reference, TablePlace } from '../host/host';
import type { Cell, Cells } from '../tables/cell';
import { working } from '../workings/workings';

/** One argument of a call: what the function got, and where that stands if it stands in cells. */
export interface GivenArgument {
  readonly value: Cell;
  readonly place?: TablePlace | undefined;
}

/** A call of one of our functions within a formula. */
export interface Call {
  /** Without the namespace. */
  readonly name: string;
  readonly args: readonly GivenArgument[];
  /** Whether the call is the whole formula. */
  readonly whole: boolean;
}

/** What a formula says that the pane cannot work out by itself. */
export class Unreadable extends Error {}

const NAMESPACE = /^SOLEBENCH\./i;

/** The most cells of a reference that are read. */
const MOST_CELLS = 400_000;

/**
 * The first call of one of our functions in a formula, its arguments read from the workbook.
 * @param sheet on which the formula stands
 * @param read what a reference means there
 * @returns undefined where the formula calls none
 * @throws Unreadable where an argument is worked out by functions of the spreadsheet itself
 */
export async function callIn(
  formula: string,
  sheet: string,
  read: (reference: Reference) => Promise<Block | undefined>,
): Promise<Call | undefined> {
  const root = parsed(formula);
  const call = root && firstCall(root);
  if (!call) return undefined;
  const args: GivenArgument[] = [];
  for (const one of call.arguments as readonly (AstExpression | null)[]) args.push(await argument(one, sheet, read));
  return { name: call.callee.name.replace(NAMESPACE, '').toUpperCase(), args, whole: call === root };
}

type CallExpression = Extract<AstExpression, { type: 'CallExpression' }>;
type CallNode = CallExpression & { callee: { name: string } };

function parsed(formula: string): AstExpression | undefined {
  try {
    return parse(tokenize(formula, { mergeRefs: true }));
  } catch {
    return undefined;
  }
}

function firstCall(node: AstExpression | null): CallNode | undefined {
  if (!node) return undefined;
  if (node.type === 'CallExpression' && 'name' in node.callee && NAMESPACE.test(String(node.callee.name))) {
    return node as CallNode;
  }
  const inner = 'arguments' in node ? (node.arguments as readonly (AstExpression | null)[]) : [];
  for (const one of inner) {
    const found = firstCall(one);
    if (found) return found;
  }
  return undefined;
}

async function argument(
  node: AstExpression | null,
  sheet: string,
  read: (reference: Reference) => Promise<Block | undefined>,
): Promise<GivenArgument> {
  if (!node) return { value: null };
  switch (node.type) {
    case 'Literal':
      return { value: node.value };
    case 'ReferenceIdentifier': {
      const reference = referenceOf(node.value, node.kind, sheet);
      const block = reference && (await read(reference));
      if (!block) throw new Unreadable(`${node.value} is a reference that is not read here.`);
      const { rows, columns } = block.place;
      return { value: rows * columns === 1 ? (block.cells[0]?.[0] ?? null) : block.cells, place: block.place };
    }
    case 'ArrayExpression': {
      const rows: Cell[][] = [];
      for (const line of node.elements as readonly (readonly AstExpression[])[]) {
        const cells: Cell[] = [];
        for (const one of line) cells.push((await argument(one, sheet, read)).value);
        rows.push(cells);
      }
      return { value: rows };
    }
    case 'UnaryExpression':
    case 'BinaryExpression': {
      const values: Cell[] = [];
      for (const one of node.arguments as readonly AstExpression[])
        values.push((await argument(one, sheet, read)).value);
      return { value: arithmetic(node.operator, values) };
    }
    case 'CallExpression': {
      const range = withBlanksApart(node);
      if (range) return argument(range, sheet, read);
      const call = firstCall(node);
      if (call !== node) break;
      const args: Cell[] = [];
      for (const one of call.arguments as readonly (AstExpression | null)[]) {
        args.push((await argument(one, sheet, read)).value);
      }
      const { steps = [] } = working(call.callee.name.replace(NAMESPACE, '').toUpperCase(), args) ?? {};
      return { value: steps[steps.length - 1]?.value ?? null };
    }
  }
  throw new Unreadable('An argument is worked out by the spreadsheet’s own functions; put it into a cell of its own.');
}

/** The range of IF(range="","",range), which only says that its blank cells are blank. */
function withBlanksApart(node: CallExpression): AstExpression | undefined {
  const [asked, blank, range] = node.arguments as readonly (AstExpression | null)[];
  if (!('name' in node.callee) || node.callee.name.toUpperCase() !== 'IF') return undefined;
  if (asked?.type !== 'BinaryExpression' || asked.operator !== '=' || !range) return undefined;
  const [compared, nothing] = asked.arguments as readonly AstExpression[];
  const same = range.type === 'ReferenceIdentifier' && compared?.type === range.type && compared.value === range.value;
  return same && isNothing(nothing) && isNothing(blank) ? range : undefined;
}

function isNothing(node: AstExpression | null | undefined): boolean {
  return node?.type === 'Literal' && node.value === '';
}

function arithmetic(operator: string, values: readonly Cell[]): Cell {
  const numbers = values.map((value) => (value === null ? 0 : typeof value === 'number' ? value : NaN));
  const [a = NaN, b = NaN] = numbers;
  const result = {
    '+': values.length === 1 ? a : a + b,
    '-': values.length === 1 ? -a : a - b,
    '*': a * b,
    '/': a / b,
    '^': a ** b,
    '%': a / 100,
  }[operator];
  if (operator === '&') return values.map((value) => String(value ?? '')).join('');
  if (result === undefined || Number.isNaN(result)) {
    throw new Unreadable(
      'An argument is worked out in the formula in a way that is not read here; put it into a cell of its own.',
    );
  }
  return result;
}

/** A reference as the workbook is asked for it; undefined for what reaches without end, and for names. */
function referenceOf(text: string, kind: string, sheet: string): Reference | undefined {
  if (kind === 'table') {
    const found = parseStructRef(text);
    if (!found?.table || (found.columns?.length ?? 0) > 1) return undefined;
    const [part = 'data'] = found.sections ?? [];
    if (part !== 'all' && part !== 'data') return undefined;
    return { kind: 'table', table: found.table, part, column: found.columns?.[0] };
  }
  const found = parseA1Ref(text);
  if (!found || !('range' in found)) return undefined;
  const { top, left, bottom = top, right = left } = found.range;
  if (
    top === null ||
    left === null ||
    bottom === null ||
    bottom === undefined ||
    right === null ||
    right === undefined
  ) {
    return undefined;
  }
  const place = {
    sheet: found.context?.at(-1) ?? sheet,
    row: Math.min(top, bottom),
    column: Math.min(left, right),
    rows: Math.abs(bottom - top) + 1,
    columns: Math.abs(right - left) + 1,
  };
  return place.rows * place.columns > MOST_CELLS ? undefined : { kind: 'cells', ...place };
}

/** A block's cells, whatever an argument was. */
export function blockOf({ value }: GivenArgument): Cells {
  return Array.isArray(value) ? (value as Cells) : [[value]];
}
