import { fillOf, fullest } from '../cutting/sheet/fill';
import { derived } from '../derived';
import { commonGround } from './common-ground';
import type { StockCutting } from './cutting';
import { type Chance, searchChances } from './search-chances';

/** Shares of the room on sheets and offcuts, each piece let out by half the knife room. */
export interface Doubt {
  /** How full the others would have to be with one sheet fewer, and how full such layouts come to be. */
  readonly need: number;
  readonly reach: number;
}

export interface WeighedChance extends Chance {
  /** Why it is hardly worth a search: the others would have to be fuller than such layouts come to be. */
  readonly doubt: Doubt | undefined;
}

/** How full layouts of shoe bottoms come to be (measured: `npm run bench -- sheets --evaluations 4`; none of its 43 is fuller). */
const REACH = 0.84;

/** What there is to be saved of a run's stocks, the doubtful behind all that is not and before the hopeless. */
export function weighedChances(stocks: readonly StockCutting[]): readonly WeighedChance[] {
  const chances = searchChances(stocks).map((chance): WeighedChance => ({
    ...chance,
    doubt: chance.hopeless ? undefined : doubtOf(chance.cutting),
  }));
  const rank = ({ hopeless, doubt }: WeighedChance) => (hopeless ? 2 : doubt ? 1 : 0);
  return chances.sort((a, b) => rank(a) - rank(b));
}

/** What a search of the run is for: all that is not hopeless, and what is doubtful only where that is asked for. */
export function worthSearching<T extends WeighedChance>(chances: readonly T[], doubtfulToo: boolean): readonly T[] {
  return chances.filter(({ hopeless, doubt }) => !hopeless && (!doubt || doubtfulToo));
}

const doubts = derived<StockCutting, Doubt | undefined>('doubt of a search');

function doubtOf(cutting: StockCutting): Doubt | undefined {
  return doubts(cutting, [], () => {
    const { pieces, format, layout } = commonGround(cutting);
    const need = fillOf(pieces, format, cutting.sheets - 1);
    if (need <= REACH) return undefined;
    // Pieces that fill a sheet better as they lie, such as rectangles, are no cause for doubt.
    const reach = format.natural ? REACH : Math.max(REACH, fullest(pieces, format, layout));
    return need > reach ? { need, reach } : undefined;
  });
}
