/** A linear programme: the least cost of variables that are not negative, under rows. */
export interface Programme {
  readonly variables: readonly {
    readonly cost: number;
    readonly whole: boolean;
    readonly most?: number | undefined;
  }[];
  readonly rows: readonly {
    readonly terms: readonly (readonly [variable: number, by: number])[];
    /** The row comes to this at least, or at most. */
    readonly least?: number | undefined;
    readonly most?: number | undefined;
  }[];
}

export interface Solution {
  readonly cost: number;
  readonly values: readonly number[];
  /** What one more of a row's bound costs; only where no variable is whole. */
  readonly duals: readonly number[];
  /** Whether no cheaper solution is possible. */
  readonly proven: boolean;
}

/**
 * Solves a programme.
 * @param nodes branches looked at, at most: the same programme gives the same answer, whatever the clock
 * @returns undefined where it has no solution, or none was found
 */
export type Solver = (programme: Programme, nodes: number) => Solution | undefined;
