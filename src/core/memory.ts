interface Entry {
  readonly made: object;
  bytes: number;
  /** The plan that last used it. */
  plan: number;
}

/** Bytes that a key and its place take beside its letters. */
const PLACE = 120;

/** Keeps results by the content of what they were made from, up to so many bytes; the least lately used go first. */
export class Memory {
  /** Results ever made, and bytes held now. */
  made = 0;
  bytes = 0;
  protected plan = 0;
  private readonly entries = new Map<string, Entry>();

  /** @param bound bytes that may be held */
  constructor(private readonly bound: number) {}

  find(key: string): object | undefined {
    const entry = this.entries.get(key);
    if (entry === undefined) return undefined;
    this.entries.delete(key);
    this.entries.set(key, entry);
    if (entry.plan !== this.plan) this.use(entry.bytes);
    entry.plan = this.plan;
    return entry.made;
  }

  keep(key: string, made: object, bytes: number): void {
    this.drop(key);
    const entry = { made, bytes: bytes + key.length + PLACE, plan: this.plan };
    this.entries.set(key, entry);
    this.made += 1;
    this.take(entry.bytes);
  }

  /** What is kept under a key has come to hold so many more bytes. */
  grow(key: string, bytes: number): void {
    const entry = this.entries.get(key);
    if (entry === undefined) return;
    entry.bytes += bytes;
    this.made += 1;
    this.take(bytes);
  }

  forget(): void {
    this.entries.clear();
    this.bytes = 0;
  }

  /** Bytes that may be held now. */
  protected get most(): number {
    return this.bound;
  }

  /** Told of bytes that the plan at hand uses. */
  protected use(_bytes: number): void {}

  private take(bytes: number): void {
    this.bytes += bytes;
    this.use(bytes);
    for (const key of this.entries.keys()) {
      // What is used just now stays, however large.
      if (this.bytes <= this.most || this.entries.size === 1) return;
      this.drop(key);
    }
  }

  private drop(key: string): void {
    this.bytes -= this.entries.get(key)?.bytes ?? 0;
    this.entries.delete(key);
  }
}
