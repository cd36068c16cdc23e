import { html, nothing, type TemplateResult } from 'lit';
import { unsafeHTML } from 'lit/directives/unsafe-html.js';
import type { Bottom } from '../core/bottom/bottom';
import { HEADINGS, type Layer } from '../core/bottom/layer';
import { heelControl } from '../core/plan/checks/heel-control';
import { type Limits, limitsOf } from '../core/plan/limits';
import type { Material } from '../core/stock/stock';
import { buildPicture, partRows, shownPiece, summands } from '../drawing/build-picture';
import { hatch } from '../drawing/hatching';
import { rectangle } from '../drawing/mark';
import { svgOf } from '../drawing/svg';
import { INPUT_TABLES } from '../tables/input-tables';
import type { Figures } from '../tables/figures';
import { PART_WORDS } from '../tables/words';
import { button } from './button';
import type { Lead } from './go-to';
import type { PictureFrame } from './picture-frame';
import type { Watched } from './watched';

/** The build of the style shown: side view, view from above, parts list and the check of the heel height. */
export function buildSection(
  watched: Watched,
  lead: Lead,
  frame: PictureFrame,
  figures: Figures,
  width: number,
): TemplateResult | typeof nothing {
  const { bottom, run, sizeRun, shown, sound } = watched;
  if (!bottom || !run || !sizeRun || !shown || !sound) return nothing;
  const directionOf = (layer: Layer) =>
    sound.input.stock.find(({ code }) => code === layer.stock)?.direction ?? 'any way';
  const piece = shownPiece(bottom, shown.item);
  const picture = frame.view(
    {
      draw: (u) =>
        buildPicture(
          {
            style: run.style,
            size: `${sizeRun.system} ${sizeRun.size}`,
            foot: shown.foot,
            bottom,
            item: shown.item,
            figures,
            directionOf,
          },
          u,
        ),
      picked: String(piece.item),
      onPick: (id) => watched.show({ item: Number(id) }),
      onEnter: () => lead({ table: INPUT_TABLES.styles.name, code: run.style.code, heading: HEADINGS[piece.part] }),
    },
    width,
    unitNote(figures),
  );
  return html`<section class="section" aria-labelledby="build">
    ${picture} ${partsTable(watched, bottom, piece, figures)} ${heelHeld(bottom, limitsOf(sound.input.rates), figures)}
  </section>`;
}

/** The parts of a bottom, like ones in one row, those of the piece shown marked. */
function partsTable(watched: Watched, bottom: Bottom, shown: Layer, figures: Figures): TemplateResult {
  return html`<table class="parts" aria-label="Parts">
      <tbody>
        ${partRows(bottom).map((row) => {
          const { first, last, layer, count, rasped, sum } = row;
          const covers = layer.part === 'cover';
          const unit = figures.unit === 'mm' ? '' : ` ${figures.thicknessUnit(covers)}`;
          const items = first === last ? String(first) : `${first}–${last}`;
          return html`<tr ?data-shown=${shown.item >= first && shown.item <= last && layer.part === shown.part}>
            <td>
              ${button(items, () => watched.show({ item: layer.item }), {
                kind: 'link',
                label: `Show ${PART_WORDS[layer.part]} ${items} from above`,
              })}
            </td>
            <td>${unsafeHTML(swatch(layer.material))}</td>
            <td>
              ${PART_WORDS[layer.part]}${count > 1 ? 's' : ''} from
              ${layer.stock}${layer.part === 'insole' ? ', not counted' : ''}
            </td>
            <td class="num">${count > 1 || rasped ? summands(row, figures) : nothing}</td>
            <td class="num">${figures.thickness(sum, covers)}${unit}</td>
          </tr>`;
        })}
        ${packing(watched, bottom, figures)}
      </tbody>
    </table>
    ${
      bottom.layers.some(({ part }) => part === 'insole')
        ? html`<p class="caption">The insole belongs to the lasted bottom: the heights below begin under it.</p>`
        : nothing
    }`;
}

/** What is laid under the seat, level with a welt that ends there: no piece of sheet, but counted under the seat for the welt. */
function packing({ run }: Watched, { layers }: Bottom, figures: Figures): TemplateResult | typeof nothing {
  const welt = layers.find(({ part }) => part === 'welt');
  if (!welt || run?.style.weltEnds !== 'at the seat') return nothing;
  const unit = figures.unit === 'mm' ? '' : ` ${figures.thicknessUnit()}`;
  return html`<tr>
    <td></td>
    <td></td>
    <td>Packing of the seat, for the welt</td>
    <td></td>
    <td class="num">${figures.thickness(welt.thickness)}${unit}</td>
  </tr>`;
}

/** Whether the bottom holds the last's heel height. */
function heelHeld(bottom: Bottom, limits: Limits, figures: Figures): TemplateResult {
  const { holds } = heelControl(bottom, limits);
  return html`<p class="held">
    <i class=${holds ? 'sign ok' : 'sign bad'} aria-hidden="true"></i>
    <span>
      ${figures.height(bottom.seatStack)} at the back − ${figures.height(bottom.treadStack)} under the tread
      ${holds ? '= last' : 'is not last'} ${figures.height(bottom.last.heelHeight)}
    </span>
    <b>${holds ? 'holds' : 'put right'}</b>
  </p>`;
}

/** Names the units where they are not mm. */
export function unitNote({ unit, sentence }: Figures): TemplateResult | typeof nothing {
  return unit === 'mm' ? nothing : html`<p class="caption">${sentence}.</p>`;
}

/** A small field of a material's hatching, its name beside it. */
function swatch(material: Material): string {
  const field = svgOf([rectangle(0.2, 0.2, 8.6, 3.6, { pen: 'face', fill: hatch(material) })]);
  return `<svg class="draw swatch" viewBox="0 0 9 4" role="img" aria-label="${material}">${field}</svg>`;
}
