import { html, nothing, type TemplateResult } from 'lit';
import { laidSheets, type NamedSheet } from '../core/cutting/sheet/layout';
import { itemAt } from '../core/item-at';
import { cuttingName, type StockCutting } from '../core/plan/cutting';
import type { PieceLine } from '../core/plan/pieces';
import { sheetNumber } from '../drawing/sheet-name';
import { lineOf } from '../drawing/line-of-piece';
import { sheetPicture } from '../drawing/sheet-picture';
import type { Figures } from '../tables/figures';
import { decimals } from '../tables/figures';
import { INPUT_TABLES } from '../tables/input-tables';
import { usableInWords } from '../tables/usable-in-words';
import { unitNote } from './build-section';
import { button } from './button';
import type { Lead } from './go-to';
import type { PictureFrame } from './picture-frame';
import { waiting } from './waiting';
import type { Shown, Watched } from './watched';

/** Which sheet or offcut of the stock shown is drawn, and which of its pieces is picked out. */
export class SheetChoice {
  private stock = '';
  private at = 0;
  private piece: string | undefined;

  constructor(private readonly changed: () => void) {}

  /** Counted from 0 among those that are cut; another stock begins with its first. */
  sheet(cutting: StockCutting, count: number): number {
    const name = cuttingName(cutting);
    if (name !== this.stock) [this.stock, this.at, this.piece] = [name, 0, undefined];
    return Math.max(0, Math.min(this.at, count - 1));
  }

  get picked(): string | undefined {
    return this.piece;
  }

  go(sheet: number): void {
    [this.at, this.piece] = [sheet, undefined];
    this.changed();
  }

  pick(piece: string): void {
    this.piece = piece;
    this.changed();
  }
}

/**
 * How the pieces of a stock lie on its sheets, one sheet at a time, and all stocks in a table.
 * @param search stands below the sheet, for the stock shown and for all
 */
export function cuttingSection(
  watched: Watched,
  lead: Lead,
  frame: PictureFrame,
  choice: SheetChoice,
  figures: Figures,
  width: number,
  search: (cutting: StockCutting, stocks: readonly StockCutting[]) => TemplateResult,
): TemplateResult {
  const { cutting, shown } = watched;
  const results = watched.results ?? watched.before;
  if (!cutting || !results || !shown) return waiting(watched, 'No sheets to cut yet.');
  const sheets = laidSheets(cutting.layout, cutting.format);
  const at = choice.sheet(cutting, sheets.length);
  const sheet = itemAt(sheets, at);
  const toPairage = (id: string) => {
    const placement = sheet.placements[Number(id)];
    const line = placement && lineOf(cutting, placement.piece)?.line;
    if (!line) return;
    lead({ table: INPUT_TABLES.pairage.name, code: line.run.style.code, heading: String(line.sizeRun.size) });
  };
  const picture = frame.view(
    {
      draw: (u) => sheetPicture({ cutting, sheet, shown, picked: choice.picked, figures }, u),
      picked: choice.picked,
      onPick: (id) => choice.pick(id),
      onEnter: toPairage,
    },
    width,
    html`${unitNote(figures)}${layoutDropped(cutting, lead)}${usable(cutting, sheet, figures)}${useInWords(cutting)}${piecesHere(cutting, sheet, shown)}`,
  );
  return html`${waiting(watched)}
    <section class="section" aria-labelledby="sheet-shown">
      <div class="row">
        <label class="field grow"
          >Stock
          <select @change=${(event: Event) => watched.show({ stock: (event.target as HTMLSelectElement).value })}>
            ${results.cuttings.map(
              (one) =>
                html`<option value=${cuttingName(one)} .selected=${one === cutting}>${cuttingName(one)}</option>`,
            )}
          </select>
        </label>
        <div class="pages" role="group" aria-label="Sheet">
          ${button('Previous', () => choice.go(at - 1), { label: 'Previous sheet', disabled: at === 0 })}
          <span>${sheetNumber(cutting, sheet.name)}</span>
          ${button('Next', () => choice.go(at + 1), { label: 'Next sheet', disabled: at + 1 >= sheets.length })}
        </div>
      </div>
      ${picture}
    </section>
    ${search(cutting, results.cuttings)} ${allStock(watched, cutting, results.cuttings)}`;
}

/** That what a search wrote down for a stock is not used, and why: nobody looks for it among the checks. */
function layoutDropped({ ignored, stock }: StockCutting, lead: Lead): TemplateResult | typeof nothing {
  if (ignored === undefined) return nothing;
  const { layouts } = INPUT_TABLES;
  return html`<p class="caption" role="status">
    The layout written in
    ${button(layouts.name, () => lead({ table: layouts.name, code: stock.code, heading: layouts.columns.stock.heading }), { kind: 'link' })}
    is not used: ${ignored}. Quick rows lie here instead; search again below.
  </p>`;
}

/** Why a sheet is drawn smaller than it is bought. */
function usable(cutting: StockCutting, { name }: NamedSheet, figures: Figures): TemplateResult | typeof nothing {
  const unit = figures.unit === 'mm' ? ' mm' : '';
  const said = usableInWords(cutting, (sides) => sides.map((side) => figures.length(side)).join(' × ') + unit);
  return said === undefined || 'offcut' in name ? nothing : html`<p class="caption">${said}</p>`;
}

/** How well a stock is used, and what laid its pieces. */
function useInWords(cutting: StockCutting): TemplateResult {
  return html`<p class="caption">
    ${percent(cutting.areaUse)} area use over ${amount(cutting)}; of the same area ${percent(cutting.lostBetween)} is
    lost between the pieces, ${percent(cutting.lostOutside)} outside of them. Least possible ${cutting.least}, laid by
    ${cutting.source === 'rows' ? 'quick rows' : 'the search'}.
  </p>`;
}

/** How many pieces of the style and size shown lie on a sheet. */
function piecesHere(cutting: StockCutting, sheet: NamedSheet, shown: Shown): TemplateResult {
  const isShown = ({ run, sizeRun }: PieceLine) => run.style.code === shown.style && sizeRun.size === shown.size;
  const here = sheet.placements.filter(({ piece }) => {
    const line = lineOf(cutting, piece)?.line;
    return line !== undefined && isShown(line);
  }).length;
  const wanted = cutting.lines.filter(isShown).reduce((sum, { count }) => sum + count, 0);
  const said =
    wanted > 0
      ? `${shown.style}, ${shown.size}: ${here} of its ${wanted} pieces here.`
      : `${shown.style} in ${shown.size} takes nothing from this stock.`;
  return html`<p class="caption">${said}</p>`;
}

/** All stocks in a table, the one shown marked. */
function allStock(watched: Watched, shown: StockCutting, cuttings: readonly StockCutting[]): TemplateResult {
  return html`<section class="section" aria-labelledby="stocks">
    <header><h2 id="stocks">All stock</h2></header>
    <div class="scrolls" tabindex="0" role="group" aria-label="All stock, table">
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">Stock</th>
            <th scope="col" class="num">Pieces</th>
            <th scope="col" class="num">Sheets</th>
            <th scope="col" class="num">Least</th>
            <th scope="col" class="num">Use %</th>
          </tr>
        </thead>
        <tbody>
          ${cuttings.map(
            (one) =>
              html`<tr ?data-shown=${one === shown}>
                <th scope="row">
                  ${button(cuttingName(one), () => watched.show({ stock: cuttingName(one) }), {
                    kind: 'link',
                    label: `Show the sheets of ${cuttingName(one)}`,
                  })}
                </th>
                <td class="num">${one.count}</td>
                <td class="num">${one.sheets}</td>
                <td class="num">${one.least}</td>
                <td class="num">${(100 * one.areaUse).toFixed(1)}</td>
              </tr>`,
          )}
        </tbody>
      </table>
    </div>
  </section>`;
}

/** What the pieces are cut from: "2 sheets and the offcut Rack 3". */
function amount({ sheets, offcuts }: StockCutting): string {
  const parts = [
    ...(sheets > 0 || offcuts.length === 0 ? [sheets === 1 ? 'one sheet' : `${sheets} sheets`] : []),
    ...(offcuts.length > 0
      ? [`the offcut${offcuts.length > 1 ? 's' : ''} ${listed(offcuts.map(({ code }) => code))}`]
      : []),
  ];
  return listed(parts);
}

function listed(parts: readonly string[]): string {
  return new Intl.ListFormat('en', { type: 'conjunction' }).format(parts);
}

function percent(share: number): string {
  return `${decimals(100 * share, 1)} %`;
}
