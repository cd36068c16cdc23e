import { BaseFunction, type BaseValueObject, ErrorValueObject } from '@univerjs/engine-formula';
import { type Argument, argumentsFor, Failure, liftedSize } from './arguments';
import type { Calculation, FormulaSite } from './calculation';
import { cellKey, type GridCell } from './messages';
import { type FunctionMetadata } from './metadata';
import { type Answer, answerFrom, failureFrom } from './result';
import type { Implementation } from './stand-in';
import { answerToEngine, argumentFromEngine, arrayToEngine, onTheWay } from './values';

/** A custom function as one of the grid's own. */
export class GridFunction extends BaseFunction {
  /** Known once a call has returned a promise: from then on calls are looked up before they are made. */
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
    const given = variants.map(argumentFromEngine);
    const { rows, columns } = liftedSize(this.metadata, given);
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
  private answer(given: readonly Argument[], cell: GridCell, row = 0, column = 0): Answer | undefined {
    try {
      const args = argumentsFor(this.metadata, given, row, column);
      if (this.takesTime) return this.awaited(args, cell);
      const invocation = this.invocation(cell);
      const returned = this.implementation(...args, invocation);
      if (!isPromise(returned)) return answerFrom(returned);
      this.takesTime = true;
      return this.awaited(args, cell, { invocation, returned });
    } catch (error) {
      return failureFrom(error);
    }
  }

  private awaited(
    args: readonly unknown[],
    cell: GridCell,
    begun?: { invocation: CustomFunctions.CancelableInvocation; returned: PromiseLike<unknown> },
  ): Answer | undefined {
    const site: FormulaSite = { ...cell, key: cellKey(cell), formula: this.calculation.formulaAt(cell) };
    const call = `${this.metadata.id}${JSON.stringify(args)}`;
    const settled = this.calculation.waiting.ask(call, site, () => {
      const invocation = begun?.invocation ?? this.invocation(cell);
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

  private invocation(cell: GridCell): CustomFunctions.CancelableInvocation {
    return {
      functionName: this.metadata.id,
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
