import { type Injector } from '@univerjs/core';
import {
  type BaseReferenceObject,
  BaseFunction,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  type FunctionVariantType,
  IFormulaRuntimeService,
  IFunctionService,
  LexerNode,
  NullValueObject,
  PrefixNodeFactory,
} from '@univerjs/engine-formula';
import { standingIn } from './values';

/** What the formula engine does with @ before a part of a formula. */
interface At {
  _handlerAT(value: FunctionVariantType): FunctionVariantType;
}

/**
 * Lets @ before a function, and SINGLE( … ) as files have it, take one value of many, as the office suite does: of a range
 * the cell beside the formula, of a table that is worked out the first ("Implicit intersection operator: @", its maker).
 * The grid's own @ knows ranges alone.
 */
export function takeSingleValues(injector: Injector): void {
  const functions = injector.get(IFunctionService);
  functions.registerExecutors(new Single('SINGLE'));
  const lexed = new LexerNode();
  lexed.setToken('@');
  const node = new PrefixNodeFactory(functions, injector.get(IFormulaRuntimeService)).checkAndCreateNodeType(lexed);
  const at = Object.getPrototypeOf(node) as At;
  const ofRange = at._handlerAT;
  // All grids of a page share it.
  if (ofRange.name === taken.name) return;
  function taken(this: At, value: FunctionVariantType): FunctionVariantType {
    if (!value.isReferenceObject()) return first(value as BaseValueObject);
    const range = value as BaseReferenceObject;
    return range.isCell() ? first(range.toArrayValueObject()) : ofRange.call(this, value);
  }
  at._handlerAT = taken;
}

class Single extends BaseFunction {
  override minParams = 1;
  override maxParams = 1;

  override calculate(value: BaseValueObject): BaseValueObject {
    const standing = standingIn(value);
    if (!value.isArray() || !standing) return first(value);
    const rows = value.getArrayValue();
    const [down, across] = [this.row - standing.row, this.column - standing.column];
    const beside = rows.length === 1 ? rows[0]?.[rows[0].length === 1 ? 0 : across] : rows[down];
    if (!Array.isArray(beside)) return beside ?? ErrorValueObject.create(ErrorType.VALUE);
    return beside.length === 1 ? (beside[0] ?? NullValueObject.create()) : ErrorValueObject.create(ErrorType.VALUE);
  }
}

function first(value: BaseValueObject): BaseValueObject {
  return value.isArray() ? (value.getArrayValue()[0]?.[0] ?? NullValueObject.create()) : value;
}
