import { BaseFunction, type BaseValueObject, ErrorValueObject } from '@univerjs/engine-formula';
import { addressOf, type Argument, argumentsFor, type Corner, Failure, liftedSize } from './arguments';
import type { Calculation, FormulaSite } from './calculation';
import { callKey } from './call-key';
import { cellKey, type GridCell } from './messages';
import { type FunctionMetadata } from './metadata';
import { type Answer, answerFrom, failureFrom } from './result';
import type { Implementation } from './stand-in';
import { answerToEngine, argumentFromEngine, arrayToEngine, onTheWay, standingIn } from './values';

/** Arguments, and where those stand that stand in cells. */
interface Given {
  readonly values: readonly Argument[];
  readonly corners: readonly (Corner | undefined)[];
}

/** A custom function as one of the grid's own. */
export class GridFunction extends BaseFunction {
  /** Known once a call has returned a promise: from then on calls are looked up before they are made, as some take no time. */
  private takesTime = false;

  constructor(
    name: string,
    private readonly metadata: FunctionMetadata,
    private readonly implementation: Implementation,
    private readonly calculation: Calculation,
  ) {
    super(name);
  }

  override calculate(...variants: BaseValueObject[]): BaseValueObject {
    const cell = { unitId: this.unitId ?? '', sheetId: this.subUnitId ?? '', row: this.row, column: this.column };
    this.calculation.calculating(cell);
    const values = variants.map(argumentFromEngine);
    const given: Given = { values, corners: variants.map((variant) => this.cornerOf(variant, cell.unitId)) };
    const { rows, columns } = liftedSize(this.metadata, values);
    if (rows === 1 && columns === 1) return this.shown(this.answer(given, cell), cell);
    return arrayToEngine(
      Array.from({ length: rows }, (_, row) =>
        Array.from({ length: columns }, (_, column) => {
          const each = this.answer(given, cell, row, column);
          const only = Array.isArray(each) ? (each[0]?.[0] as Answer) : each;
          return this.shown(only, { ...cell, row: cell.row + row, column: cell.column + column });
        }),
      ),
    );
  }

  /** undefined while the answer is on the way. */
  private answer(given: Given, cell: GridCell, row = 0, column = 0): Answer | undefined {
    try {
      const args = argumentsFor(this.metadata, given.values, row, column, given.corners);
      if (this.takesTime && this.calculation.waiting.knows(this.callOf(args, given)))
        return this.awaited(args, given, cell);
      const invocation = this.invocation(given, cell);
      const returned = this.implementation(...args, invocation);
      if (!isPromise(returned)) return answerFrom(returned);
      this.takesTime = true;
      return this.awaited(args, given, cell, { invocation, returned });
    } catch (error) {
      return failureFrom(error);
    }
  }

  private awaited(
    args: readonly unknown[],
    given: Given,
    cell: GridCell,
    begun?: { invocation: CustomFunctions.CancelableInvocation; returned: PromiseLike<unknown> },
  ): Answer | undefined {
    const site: FormulaSite = { ...cell, key: cellKey(cell), formula: this.calculation.formulaAt(cell) };
    const settled = this.calculation.waiting.ask(this.callOf(args, given), site, () => {
      const invocation = begun?.invocation ?? this.invocation(given, cell);
      const returned = begun?.returned ?? this.implementation(...args, invocation);
      return {
        result: Promise.resolve(returned).then(answerFrom, failureFrom),
        cancel: () => invocation.onCanceled?.(),
        // A function of its arguments alone gives the same answer again; a failure may have passed.
        lasting: (answer) => !(answer instanceof Failure) && !this.metadata.options?.volatile,
      };
    });
    return settled?.result;
  }

  /** By where arguments stand too, where the function asks for that: its sentences name the cells. */
  private callOf(args: readonly unknown[], given: Given): string {
    return callKey(this.metadata.id, args, this.addresses(given));
  }

  private cornerOf(variant: BaseValueObject, unitId: string): Corner | undefined {
    const at = standingIn(variant);
    if (!at) return undefined;
    const sheet = this.calculation.sheetName({ unitId, sheetId: at.sheetId });
    return sheet === undefined ? undefined : { sheet, row: at.row, column: at.column };
  }

  /** Addresses of the arguments, for a function that asks for them. */
  private addresses({ values, corners }: Given): (string | undefined)[] | undefined {
    if (!this.metadata.options?.requiresParameterAddresses) return undefined;
    return values.map((argument, at) => addressOf(argument, corners[at]));
  }

  private invocation(given: Given, cell: GridCell): CustomFunctions.CancelableInvocation {
    const parameterAddresses = this.addresses(given);
    return {
      functionName: this.metadata.id,
      ...(parameterAddresses && { parameterAddresses: parameterAddresses as string[] }),
      ...(this.metadata.options?.requiresAddress && { address: this.calculation.addressOf(cell) }),
    };
  }

  private shown(answer: Answer | undefined, cell: GridCell): BaseValueObject {
    if (answer === undefined) return ErrorValueObject.create(onTheWay);
    if (answer instanceof Failure && answer.message) this.calculation.messages.note(cell, answer.code, answer.message);
    else this.calculation.messages.passed(cell);
    return answerToEngine(answer);
  }
}

function isPromise(value: unknown): value is PromiseLike<unknown> {
  return typeof value === 'object' && value !== null && typeof Reflect.get(value, 'then') === 'function';
}
