import { bytesOfRecords, RECORD } from '../../bytes';

/** How units of one kind come to lie one after the other, as far as has been found out. */
export interface LaidOfKind<Laid> {
  /** Pieces of each unit. */
  readonly units: (readonly Laid[])[];
  /** Whether no more of them find a place. */
  full: boolean;
}

/** A sheet with some units on it, and how those of any kind come to lie on it next. */
export class LaidSheet<Laid> {
  private readonly next = new Map<string, LaidOfKind<Laid>>();
  private readonly after = new Map<string, LaidSheet<Laid>>();

  constructor(private readonly all: { bytes: number }) {}

  of(kind: string): LaidOfKind<Laid> {
    let known = this.next.get(kind);
    if (!known) {
      this.next.set(kind, (known = { units: [], full: false }));
      this.all.bytes += 2 * RECORD;
    }
    return known;
  }

  /** Takes note of one unit more. */
  add(kind: string, unit: readonly Laid[]): void {
    this.of(kind).units.push(unit);
    this.all.bytes += bytesOfRecords(unit.length);
  }

  /** The sheet with so many units of a kind besides. */
  with(kind: string, count: number): LaidSheet<Laid> {
    const key = `${count} ${kind}`;
    let known = this.after.get(key);
    if (!known) {
      this.after.set(key, (known = new LaidSheet(this.all)));
      this.all.bytes += 3 * RECORD;
    }
    return known;
  }
}

/**
 * What sweeps have laid: where a unit comes to lie hangs on what lies there before it alone, so that a run in which the
 * number of one kind has changed is laid anew from there on only. It changes how fast sheets are laid, never how.
 */
export class LaidBefore<Laid> {
  /** Near enough. */
  bytes = 0;
  private readonly empty = new Map<string, LaidSheet<Laid>>();

  /** The empty sheet. @param way stands for how it is swept */
  sheet(way: string): LaidSheet<Laid> {
    let known = this.empty.get(way);
    if (!known) this.empty.set(way, (known = new LaidSheet(this)));
    return known;
  }

  forget(): void {
    this.empty.clear();
    this.bytes = 0;
  }
}
