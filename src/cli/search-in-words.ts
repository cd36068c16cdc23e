import { cuttingName } from '../core/plan/cutting';
import type { RunProgress } from '../workers/search-run';
import type { SearchedStock } from './search-workbook';

/** Says how far a search is: a line that writes over itself where that can be seen, else a line a stock. */
export class SearchLine {
  private last = '';

  constructor(
    private readonly say: (text: string) => void,
    private readonly live: boolean,
  ) {}

  tell({ at, number, count, done, found }: RunProgress): void {
    const stock = `Searching ${cuttingName(at)}, ${number} of ${count}`;
    const best = found.find(({ cutting }) => cutting === at)?.progress.sheets ?? at.sheets;
    const now = this.live ? `${stock}: ${Math.round(100 * done)} % done, ${best} of ${at.sheets} sheets` : stock;
    if (now === this.last) return;
    // Blanks take away what is left of a longer line.
    this.say(this.live ? `\r${now.padEnd(this.last.length)}` : `${now}\n`);
    this.last = now;
  }

  end(): void {
    if (this.live && this.last !== '') this.say('\n');
  }
}

/** What a search has come to, a line a stock. */
export function searchInWords(searched: readonly SearchedStock[], stopped: boolean): string {
  const better = searched.filter(({ sheets, before }) => sheets < before);
  const head = stopped ? 'The search was stopped. ' : '';
  if (searched.length === 0) return `${head}Nothing to search: every stock takes the least possible.`;
  if (better.length === 0) return `${head}No layout with fewer sheets was found.`;
  const lines = better.map(
    ({ stock, before, sheets, least }) =>
      `  ${stock}: ${sheets} ${sheets === 1 ? 'sheet' : 'sheets'} instead of ${before}, least possible ${least}`,
  );
  return [`${head}Written to Layouts:`, ...lines].join('\n');
}
