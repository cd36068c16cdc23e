import { html, type TemplateResult } from 'lit';
import type { Watched } from './watched';

/** Style, size and foot that the pane shows, each a list, and the pairs of that size. */
export function titleBlock(watched: Watched): TemplateResult {
  const { run, sizeRun, shown, runs } = watched;
  const systems = new Set(run?.sizes.map(({ system }) => system));
  // In a run of one system its name stands once, so that the figures have room.
  const written = (size: number, system: string) => (systems.size > 1 ? `${system} ${size}` : String(size));
  return html`<div class="block" role="group" aria-label="Shown in the pane">
    <label
      ><span>Style</span>
      <select @change=${(event: Event) => watched.show({ style: chosen(event), item: undefined })}>
        ${runs.map(({ style }) => html`<option .selected=${style.code === shown?.style}>${style.code}</option>`)}
      </select></label
    >
    <label
      ><span>Size${systems.size === 1 && sizeRun ? ` ${sizeRun.system}` : ''}</span>
      <select @change=${(event: Event) => watched.show({ size: Number(chosen(event)) })}>
        ${(run?.sizes ?? []).map(
          ({ size, system }) =>
            html`<option value=${size} .selected=${size === shown?.size}>${written(size, system)}</option>`,
        )}
      </select></label
    >
    <label
      ><span>Foot</span>
      <select @change=${(event: Event) => watched.show({ foot: chosen(event) === 'right' ? 'R' : 'L' })}>
        <option .selected=${shown?.foot !== 'R'}>left</option>
        <option .selected=${shown?.foot === 'R'}>right</option>
      </select></label
    >
    <div><span>Pairs</span><b>${sizeRun?.pairs ?? '–'}</b></div>
  </div>`;
}

function chosen(event: Event): string {
  return (event.target as HTMLSelectElement).value;
}
