import { html, nothing, render, type TemplateResult } from 'lit';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import { hatchings } from '../drawing/hatching';
import { whatWentWrong } from '../core/what-went-wrong';
import type { Host } from '../host/host';
import type { InputPlace } from '../tables/check-place';
import { figuresOf, UNIT_SYSTEMS, type UnitSystem } from '../tables/figures';
import { withLayout } from '../tables/layout-rows';
import { INPUT_TABLES } from '../tables/plan-input';
import { blank } from '../workbook/blank';
import { demo } from '../workbook/demo';
import { buildSection } from './build-section';
import { button } from './button';
import { cautions } from './cautions';
import { checksSection } from './checks-section';
import { compareSection } from './compare-section';
import { Comparing } from './comparing';
import './components';
import { cuttingSection, SheetChoice } from './cutting-section';
import { type DescribedFunction, functionList } from './function-list';
import { goTo } from './go-to';
import { notice } from './notice';
import { PictureFrame } from './picture-frame';
import { runSection } from './run-section';
import type { StockProgress } from '../workers/search-stock';
import { searchSection } from './search-section';
import { searchBesidePage } from './search-beside-page';
import { type CuttingSearch, Searching } from './searching';
import { begins, startSection } from './start-section';
import { titleBlock } from './title-block';
import { keepUnits, keptUnits } from './units';
import { Watched } from './watched';
import './workings-view';

/** Views of the pane, in their order. */
const VIEWS = ['Build', 'Cutting', 'Run', 'Compare', 'Checks', 'Workings', 'Help'] as const;
type View = (typeof VIEWS)[number];

/** Narrowest and widest drawing, px. */
const DRAWING = { least: 256, most: 720 };
/** A pane up to this wide has narrower margins, px. */
const NARROW = 360;

/** What the page gives to the pane. */
export interface Surroundings {
  /** Where functions.json lies. */
  readonly functionsAddress?: string;
  /** Searches for layouts with fewer sheets. */
  readonly search?: CuttingSearch;
}

/**
 * Puts the pane into an element of the page, beside a workbook.
 * @returns takes the pane away again
 */
export function mountPane(element: HTMLElement, host: Host, surroundings: Surroundings = {}): () => void {
  const { functionsAddress = 'functions.json', search = searchBesidePage } = surroundings;
  const watched = new Watched(host);
  let view: View = 'Build';
  let query = '';
  let functions: readonly DescribedFunction[] = [];
  let said = '';
  let drawn = 0;
  let units = keptUnits();
  let cautious = false;

  const draw = () => render(page(), element);
  const say = (sentence: string) => {
    said = sentence;
    draw();
  };
  const refused = (error: unknown) => say(whatWentWrong(error));
  const attempt = (work: () => Promise<unknown>, done: string): void => {
    work()
      .then((held) => say(held === false ? '' : done))
      .catch(refused);
  };
  const lead = (place: InputPlace): void => {
    goTo(host, place)
      .then((found) => found || say(`The workbook has no table ${place.table}.`))
      .catch(refused);
  };
  const frame = (id: string, name: string) => new PictureFrame(id, name, draw, say);
  const frames = {
    build: frame('build', 'Build'),
    sheet: frame('sheet-shown', 'Sheet'),
    pairs: frame('pairs', 'Pairs by size'),
    cost: frame('cost', 'Cost by material'),
  };
  const sheetChoice = new SheetChoice(draw);
  const comparing = new Comparing(draw);
  const searching = new Searching(search, draw);

  const page = (): TemplateResult =>
    html`<svg class="draw hatchings" aria-hidden="true">
        <defs>${unsafeSVG(hatchings())}</defs>
      </svg>
      <p class="unseen" id="picture-keys">
        Arrow keys go from part to part, Enter goes to its cell, plus and minus draw the picture larger and smaller, 0
        as wide as the pane, Shift with arrow keys moves it, Escape leaves it.
      </p>
      <p class="unseen" role="status">${shownInWords(watched)}</p>
      ${titleBlock(watched)} ${tabs()} ${notice(watched, lead, () => go('Checks'))}
      <div class="view" role="tabpanel" id="view" aria-labelledby="tab-${view}" tabindex="0">${content()}</div>
      ${cautious ? cautions() : nothing}
      <p class="said small" role="status">${said}</p>
      <footer class="foot">
        ${button('Cautions', () => showCautions(!cautious), { kind: 'link', expanded: cautious })}
        <label class="units"
          ><span class="unseen">Units</span>
          <select @change=${(event: Event) => choose((event.target as HTMLSelectElement).value)}>
            ${UNIT_SYSTEMS.map(
              (one) =>
                html`<option value=${one} .selected=${one === units}>
                  ${one === 'metric' ? 'mm, g' : 'inches, irons'}
                </option>`,
            )}
          </select>
        </label>
        <span>Nothing leaves this machine.</span>
      </footer>`;

  const showCautions = (open: boolean) => {
    cautious = open;
    draw();
    if (open) element.querySelector<HTMLElement>('.cautions')?.focus();
  };

  const choose = (chosen: string) => {
    units = UNIT_SYSTEMS.find((one): one is UnitSystem => one === chosen) ?? 'metric';
    keepUnits(units);
    say(`${figuresOf(units).sentence}.`);
  };

  const turnTo = (next: View) => {
    [view, said] = [next, ''];
    draw();
  };
  const go = (next: View) => {
    turnTo(next);
    element.querySelector<HTMLElement>(`#tab-${next}`)?.focus();
  };

  const tabs = () =>
    html`<fluent-tablist
      class="views"
      role="tablist"
      aria-label="Views"
      activeid="tab-${view}"
      @change=${(event: Event) => {
        const id = (event.target as HTMLElement & { activeid?: string }).activeid;
        const next = VIEWS.find((one) => `tab-${one}` === id);
        if (next && next !== view) turnTo(next);
      }}
    >
      ${VIEWS.map((one) => html`<fluent-tab role="tab" slot="tab" id="tab-${one}">${one}</fluent-tab>`)}
    </fluent-tablist>`;

  const content = (): TemplateResult | typeof nothing => {
    const width = Math.min(DRAWING.most, Math.max(DRAWING.least, drawn - (drawn <= NARROW ? 24 : 32)));
    const figures = figuresOf(units);
    if (watched.standing.kind === 'empty' && view !== 'Help' && view !== 'Workings')
      return startSection(watched, lead, load);
    switch (view) {
      case 'Build':
        return html`${begins(watched) ? startSection(watched, lead, load) : nothing}
        ${buildSection(watched, lead, frames.build, figures, width)}
        ${begins(watched) ? nothing : startSection(watched, lead, load)}`;
      case 'Cutting':
        return cuttingSection(watched, lead, frames.sheet, sheetChoice, figures, width, (cutting) =>
          searchSection(cutting, searching, writeLayout, undoes),
        );
      case 'Run':
        return runSection(watched, lead, frames, width);
      case 'Compare':
        return compareSection(watched, lead, comparing, figures);
      case 'Checks':
        return checksSection(watched, lead, figures);
      case 'Workings':
        return html`<solebench-workings .host=${host} .functions=${functions}></solebench-workings>`;
      case 'Help':
        return help();
    }
  };

  const help = () =>
    functionList({
      functions,
      query,
      onQuery: (next) => {
        query = next;
        draw();
      },
      onInsert: (formula) =>
        attempt(
          () => host.insertFormula(formula),
          'The formula is in the selected cell; fill in what is left blank in it.',
        ),
    });

  const undoes = host.name === 'grid';
  const writeLayout = ({ stock, layouts }: StockProgress) =>
    attempt(async () => {
      const { name } = INPUT_TABLES.layouts;
      const table = (await host.tables()).get(name);
      if (!table) throw new Error(`The workbook has no table ${name}; load the tables again to have it.`);
      await host.writeTable(name, withLayout(table, stock, layouts));
      searching.wrote();
    }, `The layout of ${stock} is in Layouts.`);

  const load = (what: 'demo' | 'blank') =>
    attempt(
      () => {
        say('Putting the sheets into the workbook.');
        return host.load(what === 'demo' ? demo : blank);
      },
      [
        what === 'demo' ? 'The demo is in the workbook.' : 'Blank tables are in the workbook.',
        undoes ? 'Undo brings back what was there.' : 'Your own sheets are as they were.',
      ].join(' '),
    );

  watched.onChange(draw);
  const size = new ResizeObserver(() => {
    // Without its scroll bar, for which room is kept.
    const width = element.querySelector('.view')?.clientWidth ?? 0;
    if (width === drawn) return;
    drawn = width;
    draw();
  });
  size.observe(element);
  fetch(functionsAddress)
    .then((response) => response.json() as Promise<{ functions: readonly DescribedFunction[] }>)
    .then((read) => {
      functions = read.functions;
      draw();
    })
    .catch(() => say('The list of functions did not load; load the page again.'));
  element.classList.add('has-pane');
  draw();
  return () => {
    size.disconnect();
    watched.stop();
    render(nothing, element);
  };
}

/** What the pane shows, spoken whenever a selected cell brings in something else: "Sorrel, EU 38, left". */
function shownInWords({ shown, sizeRun }: Watched): string {
  if (!shown || !sizeRun) return '';
  return `${shown.style}, ${sizeRun.system} ${shown.size}, ${shown.foot === 'L' ? 'left' : 'right'}`;
}
