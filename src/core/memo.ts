/**
 * Keeps results by the content of what they were made from, the least lately used dropped first. It changes how fast an
 * answer comes, never the answer.
 */
export class Memo<T extends object> {
  private readonly kept = new Map<string, T>();

  constructor(private readonly most: number) {}

  get(key: string, make: () => T): T {
    return this.find(key) ?? this.keep(key, make());
  }

  find(key: string): T | undefined {
    const found = this.kept.get(key);
    if (found === undefined) return undefined;
    this.kept.delete(key);
    this.kept.set(key, found);
    return found;
  }

  keep(key: string, made: T): T {
    this.kept.set(key, made);
    if (this.kept.size > this.most) this.kept.delete(this.kept.keys().next().value as string);
    return made;
  }
}

const identities = new WeakMap<object, number>();
let given = 0;

/** A number that stands for one memoised object in the keys of later stages. */
export function identity(object: object): number {
  let number = identities.get(object);
  if (number === undefined) {
    number = given += 1;
    identities.set(object, number);
  }
  return number;
}
