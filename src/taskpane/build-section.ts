import { html, nothing, type TemplateResult } from 'lit';
import { unsafeHTML } from 'lit/directives/unsafe-html.js';
import type { Layer } from '../core/build/layer';
import type { Material } from '../core/build/stock';
import { buildPicture, partRows } from '../drawing/build-picture';
import { hatch } from '../drawing/hatching';
import { PX_PER_U, tenth, toSvg } from '../drawing/svg';
import { PART_WORDS } from '../tables/words';
import type { Watched } from './watched';

/** The build of the style shown: side view, view from above, parts list and the check of the heel height. */
export function buildSection(watched: Watched, width: number): TemplateResult | typeof nothing {
  const { bottom, run, sizeRun, shown, standing } = watched;
  if (!bottom || !run || !sizeRun || !shown || standing.kind !== 'plan') return nothing;
  const lies = (layer: Layer) => standing.plan.input.stock.find(({ code }) => code === layer.stock)?.lies ?? 'any way';
  const picture = buildPicture(
    {
      style: run.style,
      size: `${sizeRun.system} ${sizeRun.size}`,
      foot: shown.foot,
      bottom,
      item: shown.item,
      lies,
    },
    width / PX_PER_U,
  );
  const difference = bottom.seatStack - bottom.treadStack;
  const held = Math.abs(difference - bottom.last.heelHeight) <= 1;
  return html`<section class="section" aria-labelledby="build">
    <header><h2 id="build">Build</h2></header>
    <div class="picture">${unsafeHTML(toSvg(picture))}</div>
    <table class="parts" aria-label="Parts">
      <tbody>
        ${partRows(bottom).map(
          ({ first, last, layer, count, sum }) =>
            html`<tr ?data-shown=${layer.item === shown.item}>
              <td>
                <button
                  type="button"
                  class="item"
                  aria-label="Show ${PART_WORDS[layer.part]} ${layer.item} from above"
                  @click=${() => watched.show({ item: layer.item })}
                >
                  ${first === last ? first : `${first}–${last}`}
                </button>
              </td>
              <td>${unsafeHTML(swatch(layer.material))}</td>
              <td>${PART_WORDS[layer.part]}${count > 1 ? 's' : ''}, ${layer.stock}</td>
              <td class="num">${count > 1 ? `${count} × ${tenth(layer.thickness)}` : nothing}</td>
              <td class="num">${tenth(sum)}</td>
            </tr>`,
        )}
      </tbody>
    </table>
    <p class="held">
      <i class=${held ? 'sign ok' : 'sign bad'} aria-hidden="true"></i>
      ${tenth(bottom.seatStack)} under the seat − ${tenth(bottom.treadStack)} under the tread
      ${held ? '= last' : 'is not last'} ${tenth(bottom.last.heelHeight)}
      <b>${held ? 'holds' : 'mend'}</b>
    </p>
  </section>`;
}

/** A small field of a material's hatching, its name beside it. */
function swatch(material: Material): string {
  return `<svg class="draw swatch" viewBox="0 0 9 4" role="img" aria-label="${material}"><rect class="fl" x="0.2" y="0.2" width="8.6" height="3.6"${hatch(material)}/></svg>`;
}
