import type { CheckKind, CheckOf } from '../../core/plan/checks/check';
import type { PlaceWords } from '../../core/problem';

export interface CheckWords {
  readonly check: string;
  readonly found?: number | undefined;
  readonly wanted?: number | undefined;
  /** What to do, or why it holds. */
  readonly say: string;
}

/** How figures and places are written. */
export interface Writing {
  /** A height of so many mm. */
  readonly mm: (height: number) => string;
  readonly where: PlaceWords;
  /** Names the worst size, where the sizes differ: stands before all else. */
  readonly size: string;
}

/** How each kind of check is said; what was found and wanted is the check's own where nothing else is given. */
export type WordsOf<Kinds extends CheckKind> = {
  readonly [Kind in Kinds]: (check: CheckOf<Kind>, writing: Writing) => CheckWords;
};
