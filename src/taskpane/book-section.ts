import { html, nothing, type TemplateResult } from 'lit';
import { accountOf, type Booking, type LeftOfSheet } from '../core/plan/booking';
import { cuttingName } from '../core/plan/cutting';
import { LIMIT_ITEMS, USUAL_LIMITS } from '../core/plan/limits';
import { formatName } from '../core/stock/offer';
import { sheetName } from '../drawing/sheet-name';
import { offcutsTable } from '../tables/offcuts';
import { columnsIn } from '../tables/headings';
import type { BookingCutting, BookState } from './booking-cutting';
import { button } from './button';
import type { Watched } from './watched';

/**
 * Books the cutting of the run: what goes off the shelf, what comes back to it and which pairs are cut are shown first.
 * @param write writes what is shown into the workbook
 */
export function bookSection(
  watched: Watched,
  choice: BookingCutting,
  write: () => void,
): TemplateResult | typeof nothing {
  const { standing, tables } = watched;
  if (standing.kind !== 'plan' || !watched.results) return nothing;
  const { plan } = standing;
  const { state } = choice;
  const anew = state.kind !== 'none' && state.plan !== plan;
  return html`<section class="section" aria-labelledby="book">
    <header><h2 id="book">Book the cutting</h2></header>
    ${state.kind === 'failed' && !anew ? html`<p role="alert">It cannot be booked: ${state.why}</p>` : nothing}
    ${state.kind === 'shown' && !anew ? shown(state, choice, write) : nothing}
    ${
      state.kind === 'shown' && !anew
        ? nothing
        : html`<p class="caption">
              ${
                anew
                  ? 'The tables have changed since.'
                  : 'Once all sheets are cut: takes them off the shelf, puts what is left of them into Offcuts and marks the pairs as cut. You see it before it is done.'
              }
            </p>
            ${button('Show what would be booked', () => choice.show(plan, tables), { kind: 'plain' })}`
    }
  </section>`;
}

/** Stands in the place of sheets where all pairs are cut. */
export function allCut({ runs }: Watched): boolean {
  return runs.length > 0 && runs.every(({ toCut }) => toCut === 0);
}

function shown(
  { booking, tables }: BookState & { readonly kind: 'shown' },
  choice: BookingCutting,
  write: () => void,
): TemplateResult {
  const pairs = pairsOf(booking);
  return html`<p role="status">
      <b>${pairs === 1 ? 'One pair is' : `${pairs} pairs are`} cut then.</b> Nothing is booked yet.
    </p>
    ${sheetsTable(booking)} ${areaTable(booking, choice)}
    ${
      booking.used.length > 0
        ? html`<p class="caption">
            Used up, and taken out of Offcuts: ${listed(booking.used.map(({ code }) => code))}.
          </p>`
        : nothing
    }
    ${offcuts(booking, tables, choice)}
    ${
      booking.byHand.length > 0
        ? html`<p class="caption">
            What is left of ${listed(booking.byHand.map(({ code }) => code))} you enter in Offcuts yourself, as
            rectangles that are sound all over: the plan does not know where it lies.
          </p>`
        : nothing
    }
    <p class="acts">
      ${button('Book it', write, { kind: 'go' })}
      ${button('Leave it', () => choice.leave(), { kind: 'link', label: 'Leave the cutting unbooked' })}
    </p>`;
}

export function pairsOf({ rows }: Booking): number {
  return rows.reduce((sum, one) => sum + one.pairs, 0);
}

/** Whole sheets of each offer, before and after. */
function sheetsTable({ sheets }: Booking): TemplateResult {
  return html`<div class="scrolls" tabindex="0" role="group" aria-label="Sheets on hand, table">
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">Stock</th>
            <th scope="col" class="num">On hand</th>
            <th scope="col" class="num">Bought</th>
            <th scope="col" class="num">Cut</th>
            <th scope="col" class="num">On hand then</th>
          </tr>
        </thead>
        <tbody>
          ${sheets.map(
            ({ offer, bought, cut, onHand }) =>
              html`<tr>
                <th scope="row">
                  ${[offer.code, ...(offer.offer === undefined ? [] : [offer.supplier ?? '', formatName(offer)])].filter(Boolean).join(', ')}
                </th>
                <td class="num">${offer.onHand}</td>
                <td class="num">${bought}</td>
                <td class="num">${cut}</td>
                <td class="num">${onHand}</td>
              </tr>`,
          )}
        </tbody>
      </table>
    </div>
    <p class="caption">
      Bought is what Order says to buy: it has come in by then. Whole sheets left of a pack stay on hand.
    </p>`;
}

/** Where the area of the sheets goes, with the offcuts that are ticked. */
function areaTable({ accounts, left }: Booking, choice: BookingCutting): TemplateResult {
  const kept = left.filter((one) => choice.keeps(one));
  return html`<div class="scrolls" tabindex="0" role="group" aria-label="Where the sheets go, table">
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">Stock</th>
            <th scope="col" class="num">Sheets m²</th>
            <th scope="col" class="num">Pieces %</th>
            <th scope="col" class="num">Between %</th>
            <th scope="col" class="num">Offcuts %</th>
            <th scope="col" class="num">Waste %</th>
          </tr>
        </thead>
        <tbody>
          ${accounts.map(({ cutting }) => {
            const own = kept.filter(({ cutting: of }) => of === cutting);
            const { taken, pieces, between, offcuts: area, waste } = accountOf(cutting, own);
            return html`<tr>
              <th scope="row">${cuttingName(cutting)}</th>
              <td class="num">${(taken / 1e6).toFixed(2)}</td>
              ${[pieces, between, area, waste].map((part) => html`<td class="num">${((100 * part) / taken).toFixed(1)}</td>`)}
            </tr>`;
          })}
        </tbody>
      </table>
    </div>
    <p class="caption">Between is the knife room and the gaps between pieces; waste is what is left and not kept.</p>`;
}

/** What is left of sheets, each to be kept or not, and where it is put. */
function offcuts(
  { left }: Booking,
  tables: ReadonlyMap<string, readonly (readonly unknown[])[]>,
  choice: BookingCutting,
): TemplateResult | typeof nothing {
  if (left.length === 0) return html`<p class="caption">Nothing is left that is worth keeping.</p>`;
  const names = new Map(choice.kept.map(({ left: one, code }) => [one, code]));
  const placed = columnsIn(offcutsTable, tables.get(offcutsTable.name)?.[0] ?? []).has('place');
  return html`<fieldset class="choices">
      <legend>Into Offcuts, where it is sound and worth keeping</legend>
      ${left.map((one) => offcut(one, names.get(one), choice))}
    </fieldset>
    ${
      placed
        ? html`<label class="field"
            >Place, where you put them
            <input
              type="text"
              maxlength="60"
              .value=${choice.place}
              @change=${(event: Event) => (choice.place = (event.target as HTMLInputElement).value)}
            />
          </label>`
        : nothing
    }
    <p class="caption">
      Rectangles beside the pieces, at first the largest of each stock; usual from ${USUAL_LIMITS.offcutSide} mm on the
      shorter side. Another least goes into Costs and times: Item ${LIMIT_ITEMS.offcutSide}, Unit limit.
    </p>`;
}

function offcut(one: LeftOfSheet, code: string | undefined, choice: BookingCutting): TemplateResult {
  return html`<label class="tick"
    ><input
      type="checkbox"
      .checked=${choice.keeps(one)}
      @change=${(event: Event) => choice.keep(one, (event.target as HTMLInputElement).checked)}
    />
    ${code ?? `${one.cutting.stock.code}, not kept`}: ${one.length} × ${one.width} mm, of
    ${sheetName(one.cutting, one.from)}</label
  >`;
}

function listed(parts: readonly string[]): string {
  return new Intl.ListFormat('en', { type: 'conjunction' }).format(parts);
}

/** What the maker reads once it is booked. */
export function bookedInWords(pairs: number, undoes: boolean): string {
  return `Booked: ${pairs === 1 ? 'one pair is' : `${pairs} pairs are`} cut. ${undoes ? 'Undo takes all of it back.' : ''}`.trim();
}
