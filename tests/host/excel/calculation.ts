import { type AstExpression, parse, parseA1Ref, parseStructRef, tokenize } from '@borgar/fx';
import type { Bundle } from '../../bundle';
import type { CellModel, SheetModel, Suite } from './suite';

/** A blank cell, which is neither 0 nor text until something is made of it. */
const BLANK = Symbol('blank');
type Matrix = readonly (readonly unknown[])[];

/**
 * What a formula of the stand-in's workbook answers: references, comparison, IF and the functions of a bundle, cell by cell as the
 * suite works with ranges. Nothing else is known, so that no slip of the pen passes.
 */
export class SuiteCalculation {
  constructor(
    private readonly suite: Suite,
    private readonly bundle: Bundle,
  ) {}

  /** @throws what the function throws, for the cell */
  answer(sheet: string, row: number, column: number): unknown {
    return this.workOut(sheet, this.suite.cell(sheet, row, column).formula ?? '');
  }

  workOut(sheet: string, formula: string): unknown {
    return this.value(parse(tokenize(formula, { mergeRefs: true })), sheet);
  }

  private value(node: AstExpression | null, sheet: string): unknown {
    switch (node?.type) {
      case undefined:
        return null;
      case 'Literal':
        return node.value;
      case 'ReferenceIdentifier':
        return node.kind === 'table' ? this.table(node.value) : this.cells(node.value, sheet);
      case 'BinaryExpression': {
        const [a, b] = (node.arguments as readonly AstExpression[]).map((one) => this.value(one, sheet));
        if (node.operator !== '=') throw new Error(`The model has no ${node.operator}.`);
        return broadcast([a, b], ([one, other]) => equal(one, other));
      }
      case 'CallExpression':
        return this.call(node as Call, sheet);
      default:
        throw new Error(`The model works out no ${node?.type}.`);
    }
  }

  private call({ callee, arguments: given }: Call, sheet: string): unknown {
    const args = given.map((one) => this.value(one, sheet));
    if (callee.name.toUpperCase() === 'IF') return broadcast(args, ([asked, yes, no]) => (asked === true ? yes : no));
    const [, name = ''] = /^SOLEBENCH\.(.*)$/i.exec(callee.name) ?? [];
    const { parameters } = this.bundle.metadata.find((one) => one.name === name.toUpperCase()) ?? { parameters: [] };
    const passed = args.map((arg, at) => {
      const matrix = broadcast([arg], ([one]) => (one === BLANK ? this.suite.blankCell : one));
      const asRange = parameters[at]?.dimensionality === 'matrix';
      return asRange ? (Array.isArray(matrix) ? matrix : [[matrix]]) : Array.isArray(matrix) ? matrix[0]?.[0] : matrix;
    });
    return this.bundle.call(name.toUpperCase(), ...passed);
  }

  private table(text: string): Matrix {
    const { table: name, sections = [] } = parseStructRef(text) ?? {};
    const table = this.suite.tables.find((one) => one.name.toLowerCase() === name?.toLowerCase());
    if (!table || sections[0] !== 'all') throw new Error(`The model knows no ${text}.`);
    const { row, column, rows, columns } = table.area;
    return block(table.sheet, row, column, rows, columns);
  }

  private cells(text: string, own: string): Matrix | unknown {
    const found = parseA1Ref(text);
    const {
      top = 0,
      left = 0,
      bottom = top,
      right = left,
    } = (found as unknown as { range: Record<string, number> }).range;
    const sheet = this.suite.sheet(found?.context?.at(-1) ?? own);
    const cells = block(sheet, top, left, bottom - top + 1, right - left + 1);
    return cells.length === 1 && cells[0]?.length === 1 ? cells[0][0] : cells;
  }
}

interface Call {
  readonly callee: { readonly name: string };
  readonly arguments: readonly (AstExpression | null)[];
}

function block(sheet: SheetModel, row: number, column: number, rows: number, columns: number): Matrix {
  return Array.from({ length: rows }, (_, r) =>
    Array.from({ length: columns }, (_, c) => shown(sheet.cells.get(`${row + r},${column + c}`) ?? {})),
  );
}

/** The suite's model works out none of its own sums; ours come to no text where there are no pairs. */
function shown({ value, formula }: CellModel): unknown {
  return value ?? (formula === undefined ? BLANK : '');
}

function equal(one: unknown, other: unknown): boolean {
  if (one === BLANK || other === BLANK) return [one, other].every((each) => [BLANK, '', 0].includes(each as never));
  return typeof one === 'string' && typeof other === 'string'
    ? one.toLowerCase() === other.toLowerCase()
    : one === other;
}

/** Works with ranges cell by cell; what is no range stands for each. */
function broadcast(given: readonly unknown[], work: (cells: readonly unknown[]) => unknown): unknown {
  const ranges = given.filter((one): one is Matrix => Array.isArray(one));
  if (ranges.length === 0) return work(given);
  const [rows, columns] = [
    Math.max(...ranges.map((one) => one.length)),
    Math.max(...ranges.map((one) => one[0]?.length ?? 0)),
  ];
  return Array.from({ length: rows }, (_, r) =>
    Array.from({ length: columns }, (_, c) => work(given.map((one) => (Array.isArray(one) ? one[r]?.[c] : one)))),
  );
}
