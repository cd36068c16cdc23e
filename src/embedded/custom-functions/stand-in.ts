import type { WorkerLike } from '../../workers/crew';

/** A custom function as the bundle associates it. */
export type Implementation = (...args: unknown[]) => unknown;

/** Codes of the errors that a custom function may answer with; the office suite's runtime has the same. */
const errorCodes = {
  invalidValue: '#VALUE!',
  notAvailable: '#N/A',
  divisionByZero: '#DIV/0!',
  invalidNumber: '#NUM!',
  nullReference: '#NULL!',
  invalidName: '#NAME?',
  invalidReference: '#REF!',
} as const;

/** An error with a code for the cell and a sentence for its reader. */
class CustomFunctionError extends Error {
  constructor(
    readonly code: string = errorCodes.invalidValue,
    message?: string,
  ) {
    super(message);
  }
}

/** What stands under the global name CustomFunctions while the bundle loads. */
export interface StandIn {
  associate(id: string, implementation: Implementation): void;
  associate(implementations: Readonly<Record<string, Implementation>>): void;
  readonly Error: typeof CustomFunctionError;
  readonly ErrorCode: typeof errorCodes;
  /** For how long it would rather wait for an answer than be told that it comes later, ms. */
  readonly patience: number;
  /** Starts a worker, where the functions find none of a page's. @param file name of its bundle */
  readonly hire?: (file: string) => WorkerLike;
  /** What has been associated, by id in capitals. */
  readonly associated: ReadonlyMap<string, Implementation>;
}

/**
 * Stands in for the office suite's runtime, so that the very bundle that the suite loads runs here. It has what such a
 * bundle may ask for, `associate`, `Error` and `ErrorCode`, and a register to read back what was associated.
 */
export function standIn(patience = Infinity): StandIn {
  const associated = new Map<string, Implementation>();
  const associate = (
    first: string | Readonly<Record<string, Implementation>>,
    implementation?: Implementation,
  ): void => {
    if (typeof first !== 'string') {
      Object.entries(first).forEach(([id, each]) => associate(id, each));
    } else if (typeof implementation !== 'function') {
      throw new TypeError(`associate("${first}", …) needs a function`);
    } else {
      associated.set(first.toUpperCase(), implementation);
    }
  };
  return { associate, Error: CustomFunctionError, ErrorCode: errorCodes, patience, associated };
}
