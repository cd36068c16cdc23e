import { html, nothing, render, type TemplateResult } from 'lit';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import { hatchings } from '../drawing/hatching';
import type { Host } from '../host/host';
import { blank } from '../workbook/blank';
import { demo } from '../workbook/demo';
import { buildSection } from './build-section';
import { cautions } from './cautions';
import { type DescribedFunction, functionList } from './function-list';
import { notice } from './notice';
import { titleBlock } from './title-block';
import { Watched } from './watched';

/** Views of the pane, in their order. */
const VIEWS = ['Pictures', 'Help', 'Cautions'] as const;
type View = (typeof VIEWS)[number];

/** Narrowest and widest drawing, px. */
const DRAWING = { least: 288, most: 560 };

/**
 * Puts the pane into an element of the page, beside a workbook.
 * @param functionsAddress where functions.json lies
 * @returns takes the pane away again
 */
export function mountPane(element: HTMLElement, host: Host, functionsAddress = 'functions.json'): () => void {
  const watched = new Watched(host);
  let view: View = 'Pictures';
  let query = '';
  let functions: readonly DescribedFunction[] = [];
  let said = '';
  let drawn = 0;

  const draw = () => render(page(), element);
  const say = (sentence: string) => {
    said = sentence;
    draw();
  };
  const attempt = async (work: () => Promise<unknown>, done: string) => {
    try {
      if ((await work()) !== false) say(done);
    } catch (error) {
      say(error instanceof Error ? error.message : String(error));
    }
  };

  const page = (): TemplateResult =>
    html`<svg class="draw hatchings" aria-hidden="true">
        <defs>${unsafeSVG(hatchings())}</defs>
      </svg>
      ${titleBlock(watched)} ${tabs()} ${notice(watched, host)}
      <div class="view" role="tabpanel" id="view" aria-labelledby="tab-${view}" tabindex="0">${content()}</div>
      <p class="said small" role="status">${said}</p>
      <footer class="foot">
        <button type="button" class="link" @click=${() => go('Cautions')}>Cautions</button>
        <span>Nothing leaves this machine.</span>
      </footer>`;

  const go = (next: View) => {
    view = next;
    draw();
    element.querySelector<HTMLElement>(`#tab-${next}`)?.focus();
  };

  const tabs = () =>
    html`<div class="views" role="tablist" aria-label="Views" @keydown=${byArrows}>
      ${VIEWS.map(
        (one) =>
          html`<button
            type="button"
            role="tab"
            id="tab-${one}"
            aria-controls="view"
            aria-selected=${one === view}
            tabindex=${one === view ? 0 : -1}
            @click=${() => go(one)}
          >
            ${one}
          </button>`,
      )}
    </div>`;

  const byArrows = (event: KeyboardEvent) => {
    const step = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
    if (!step) return;
    event.preventDefault();
    go(VIEWS[(VIEWS.indexOf(view) + step + VIEWS.length) % VIEWS.length] as View);
  };

  const content = () => {
    if (view === 'Cautions') return cautions();
    if (view === 'Help') {
      return functionList({
        functions,
        query,
        onQuery: (next) => {
          query = next;
          draw();
        },
        onInsert: (formula) =>
          void attempt(
            () => host.insertFormula(formula),
            'The formula stands in the selected cell; fill in what is left blank in it.',
          ),
      });
    }
    return pictures();
  };

  const pictures = () => {
    const width = Math.min(DRAWING.most, Math.max(DRAWING.least, drawn - 32));
    const build = buildSection(watched, width);
    const empty = watched.standing.kind === 'empty' || (watched.runs.length === 0 && watched.problems.length === 0);
    return html`${empty ? start('No run in this workbook yet.') : build}
    ${empty ? nothing : html`<section class="section">${startButtons()}</section>`}`;
  };

  const start = (sentence: string) =>
    html`<section class="section empty">
      <p>${sentence}</p>
      <p class="small">
        The demo fills the tables with an invented run. Blank tables have headings, drop-downs and one example of each.
      </p>
      ${startButtons()}
    </section>`;

  const startButtons = () =>
    html`<p class="acts">
      <button type="button" class="go" @click=${() => load('demo')}>Load the demo run</button>
      <button type="button" class="link" @click=${() => load('blank')}>Blank tables</button>
    </p>`;

  const load = (what: 'demo' | 'blank') =>
    attempt(
      () => host.load(what === 'demo' ? demo : blank),
      [
        what === 'demo' ? 'The demo stands in the workbook.' : 'Blank tables stand in the workbook.',
        host.name === 'grid' ? 'Undo brings back what was there.' : 'Your own sheets are as they were.',
      ].join(' '),
    );

  watched.onChange(draw);
  const size = new ResizeObserver(([entry]) => {
    const width = Math.round(entry?.contentRect.width ?? 0);
    if (width === drawn) return;
    drawn = width;
    draw();
  });
  size.observe(element);
  void fetch(functionsAddress)
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
