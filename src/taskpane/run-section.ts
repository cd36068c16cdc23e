import { html, type TemplateResult } from 'lit';
import { costPicture } from '../drawing/cost-picture';
import { pairsPicture } from '../drawing/pairs-picture';
import { INPUT_TABLES } from '../tables/input-tables';
import { allCut } from './book-section';
import type { Lead } from './go-to';
import type { PictureFrame } from './picture-frame';
import { waiting } from './waiting';
import type { Watched } from './watched';

/** The whole run: its pairs by size, and what its stock costs by material. */
export function runSection(
  watched: Watched,
  lead: Lead,
  frames: { readonly pairs: PictureFrame; readonly cost: PictureFrame },
  width: number,
): TemplateResult {
  const { runs, shown, money } = watched;
  if (runs.length === 0 || !shown) {
    const slips = watched.standing.kind === 'slips';
    return waiting(
      watched,
      slips ? 'Nothing can be planned yet: first put right what Checks names.' : 'No pairs in this run yet.',
    );
  }
  const results = watched.results ?? watched.before;
  const byId = (id: string) =>
    runs
      .flatMap(({ style, sizes }) => sizes.map(({ system, size }) => ({ style: style.code, system, size })))
      .find(({ style, system, size }) => `${style} ${system} ${size}` === id);
  const pairs = frames.pairs.view(
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
  const orders = results?.orders ?? [];
  const stock = watched.cutting?.stock.material;
  return html`<section class="section" aria-labelledby="pairs">${pairs}</section>
    ${waiting(watched)}
    ${
      orders.length > 0
        ? html`<section class="section" aria-labelledby="cost">
            ${frames.cost.view(
              {
                draw: (u) => costPicture({ orders, money, shown: stock }, u),
                picked: stock,
                onPick: (material) => {
                  const found = orders.find(({ cutting }) => cutting.stock.material === material);
                  if (found) watched.show({ stock: found.cutting.stock.code });
                },
                onEnter: (material) => {
                  const found = orders.find(({ cutting }) => cutting.stock.material === material);
                  if (found) {
                    lead({
                      table: INPUT_TABLES.stock.name,
                      code: found.cutting.stock.code,
                      heading: 'Price',
                    });
                  }
                },
              },
              width,
              html`<p class="caption">Stock to buy, whole sheets and packs; what is on hand costs nothing here.</p>`,
            )}
          </section>`
        : watched.standing.kind === 'slips' || watched.results
          ? html`<section class="section">
              <p>
                ${allCut(watched) ? 'All pairs are cut: no stock is to buy.' : 'No cost yet: first put right what Checks names.'}
              </p>
            </section>`
          : ''
    }`;
}

function byIdOf({ sizeRun, shown }: Watched): string | undefined {
  return sizeRun && shown && `${shown.style} ${sizeRun.system} ${sizeRun.size}`;
}
