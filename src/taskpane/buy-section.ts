import { fixed } from '../tables/figures';
import { html, nothing, type TemplateResult } from 'lit';
import { formatName } from '../core/stock/offer';
import { gapOf } from '../tables/purchases';
import { button } from './button';
import { type Bought, type Buying, type BuyState, cheaper } from './buying';
import { waiting } from './waiting';
import type { Watched } from './watched';

/**
 * What to buy of which offer at least cost: beside it the least that is proven, the gap, and what the plan's sheets cost.
 * @param write puts the layouts into the workbook, so that the order follows
 * @param undoes whether the workbook's undo takes back what is written
 */
export function buySection(
  watched: Watched,
  buying: Buying,
  write: (bought: readonly Bought[]) => void,
  undoes: boolean,
): TemplateResult {
  const { standing } = watched;
  if (standing.kind !== 'plan' || !watched.results) return waiting(watched, 'Nothing to buy for yet.');
  const { plan } = standing;
  const { state } = buying;
  return html`<section class="section" aria-labelledby="buy">
    <header><h2 id="buy">What to buy</h2></header>
    <p class="caption">
      Formats and numbers at least cost: the row in Bottom stock and the rows in Offers, what is on the shelf, packs and
      least quantities. Sheets are laid by the quick rows and chosen together; on request the search lays them denser,
      on several formats at once.
    </p>
    <label class="field"
      >Spoiled and cut again, %
      <input
        type="number"
        min="0"
        max="50"
        step="0.5"
        .value=${String(buying.spoiled)}
        @change=${(event: Event) => buying.spoil(Number((event.target as HTMLInputElement).value))}
      />
    </label>
    <label class="tick"
      ><input
        type="checkbox"
        .checked=${buying.searches}
        @change=${(event: Event) => buying.search((event.target as HTMLInputElement).checked)}
      />
      Search for denser layouts besides; it takes minutes</label
    >
    ${state.kind === 'running' ? running(buying, state.at, state.of) : nothing}
    ${state.kind === 'failed' ? html`<p role="alert">It ended without an answer: ${state.why}.</p>` : nothing}
    ${state.kind === 'found' ? answer(state, buying.isFor(plan), watched.money, write, undoes) : nothing}
    ${
      state.kind === 'running'
        ? nothing
        : button(state.kind === 'found' ? 'Work it out anew' : 'Work out what to buy', () => buying.start(plan), {
            kind: state.kind === 'found' ? 'plain' : 'go',
          })
    }
  </section>`;
}

function running(buying: Buying, at: number, of: number): TemplateResult {
  return html`<p role="status">Stock ${Math.min(of, at + 1)} of ${of}.</p>
    <fluent-progress-bar
      role="progressbar"
      aria-label="What to buy"
      aria-valuenow=${at}
      aria-valuemax=${of}
      max=${of}
      value=${at}
    ></fluent-progress-bar>
    ${button('Stop', () => buying.stop(), { kind: 'link', label: 'Stop working out what to buy' })}`;
}

/** What was worked out, as long as it is of the tables as they are, or was written into them. */
function answer(
  state: BuyState & { readonly kind: 'found' },
  current: boolean,
  money: string,
  write: (bought: readonly Bought[]) => void,
  undoes: boolean,
): TemplateResult {
  const { bought, written } = state;
  if (!current && !written) {
    return html`<p role="status">The tables have changed since it was worked out; work it out anew.</p>`;
  }
  return html`${current ? nothing : html`<p class="caption">As it was worked out, of the tables before:</p>`}
  ${found(bought, current ? 'Now' : 'Till then', money)} ${next(state, write, undoes)}`;
}

/** @param before what is said of the sheets of the plan that it was worked out for */
function found(bought: readonly Bought[], before: 'Now' | 'Till then', money: string): TemplateResult {
  const sum = (of: (one: Bought) => number) => bought.reduce((all, one) => all + of(one), 0);
  const whole = { cost: sum(({ answer }) => answer.cost), least: sum(({ answer }) => answer.least) };
  const plain = sum((one) => one.plain);
  return html`<p role="status">
      <b>To pay ${paid(whole.cost, money)}.</b> ${before} ${paid(plain, money)}; proven least
      ${paid(whole.least, money)}, gap ${gapOf(whole).toFixed(1)} %.
    </p>
    ${whys(bought).map((sentence) => html`<p>${sentence}</p>`)}
    <div class="scrolls" tabindex="0" role="group" aria-label="What to buy, table">
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">Stock</th>
            <th scope="col">Offer</th>
            <th scope="col" class="num">Cut</th>
            <th scope="col" class="num">Buy</th>
            <th scope="col" class="num">To pay</th>
            <th scope="col" class="num">Least</th>
            <th scope="col" class="num">Gap %</th>
            <th scope="col" class="num">${before}</th>
          </tr>
        </thead>
        <tbody>
          ${bought.flatMap(({ lines }) =>
            lines.map(
              ({ stock, offer, need, buy, sheetPrice, whole: all }) =>
                html`<tr>
                  <th scope="row">${stock.code}</th>
                  <td>${[offer.supplier, formatName(offer)].filter(Boolean).join(', ')}</td>
                  <td class="num">${need}</td>
                  <td class="num">${buy}</td>
                  <td class="num">${fixed(buy * (sheetPrice ?? 0), 2)}</td>
                  <td class="num">${all && fixed(all.least, 2)}</td>
                  <td class="num">${all && gapOf(all).toFixed(1)}</td>
                  <td class="num">${all && fixed(all.plain, 2)}</td>
                </tr>`,
            ),
          )}
        </tbody>
      </table>
    </div>`;
}

/** Why some stocks are bought as the quick rows take them. */
function whys(bought: readonly Bought[]): readonly string[] {
  const reasons = new Set(bought.flatMap(({ answer: { why } }) => why ?? []));
  return [...reasons].map((why) => {
    const own = bought.filter(({ answer }) => answer.why === why).map(({ wanted }) => wanted.stock.code);
    return `These are the quick rows${own.length === bought.length ? '' : ` for ${own.join(', ')}`}: ${why}.`;
  });
}

function next(
  { bought, written }: { readonly bought: readonly Bought[]; readonly written: boolean },
  write: (bought: readonly Bought[]) => void,
  undoes: boolean,
): TemplateResult {
  if (written) {
    return html`<p role="status">
      <i class="sign ok" aria-hidden="true"></i> The layouts are in Layouts, and the order follows them.
      ${undoes ? 'Undo takes them out again.' : 'Empty their rows to have the quick rows again.'}
    </p>`;
  }
  const better = cheaper(bought);
  if (better.length === 0) return html`<p class="caption">The plan’s own sheets cost no more.</p>`;
  return html`<p class="acts">${button('Write the layouts', () => write(better), { kind: 'go' })}</p>`;
}

function paid(value: number, money: string): string {
  return [fixed(value, 2), money].filter(Boolean).join(' ');
}
