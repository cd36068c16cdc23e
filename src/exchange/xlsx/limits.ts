/**
 * How much of a workbook file is read at most: far more than any workbook of this trade has, and little enough that a file
 * made to exhaust the machine is refused within seconds.
 */
export const LIMITS = {
  /** Bytes of the file, and of what it unpacks to. */
  bytes: 64 * 2 ** 20,
  unpacked: 128 * 2 ** 20,
  /** How many times smaller a large part may be packed: sheets of a workbook come to 50. */
  packing: 250,
  parts: 5_000,
  sheets: 400,
  cells: 1_500_000,
  /** Cells over which formulas' tables spill, by what the file says. */
  spilled: 1_500_000,
  /** Letters of all cells' texts together, of all formulas, and of one. */
  letters: 32 * 2 ** 20,
  formulaLetters: 10 * 2 ** 20,
  formula: 8_192,
  /** Elements of all parts. */
  elements: 6_000_000,
  /** Styles, names, rules, merged cells, comments: of each. */
  others: 65_000,
  /** Elements within each other. */
  depth: 60,
} as const;

export type Limits = Readonly<Record<keyof typeof LIMITS, number>>;

/** Counts what is read of one file, and refuses what is more than the limits. */
export class Counter {
  private readonly counts: Record<string, number> = {};

  constructor(readonly limits: Limits = LIMITS) {}

  /** @param what in words, such as "sheets" @throws Refusal */
  add(limit: keyof typeof LIMITS, what: string, by = 1): void {
    const count = (this.counts[limit] ?? 0) + by;
    this.counts[limit] = count;
    const most = this.limits[limit];
    if (count > most) throw new Refusal(`it has more than ${most.toLocaleString('en')} ${what}`);
  }
}

/** Why a file is not read, as the end of a sentence: "The file cannot be read: …". */
export class Refusal extends Error {
  override readonly name = 'Refusal';
}
