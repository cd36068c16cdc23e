import type { Memory } from './memory';

/** One kind of results in a memory. It changes how fast an answer comes, never the answer. */
export class Memo<T extends object> {
  /**
   * @param kind tells these results from others in the memory
   * @param bytesOf bytes that a result takes, near enough
   */
  constructor(
    private readonly memory: Memory,
    private readonly kind: string,
    private readonly bytesOf: (made: T) => number,
  ) {}

  get(key: string, make: () => T): T {
    return this.find(key) ?? this.keep(key, make());
  }

  find(key: string): T | undefined {
    return this.memory.find(this.keyOf(key)) as T | undefined;
  }

  keep(key: string, made: T): T {
    this.memory.keep(this.keyOf(key), made, this.bytesOf(made));
    return made;
  }

  /** Tells that the result under a key has come to hold so many more bytes. */
  grow(key: string, bytes: number): void {
    this.memory.grow(this.keyOf(key), bytes);
  }

  private keyOf(key: string): string {
    return `${this.kind} ${key}`;
  }
}
