import type { Supply } from './supply';

/** A row, and what it was built from. */
interface Built<Rule, Row> {
  readonly place: number;
  readonly length: number;
  readonly rule: Rule;
  readonly one: number;
  readonly other: number;
  readonly row: Row;
  readonly next: Built<Rule, Row> | undefined;
}

/**
 * Rows built from what is left now, and from what was left earlier while one sheet was tried in several ways. They are asked
 * for so often that a key in letters would take a tenth of the time of laying them.
 */
export class BuiltRows<Rule, Row> {
  private readonly lists = new Map<number, Built<Rule, Row>>();

  /** @param rule the very same, not one like it */
  find(place: number, length: number, rule: Rule, { sums }: Supply): Row | undefined {
    let built = this.lists.get(listOf(place, sums));
    while (
      built &&
      !(
        built.place === place &&
        built.length === length &&
        built.rule === rule &&
        built.one === sums[0] &&
        built.other === sums[1]
      )
    ) {
      built = built.next;
    }
    return built?.row;
  }

  keep(place: number, length: number, rule: Rule, { sums }: Supply, row: Row): void {
    const list = listOf(place, sums);
    const next = this.lists.get(list);
    this.lists.set(list, { place, length, rule, one: sums[0]!, other: sums[1]!, row, next });
  }

  clear(): void {
    this.lists.clear();
  }
}

function listOf(place: number, sums: Int32Array): number {
  return sums[0]! ^ Math.imul(place + 1, 0x9e3779b1);
}
