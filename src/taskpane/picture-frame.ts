import { itemAt } from '../core/item-at';
import { html, nothing, type TemplateResult } from 'lit';
import { unsafeHTML } from 'lit/directives/unsafe-html.js';
import { type Picture, PX_PER_U, toSvg } from '../drawing/svg';
import { button } from './button';
import { whatWentWrong } from '../core/what-went-wrong';
import type { Host } from '../host/host';
import type { FilesOut } from './files-out';
import { copyPicture, putPicture, savePicture } from './picture-out';

/** How much larger than the pane a picture may be drawn. */
const STEPS = [1, 1.5, 2, 3, 4, 6, 8] as const;
/** How far the keys move a picture that is larger than its frame, px. */
const PAN = 48;

/** Where pictures can go. */
export interface PictureOut {
  readonly files: FilesOut;
  /** Puts one into the sheet, where the host can. */
  readonly put?: Host['insertPicture'];
}

export interface Framed {
  /** Draws the picture in a width, u. */
  draw(width: number): Picture;
  /** The item that is picked out now. */
  readonly picked?: string | undefined;
  onPick?(id: string): void;
  /** Leads to the cell of the item that is picked. */
  onEnter?(id: string): void;
}

/**
 * A picture with all that can be done with it: drawn larger and moved, copied, saved, read as text. Drawing it larger
 * draws it anew, so that lettering and line widths stay and more labels find room.
 */
export class PictureFrame {
  private step = 0;
  private asText = false;
  private picked: string | undefined;

  /**
   * @param name of the picture, spoken and in the file's name
   * @param changed draws the pane anew, at once
   * @param say tells of something done
   * @param out where it can go
   */
  constructor(
    readonly id: string,
    readonly name: string,
    private readonly changed: () => void,
    private readonly say: (sentence: string) => void,
    private readonly out: PictureOut,
  ) {}

  /** @param width of the frame, px */
  view(framed: Framed, width: number, caption: TemplateResult | typeof nothing = nothing): TemplateResult {
    const zoom = itemAt(STEPS, this.step);
    const picture = framed.draw((width * zoom) / PX_PER_U);
    return html`<header>
        <h2 id=${this.id}>${this.name}</h2>
        ${this.tools(picture)}
      </header>
      <div
        class="picture ${zoom > 1 ? 'larger' : ''}"
        id="${this.id}-picture"
        role="group"
        aria-label="${this.name}, picture"
        aria-describedby="picture-keys"
        tabindex="0"
        @keydown=${(event: KeyboardEvent) => this.key(event, picture, framed)}
        @click=${(event: MouseEvent) => this.click(event, framed)}
        @pointerdown=${(event: PointerEvent) => drag(event)}
      >
        ${unsafeHTML(toSvg(picture))}
      </div>
      ${picture.legend?.length ? html`<p class="caption">${picture.legend.join(' · ')}</p>` : nothing} ${caption}
      ${this.asText ? factsTable(picture, `${this.name}: ${picture.label}`) : nothing}`;
  }

  private tools(picture: Picture): TemplateResult {
    const { name, step, out } = this;
    const tool = (
      words: string,
      act: () => void,
      label: string,
      rest: { disabled?: boolean; expanded?: boolean } = {},
    ) => button(words, act, { kind: 'link', label, ...rest });
    return html`<div class="tools sizes" role="group" aria-label="${name}, tools">
      ${tool('−', () => this.zoom(-1), `${name} smaller`, { disabled: step === 0 })}
      ${tool('+', () => this.zoom(1), `${name} larger`, { disabled: step === STEPS.length - 1 })}
      ${tool('Copy', () => this.copy(picture), `Copy the picture ${name}`)}
      ${out.files.saves === 'never' ? nothing : tool('Save', () => this.save(picture), `Save the picture ${name}`)}
      ${out.put ? tool('Into sheet', () => this.put(picture), `Put the picture ${name} into the sheet`) : nothing}
      ${tool('As text', () => this.toggle(), `${name} as text`, { expanded: this.asText })}
    </div>`;
  }

  private toggle(): void {
    this.asText = !this.asText;
    this.changed();
  }

  /** Draws it a step larger or smaller, what is in the middle of the frame staying there; 0 is as wide as the pane. */
  private zoom(by: -1 | 0 | 1): void {
    const frame = this.frame();
    const middle = frame && [
      (frame.scrollLeft + frame.clientWidth / 2) / frame.scrollWidth,
      (frame.scrollTop + frame.clientHeight / 2) / frame.scrollHeight,
    ];
    this.step = by === 0 ? 0 : Math.min(STEPS.length - 1, Math.max(0, this.step + by));
    this.changed();
    if (frame && middle) {
      frame.scrollLeft = itemAt(middle, 0) * frame.scrollWidth - frame.clientWidth / 2;
      frame.scrollTop = itemAt(middle, 1) * frame.scrollHeight - frame.clientHeight / 2;
    }
    this.say(this.step === 0 ? `${this.name} as wide as the pane.` : `${this.name} ${STEPS[this.step]} times as wide.`);
  }

  private key(event: KeyboardEvent, picture: Picture, framed: Framed): void {
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    const { items = [] } = picture;
    const at = items.findIndex(({ id }) => id === (framed.picked ?? this.picked));
    const arrow = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
    const frame = this.frame();
    if (arrow && event.shiftKey) {
      const along = event.key === 'ArrowRight' || event.key === 'ArrowLeft';
      frame?.scrollBy({ left: along ? arrow * PAN : 0, top: along ? 0 : arrow * PAN });
    } else if (arrow && items.length > 0) {
      const next = items[at < 0 ? (arrow > 0 ? 0 : items.length - 1) : (at + arrow + items.length) % items.length];
      if (next) this.pick(next.id, next.label, framed);
    } else if (event.key === '+' || event.key === '=') this.zoom(1);
    else if (event.key === '-' || event.key === '−') this.zoom(-1);
    else if (event.key === '0') this.zoom(0);
    else if (event.key === 'Enter' && at >= 0) framed.onEnter?.(items[at]?.id ?? '');
    else if (event.key === 'Escape') frame?.closest<HTMLElement>('[role="tabpanel"]')?.focus();
    else return;
    event.preventDefault();
  }

  private pick(id: string, label: string, framed: Framed): void {
    this.picked = id;
    framed.onPick?.(id);
    this.frame()
      ?.querySelector(`[data-item="${CSS.escape(id)}"]`)
      ?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
    this.say(`${label}.`);
  }

  private click(event: MouseEvent, framed: Framed): void {
    const id = (event.target as Element).closest('[data-item]')?.getAttribute('data-item');
    if (!id || !framed.onPick) return;
    this.picked = id;
    framed.onPick(id);
  }

  private frame(): HTMLElement | null {
    return document.getElementById(`${this.id}-picture`);
  }

  private copy(picture: Picture): void {
    const { files, put } = this.out;
    const otherwise = put ? () => putPicture(picture, this.name, put) : () => savePicture(picture, this.name, files);
    copyPicture(picture, this.name, otherwise).then(this.say, (error: unknown) => this.unable('copied', error));
  }

  private save(picture: Picture): void {
    savePicture(picture, this.name, this.out.files).then(this.say, (error: unknown) => this.unable('saved', error));
  }

  private put(picture: Picture): void {
    const { put } = this.out;
    if (!put) return;
    putPicture(picture, this.name, put).then(this.say, (error: unknown) => this.unable('put into the sheet', error));
  }

  private unable(what: string, error: unknown): void {
    this.say(`${this.name} could not be ${what} here. ${whatWentWrong(error)}`);
  }
}

/** What a picture shows, as text. */
function factsTable({ facts }: Picture, title: string): TemplateResult {
  return html`<table class="facts" aria-label=${title}>
    <tbody>
      ${facts.map(
        ([what, value]) =>
          html`<tr>
            <th scope="row">${what}</th>
            <td>${value}</td>
          </tr>`,
      )}
    </tbody>
  </table>`;
}

/** Moves a picture that is larger than its frame along with the pointer; a finger scrolls it without help. */
function drag(event: PointerEvent): void {
  const frame = event.currentTarget as HTMLElement;
  const larger = frame.scrollWidth > frame.clientWidth || frame.scrollHeight > frame.clientHeight;
  if (event.pointerType !== 'mouse' || event.button !== 0 || !larger) return;
  const start = { x: event.clientX + frame.scrollLeft, y: event.clientY + frame.scrollTop };
  const move = ({ clientX, clientY }: PointerEvent) => frame.scrollTo(start.x - clientX, start.y - clientY);
  const end = () => {
    frame.removeEventListener('pointermove', move);
    frame.removeEventListener('pointerup', end);
    frame.removeEventListener('pointercancel', end);
    frame.removeEventListener('pointerleave', end);
  };
  frame.addEventListener('pointermove', move);
  frame.addEventListener('pointerup', end);
  frame.addEventListener('pointercancel', end);
  frame.addEventListener('pointerleave', end);
}
