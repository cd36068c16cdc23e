import { html, nothing, type TemplateResult } from 'lit';
import { fold } from '../core/plan/codes';
import type { Cells } from '../tables/cell';
import { counted } from '../tables/counted';
import { definedCodes, type LostCode, lostCodes } from '../tables/named-codes';
import { button } from './button';

/** A code that was renamed in its own table while others still name it, and what it may be called now. */
export interface Renamed {
  readonly lost: LostCode;
  readonly to: readonly string[];
}

/** More than this many, and nobody knows which one is meant. */
const MOST = 3;

/**
 * Offers to carry a code through that the maker has just renamed, until that is done, undone or declined. A code that never
 * stood in its table is a slip of the pen, which Checks tells of.
 */
export class RenameOffer {
  private tables: ReadonlyMap<string, Cells> = new Map();
  private defined: ReadonlyMap<string, readonly string[]> = new Map();
  /** What codes may be called now that were renamed, by their table and themselves. */
  private readonly renamed = new Map<string, readonly string[]>();
  private readonly declined = new Set<string>();
  private lost: readonly LostCode[] = [];
  /** Codes that stood in their tables and have gone, with nothing new in their place yet. */
  private readonly gone = new Set<string>();

  constructor(private readonly changed: () => void) {}

  /** Looks at the tables as they are now. */
  follow(tables: ReadonlyMap<string, Cells>): void {
    if (tables === this.tables) return;
    this.tables = tables;
    const defined = definedCodes(tables);
    this.lost = lostCodes(tables);
    for (const lost of this.lost) {
      const before = this.defined.get(lost.definedIn) ?? [];
      if (!has(before, lost.code) && !this.gone.has(keyOf(lost))) continue;
      const to = (defined.get(lost.definedIn) ?? []).filter((code) => !has(before, code));
      // Its row was deleted, or is emptied before another name is typed: any that stands there would be a guess.
      if (to.length === 0) this.gone.add(keyOf(lost));
      else this.gone.delete(keyOf(lost));
      if (to.length > 0 && to.length <= MOST) this.renamed.set(keyOf(lost), to);
    }
    const still = new Set(this.lost.map(keyOf));
    for (const key of this.gone) if (!still.has(key)) this.gone.delete(key);
    for (const key of this.renamed.keys()) {
      if (still.has(key)) continue;
      this.renamed.delete(key);
      this.declined.delete(key);
    }
    this.defined = defined;
  }

  /** The first that is still to be carried through and was not declined. */
  get offered(): Renamed | undefined {
    return this.lost
      .filter((lost) => !this.declined.has(keyOf(lost)))
      .flatMap((lost) => {
        const there = this.defined.get(lost.definedIn) ?? [];
        const to = (this.renamed.get(keyOf(lost)) ?? []).filter((code) => has(there, code));
        return to.length > 0 ? [{ lost, to }] : [];
      })[0];
  }

  decline(lost: LostCode): void {
    this.declined.add(keyOf(lost));
    this.changed();
  }
}

/** The offer in one line, with a way to be rid of it. */
export function renameOffer(
  offer: RenameOffer,
  tables: ReadonlyMap<string, Cells>,
  rename: (lost: LostCode, to: string) => void,
): TemplateResult | typeof nothing {
  offer.follow(tables);
  const { offered } = offer;
  if (!offered) return nothing;
  const { lost, to } = offered;
  const cells = lost.cells.length;
  return html`<div class="offer small" role="status">
    <p>
      “${lost.code}” is no longer in ${lost.definedIn}; ${counted(cells, 'cell')} ${cells === 1 ? 'names' : 'name'} it.
    </p>
    <div class="acts">
      ${to.map((code) =>
        button(`Write “${code}” there`, () => rename(lost, code), {
          kind: 'link',
          label: `Write “${code}” wherever “${lost.code}” stands`,
        }),
      )}
      ${button('Not now', () => offer.decline(lost), { kind: 'link' })}
    </div>
  </div>`;
}

function keyOf({ definedIn, code }: LostCode): string {
  return `${definedIn}\n${fold(code)}`;
}

function has(codes: readonly string[], code: string): boolean {
  return codes.some((one) => fold(one) === fold(code));
}
