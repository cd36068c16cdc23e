import { Problem } from '../core/problem';

/**
 * Runs a function's work and hands its result to the host; a Problem becomes the host's error with its sentence.
 * The host shows sentences with #VALUE! and #N/A only.
 */
export function answer<T>(work: () => T): T {
  try {
    const result = work();
    assertShowable(result);
    return result;
  } catch (error) {
    if (!(error instanceof Problem)) throw hostError('invalid', `Solebench has a fault of its own here: ${error}`);
    throw hostError(error.code, error.message);
  }
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
