import { html, nothing, type TemplateResult } from 'lit';
import { costPicture } from '../drawing/cost-picture';
import { pairsPicture } from '../drawing/pairs-picture';
import { INPUT_TABLES } from '../tables/input-tables';
import { allCut } from './book-section';
import type { Lead } from './go-to';
import type { PictureFrame } from './picture-frame';
import { waiting } from './waiting';
import type { Shown, Watched } from './watched';

/** The whole run: its pairs by size, and what its stock costs by material. */
export function runSection(
  watched: Watched,
  lead: Lead,
  frames: { readonly pairs: PictureFrame; readonly cost: PictureFrame },
  width: number,
): TemplateResult {
  const { runs, shown } = watched;
  if (runs.length === 0 || !shown) return waiting(watched, 'No pairs in this run yet.');
  return html`<section class="section" aria-labelledby="pairs">
      ${pairsBySize(watched, shown, lead, frames.pairs, width)}
    </section>
    ${waiting(watched)} ${costByMaterial(watched, lead, frames.cost, width)}`;
}

function pairsBySize(watched: Watched, shown: Shown, lead: Lead, frame: PictureFrame, width: number): TemplateResult {
  const { runs } = watched;
  const byId = (id: string) =>
    runs
      .flatMap(({ style, sizes }) => sizes.map(({ system, size }) => ({ style: style.code, system, size })))
      .find(({ style, system, size }) => `${style} ${system} ${size}` === id);
  return frame.view(
    {
      draw: (u) => pairsPicture({ runs, shown }, u),
      picked: byIdOf(watched),
      onPick: (id) => {
        const found = byId(id);
        if (found) watched.show({ style: found.style, size: found.size });
      },
      onEnter: (id) => {
        const found = byId(id);
        if (found) lead({ table: INPUT_TABLES.pairage.name, code: found.style, heading: String(found.size) });
      },
    },
    width,
  );
}

/** What is to buy, of the plan before until there is a new one; or why nothing is. */
function costByMaterial(
  watched: Watched,
  lead: Lead,
  frame: PictureFrame,
  width: number,
): TemplateResult | typeof nothing {
  const { results, before, standing, money } = watched;
  const orders = (results ?? before)?.orders ?? [];
  if (orders.length === 0) {
    if (!results && standing.kind !== 'slips') return nothing;
    const why = allCut(watched)
      ? 'All pairs are cut: no stock is to buy.'
      : 'No whole cost yet: the sheet Cost has what can be planned. First put right what Checks names.';
    return html`<section class="section"><p>${why}</p></section>`;
  }
  const shown = watched.cutting?.stock.material;
  const stockOf = (material: string) =>
    orders.find(({ cutting }) => cutting.stock.material === material)?.cutting.stock;
  const picture = frame.view(
    {
      draw: (u) => costPicture({ orders, money, shown }, u),
      picked: shown,
      onPick: (material) => {
        const stock = stockOf(material);
        if (stock) watched.show({ stock: stock.code });
      },
      onEnter: (material) => {
        const stock = stockOf(material);
        if (stock) lead({ table: INPUT_TABLES.stock.name, code: stock.code, heading: 'Price' });
      },
    },
    width,
    html`<p class="caption">Stock to buy, whole sheets and packs; what is on hand costs nothing here.</p>`,
  );
  return html`<section class="section" aria-labelledby="cost">${picture}</section>`;
}

function byIdOf({ sizeRun, shown }: Watched): string | undefined {
  return sizeRun && shown && `${shown.style} ${sizeRun.system} ${sizeRun.size}`;
}
