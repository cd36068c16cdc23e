import { type PlaceWords, placeInWords, Problem } from '../core/problem';

/**
 * Runs a function's work and hands its result to the host; a Problem becomes the host's error with its sentence.
 * The host shows sentences with #VALUE! and #N/A only.
 * @param where words for the place that a Problem names
 */
export function answer<T>(work: () => T, where: PlaceWords = placeInWords): T {
  try {
    const result = work();
    assertShowable(result);
    return result;
  } catch (error) {
    if (!(error instanceof Problem)) throw hostError('invalid', `Solebench has a fault of its own here: ${error}`);
    throw hostError(error.code, error.inWords(where));
  }
}

/**
 * The same for one number that has a unit: where the host can, the number comes with a format that shows the unit, and
 * stays a number; elsewhere it is plain. Its function must say that it returns any: the host takes formats with results of
 * that type only.
 * @param format number format in en-US codes, such as 0.0 "mm"
 */
export function measured(work: () => number, format: string | (() => string)): unknown {
  const basicValue = answer(work);
  if (!suiteHas('CustomFunctionsRuntime', '1.4')) return basicValue;
  const numberFormat = typeof format === 'string' ? format : format();
  // From ExcelApi 1.19 on a plain double has a format too, and the former kind of value is to be given up (office docs).
  return suiteHas('ExcelApi', '1.19')
    ? { type: 'Double', basicType: 'Double', basicValue, numberFormat }
    : { type: 'FormattedNumber', basicValue, numberFormat };
}

/** Number formats of measures. */
export const IN_MM = '0.0 "mm"';
export const IN_MM2 = '0 "mm²"';
export const IN_DEGREES = '0.0"°"';
export const IN_G = '0 "g"';
export const IN_ML = '0.0 "ml"';
export const IN_PERCENT = '0.0%';

/** Whether the host is the office suite in a version that has a set of abilities; 1.4 of these takes numbers with a format. */
function suiteHas(ability: 'CustomFunctionsRuntime' | 'ExcelApi', version: string): boolean {
  const suite = typeof Office === 'undefined' ? undefined : Office.context?.requirements;
  return suite?.isSetSupported(ability, version) ?? false;
}

function hostError(code: Problem['code'], message: string): CustomFunctions.Error {
  const { invalidValue, notAvailable } = CustomFunctions.ErrorCode;
  return new CustomFunctions.Error(code === 'invalid' ? invalidValue : notAvailable, message);
}

/** NaN in a table would silently become a blank cell, so none may leave. */
function assertShowable(result: unknown): void {
  if (Array.isArray(result)) result.forEach(assertShowable);
  else if (typeof result === 'number' && !Number.isFinite(result)) throw new Error('a result is not a finite number');
  else if (result === undefined || result === null) throw new Error('a result is missing');
}
