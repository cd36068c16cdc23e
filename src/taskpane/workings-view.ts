import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { type PlaceWords, Problem } from '../core/problem';
import { whatWentWrong } from '../core/what-went-wrong';
import { cellAddress } from '../tables/cell-address';
import { cellWords, type StandingTable } from '../tables/cell-words';
import type { CellPlace, Host, Selection, Stop } from '../host/host';
import type { Cell } from '../tables/cell';
import { INPUT_TABLES } from '../tables/input-tables';
import { inFigures, measure } from '../workings/in-figures';
import type { At, From, Given, Working } from '../workings/working';
import { working } from '../workings/workings';
import { button } from './button';
import type { DescribedFunction } from './function-list';
import { cellIn } from '../tables/block-cell';
import { type GivenArgument, blockOf, type Call, callIn, Unreadable } from './workings-call';

/** What the view shows. */
type WorkingsShown =
  | { readonly kind: 'nothing'; readonly say: string }
  | { readonly kind: 'failed'; readonly selection: Selection; readonly formula: string; readonly say: string }
  | {
      readonly kind: 'working';
      readonly selection: Selection;
      readonly formula: string;
      readonly call: Call;
      readonly working: Working;
    };

const EMPTY = {
  kind: 'nothing',
  say: 'Select a cell with one of the functions, or any figure of a table that is worked out: here is how it was worked out.',
} as const satisfies WorkingsShown;

const unread = (error: unknown): WorkingsShown => ({
  kind: 'nothing',
  say: `The workbook could not be read: ${whatWentWrong(error)}`,
});

/** A formula longer than this is cut where it is shown. */
const LONGEST_FORMULA = 120;

/**
 * How the selected cell is worked out: the formula in symbols, with its figures, step by step, its source, and the
 * cells that the numbers come from. Follows the selection while it is in the page.
 */
export class WorkingsView extends LitElement {
  static override properties = { host: { attribute: false }, functions: { attribute: false }, shown: { state: true } };
  declare host: Host;
  declare functions: readonly DescribedFunction[];
  declare shown: WorkingsShown;
  private stops: readonly Stop[] = [];
  /** Counts what was begun, so that a late answer does not go over a newer one. */
  private begun = 0;

  constructor() {
    super();
    this.functions = [];
    this.shown = EMPTY;
  }

  /** In the page itself, under its own style sheet. */
  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    const { host } = this;
    const follow = () => this.follow();
    this.stops = [host.onSelection(follow, this.failed), host.onContent(follow, this.failed)];
    this.follow();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    for (const stop of this.stops) stop();
  }

  protected override updated(changed: Map<string, unknown>): void {
    if (changed.has('functions')) this.follow();
  }

  protected override render(): TemplateResult {
    const { shown } = this;
    if (shown.kind === 'nothing') return html`<section class="section"><p>${shown.say}</p></section>`;
    const { selection, formula } = shown;
    const cut = formula.length > LONGEST_FORMULA ? formula.replace(/\(.*$/s, '(…)') : formula;
    return html`<section class="section" aria-labelledby="worked-out">
      <header><h2 id="worked-out">${selection.address} on ${selection.sheet}</h2></header>
      <p class="formula">${cut}</p>
      ${shown.kind === 'failed' ? html`<p>${shown.say}</p>` : this.workings(shown)}
    </section>`;
  }

  private workings({ working: found, call, selection }: Extract<WorkingsShown, { kind: 'working' }>): TemplateResult {
    return html`${call.whole ? nothing : html`<p class="small">Of the formula, the part ${call.name}.</p>`}
      <ol class="workings">
        ${inFigures(found).map(
          ({ what, symbols, numbers, result }) =>
            html`<li>
              <p>${what}</p>
              ${symbols === undefined ? nothing : html`<p class="sum">${symbols}</p>`}
              ${numbers === undefined || numbers === symbols ? nothing : html`<p class="sum">${numbers}</p>`}
              ${result === undefined ? nothing : html`<p class="sum result">${result}</p>`}
            </li>`,
        )}
      </ol>
      ${
        found.given.length === 0
          ? nothing
          : html`<h3>Figures used</h3>
              <ul class="figures-used">
                ${found.given.map((one) => this.given(one, call, selection))}
              </ul>`
      }
      <p class="small">Source: ${found.source}.</p>
      <p class="small">
        <a href="help/${call.name.toLowerCase()}.html" target="_blank" rel="noopener">Worked example of ${call.name}</a>
      </p>`;
  }

  private given(one: Given, call: Call, selection: Selection): TemplateResult {
    const place = one.from && this.placeOf(one.from, call);
    const where =
      place && `${place.sheet === selection.sheet ? '' : `${place.sheet}, `}${cellAddress(place.row, place.column)}`;
    return html`<li>
      <span>${one.symbol ? html`<b>${one.symbol}</b> ` : nothing}${one.meaning}</span>
      <span class="num">${measure(one.value, one.unit)}</span>
      ${
        place
          ? button(where ?? '', () => this.goTo(place), {
              kind: 'link',
              label: `Go to ${where}: ${one.meaning}`,
            })
          : html`<span class="small">${one.from ? 'in the formula' : nothing}</span>`
      }
    </li>`;
  }

  private goTo(place: CellPlace): void {
    this.host.select(place).catch(this.failed);
  }

  /** Where a figure stands in the workbook. */
  private placeOf({ argument, row, column }: From, { name, args }: Call): CellPlace | undefined {
    const at =
      this.functions.find((one) => one.name === name)?.parameters.findIndex((one) => one.name === argument) ?? -1;
    const arg = args[at];
    if (!arg?.place) return undefined;
    const { place } = arg;
    if (row === undefined) return place;
    const table = Object.values(INPUT_TABLES).find((one) => one.argument === argument)?.name ?? argument;
    const cell = cellIn(blockOf(arg), { table, row, heading: column });
    return { sheet: place.sheet, row: place.row + cell.row, column: place.column + cell.column };
  }

  private follow(): void {
    const mine = ++this.begun;
    const show = (shown: WorkingsShown) => {
      if (mine === this.begun && this.isConnected) this.shown = shown;
    };
    this.selected().then(show, (error: unknown) => show(unread(error)));
  }

  private readonly failed = (error: unknown): void => {
    this.shown = unread(error);
  };

  private async selected(): Promise<WorkingsShown> {
    const selection = await this.host.selection();
    return selection ? this.about(selection) : EMPTY;
  }

  private async about(selection: Selection): Promise<WorkingsShown> {
    const { spilledFrom } = selection;
    const formula = selection.formula ?? spilledFrom?.formula;
    if (formula === undefined) return EMPTY;
    const at: At = spilledFrom
      ? { row: selection.row - spilledFrom.row, column: selection.column - spilledFrom.column }
      : { row: 0, column: 0 };
    const failed = (say: string): WorkingsShown => ({ kind: 'failed', selection, formula, say });
    let call: Call | undefined;
    try {
      call = await callIn(formula, selection.sheet, (reference) => this.host.read(reference));
      if (!call)
        return { kind: 'nothing', say: `${selection.address} holds a formula of the spreadsheet’s own. ${EMPTY.say}` };
      const found = working(call.name, this.handedOver(call, at), at);
      if (!found) return failed('A heading or a label. Select a figure of the table to see how it was worked out.');
      return { kind: 'working', selection, formula, call, working: found };
    } catch (error) {
      if (error instanceof Problem) return failed(`Not worked out: ${error.inWords(this.wordsOf(call))}.`);
      if (error instanceof Unreadable) return failed(error.message);
      throw error;
    }
  }

  /** Words for places in the tables that a call was given. */
  private wordsOf(call: Call | undefined): PlaceWords {
    const parameters = this.functions.find(({ name }) => name === call?.name)?.parameters ?? [];
    const standing = parameters.flatMap(({ name: argument }, at): [string, StandingTable][] => {
      const table = Object.values(INPUT_TABLES).find((one) => one.argument === argument)?.name;
      const arg = call?.args[at];
      if (table === undefined || !arg?.place) return [];
      return [[table, { ...arg.place, headings: blockOf(arg)[0] ?? [] }]];
    });
    return cellWords(new Map(standing));
  }

  /** The arguments of one answer: where a range stands for one value, the answers spill and each has a cell of it. */
  private handedOver({ name, args }: Call, { row, column }: At): readonly Cell[] {
    const parameters = this.functions.find((one) => one.name === name)?.parameters ?? [];
    return args.map((arg: GivenArgument, i) => {
      if (!Array.isArray(arg.value) || parameters[i]?.dimensionality === 'matrix' || parameters.length === 0)
        return arg.value;
      const block = blockOf(arg);
      const line = block[block.length === 1 ? 0 : row];
      return line?.[line.length === 1 ? 0 : column] ?? null;
    });
  }
}

customElements.define('solebench-workings', WorkingsView);
