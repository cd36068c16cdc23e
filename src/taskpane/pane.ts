import { html, nothing, render, type TemplateResult } from 'lit';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import { hatchings } from '../drawing/hatching';
import { whatWentWrong } from '../core/what-went-wrong';
import type { StockCutting } from '../core/plan/cutting';
import type { FurtherPair } from '../core/plan/fill-up';
import type { Host } from '../host/host';
import { runNameIn } from '../host/run-name';
import { writeLayouts } from '../host/write-layouts';
import type { BlockCell } from '../tables/block-cell';
import type { Cells } from '../tables/cell';
import { counted } from '../tables/counted';
import type { InputPlace } from '../tables/check-place';
import { figuresOf, type UnitSystem } from '../tables/figures';
import type { LostCode } from '../tables/named-codes';
import { pairageTable } from '../tables/pairage';
import { sameInputs } from '../tables/plan-cells';
import type { SizeColumns } from '../tables/sizes-of-lasts';
import { blank } from '../workbook/blank';
import type { Tried } from '../tables/what-if/steps';
import type { TriedCell } from '../tables/what-if/tried-cell';
import { whatIfSheet } from '../workbook/what-if-sheet';
import type { WorkbookPlan } from '../workbook/workbook';
import { BenchCalendar } from './bench-calendar';
import { benchDaysSection } from './bench-days-section';
import { benchSection } from './bench-section';
import { allCut, bookedInWords, bookSection, pairsOf } from './book-section';
import { BookingCutting } from './booking-cutting';
import { buyBesidePage, type Purchase } from './buy-beside-page';
import { buySection } from './buy-section';
import { type Bought, boughtLayouts, Buying } from './buying';
import { buildSection } from './build-section';
import { cautions } from './cautions';
import { checksSection } from './checks-section';
import { compareSection } from './compare-section';
import { Comparing } from './comparing';
import './components';
import { cuttingSection, SheetChoice } from './cutting-section';
import { BROWSER, type FilesOut } from './files-out';
import { fillSection, named } from './fill-section';
import { FillingSheets } from './filling-sheets';
import { foot } from './foot';
import { type DescribedFunction, functionList } from './function-list';
import { goTo } from './go-to';
import { goToCost } from './go-to-cost';
import { headingNote } from './heading-note';
import { makeOrBuySection } from './make-or-buy-section';
import { notice } from './notice';
import { PaperMaking } from './paper-making';
import { paperSection } from './paper-section';
import { PictureFrame } from './picture-frame';
import { RenameOffer, renameOffer } from './rename-offer';
import { carriedInWords, carryThrough } from './renaming';
import { runSection } from './run-section';
import type { StockFound } from '../workers/search-run';
import type { StockProgress } from '../workers/search-stock';
import { runSearchSection } from './run-search-section';
import { RunSearching } from './run-searching';
import { searchSection } from './search-section';
import { searchBesidePage } from './search-beside-page';
import { type CuttingSearch, Searching } from './searching';
import { SizeChoice, sizesSection } from './sizes-section';
import { begins, startSection } from './start-section';
import { putSumsBack } from './sums-back';
import { titleBlock } from './title-block';
import { keepUnits, keptUnits } from './units';
import { tabs, type View } from './views';
import { WhatIf } from './what-if';
import { whatIfSection } from './what-if-section';
import { waiting } from './waiting';
import { Watched } from './watched';
import './workings-view';

export { planAhead } from './plan-ahead';

/** Narrowest and widest drawing, px. */
const DRAWING = { least: 256, most: 720 };
/** A pane up to this wide has narrower margins, px. */
const NARROW = 360;

/** Views that have nothing to show before a style can be built. */
const SHOWN_OF_RUNS: ReadonlySet<View> = new Set(['Build', 'Cutting', 'Run', 'Buy', 'Compare', 'Paper']);

/** What the page gives to the pane. */
export interface Surroundings {
  /** Where functions.json lies. */
  readonly functionsAddress?: string;
  /** Searches for layouts with fewer sheets. */
  readonly search?: CuttingSearch;
  /** Works out what to buy. */
  readonly purchase?: Purchase;
  /**
   * Begins another run from a plan, beside the one in the workbook; where it is missing, the plan goes into the workbook.
   * @returns whether it is there: false where the maker would rather not
   */
  readonly begin?: (plan: WorkbookPlan) => Promise<boolean>;
  /** How files get out. */
  readonly files?: FilesOut;
}

/**
 * Puts the pane into an element of the page, beside a workbook.
 * @returns takes the pane away again
 */
export function mountPane(element: HTMLElement, host: Host, surroundings: Surroundings = {}): () => void {
  const pane = new Pane(element, host, surroundings);
  const size = new ResizeObserver(() => pane.fit());
  size.observe(element);
  fetch(surroundings.functionsAddress ?? 'functions.json')
    .then((response) => response.json() as Promise<{ functions: readonly DescribedFunction[] }>)
    .then(({ functions }) => pane.knows(functions))
    .catch(() => pane.say('The list of functions did not load; load the page again.'));
  element.classList.add('has-pane');
  pane.draw();
  return () => {
    size.disconnect();
    pane.end();
  };
}

/** The pane: what is shown of the workbook, view by view. */
class Pane {
  private readonly watched: Watched;
  private view: View = 'Build';
  private query = '';
  private functions: readonly DescribedFunction[] = [];
  private said = '';
  /** The tables before what was done last, and whether they have been seen to say something else since. */
  private done: { readonly before: ReadonlyMap<string, Cells>; seen: boolean } | undefined;
  /** Width of the view, px. */
  private drawn = 0;
  private units = keptUnits();
  private cautious = false;
  private readonly frames: Readonly<Record<'build' | 'sheet' | 'pairs' | 'cost' | 'whatIf', PictureFrame>>;
  private readonly sheetChoice: SheetChoice;
  private readonly sizeChoice: SizeChoice;
  private readonly comparing: Comparing;
  private readonly calendar: BenchCalendar;
  private readonly whatIf: WhatIf;
  private readonly paper: PaperMaking;
  private readonly searching: Searching;
  private readonly buying: Buying;
  private readonly booking: BookingCutting;
  private readonly filling: FillingSheets;
  private readonly renamed: RenameOffer;
  private readonly begin: Surroundings['begin'];
  private readonly runSearching: RunSearching;

  constructor(
    private readonly element: HTMLElement,
    private readonly host: Host,
    { search = searchBesidePage, purchase = buyBesidePage, files = BROWSER, begin }: Surroundings,
  ) {
    this.begin = begin;
    this.watched = new Watched(host);
    this.watched.onChange(() => {
      this.noticeUndo();
      this.renamed.follow(this.watched.tables);
      this.whatIf.look(host).catch(this.refused);
      this.nameRun();
      this.draw();
    });
    const out = { files, put: host.insertPicture };
    const frame = (id: string, name: string) => new PictureFrame(id, name, this.draw, this.say, out);
    this.frames = {
      build: frame('build', 'Build'),
      sheet: frame('sheet-shown', 'Sheet'),
      pairs: frame('pairs', 'Pairs by size'),
      cost: frame('cost', 'Cost by material'),
      whatIf: frame('what-if-curve', 'Sheets and cost'),
    };
    this.renamed = new RenameOffer(this.draw);
    this.sheetChoice = new SheetChoice(this.draw);
    this.sizeChoice = new SizeChoice(this.draw);
    this.comparing = new Comparing(this.draw);
    this.calendar = new BenchCalendar(this.draw);
    this.whatIf = new WhatIf(this.draw);
    this.paper = new PaperMaking(this.draw, this.say, files);
    this.searching = new Searching(search, this.draw);
    this.buying = new Buying(purchase, this.draw);
    this.runSearching = new RunSearching(search, this.draw);
    this.booking = new BookingCutting(this.draw);
    this.filling = new FillingSheets(this.draw);
  }

  readonly draw = (): void => {
    render(this.page(), this.element);
  };

  readonly say = (sentence: string): void => {
    this.said = sentence;
    this.draw();
  };

  /** Takes over the functions' descriptions. */
  knows(functions: readonly DescribedFunction[]): void {
    this.functions = functions;
    this.draw();
  }

  /** Draws as wide as the pane is now. */
  fit(): void {
    // Without its scroll bar, for which room is kept.
    const width = this.element.querySelector('.view')?.clientWidth ?? 0;
    if (width === this.drawn) return;
    this.drawn = width;
    this.draw();
  }

  end(): void {
    this.watched.stop();
    render(nothing, this.element);
  }

  private page(): TemplateResult {
    const { watched, view, cautious } = this;
    return html`<svg class="draw hatchings" aria-hidden="true">
        <defs>${unsafeSVG(hatchings())}</defs>
      </svg>
      <p class="unseen" id="picture-keys">
        Arrow keys go from part to part, Enter goes to its cell, plus and minus draw the picture larger and smaller, 0
        as wide as the pane, Shift with arrow keys moves it, Escape leaves it.
      </p>
      <p class="unseen" role="status">${shownInWords(watched)}</p>
      ${titleBlock(watched)} ${tabs(view, (next) => this.turnTo(next))}
      ${notice(watched, this.lead, () => this.go('Checks'))}
      <div class="view" role="tabpanel" id="view" aria-labelledby="tab-${view}" tabindex="0">${this.content()}</div>
      ${cautious ? cautions() : nothing} ${headingNote(watched)}
      ${view === 'Checks' ? nothing : renameOffer(this.renamed, watched.tables, (lost, to) => this.rename(lost, to))}
      <p class="said small" role="status">${this.said}</p>
      ${foot({
        cautious,
        units: this.units,
        onCautions: () => this.showCautions(!cautious),
        onUnits: (units) => this.showUnits(units),
      })}`;
  }

  private content(): TemplateResult | typeof nothing {
    const { watched, view, lead, frames, drawn } = this;
    const width = Math.min(DRAWING.most, Math.max(DRAWING.least, drawn - (drawn <= NARROW ? 24 : 32)));
    const figures = figuresOf(this.units);
    const toSizes = this.host.insertColumns ? () => this.toSizes() : undefined;
    const start = () => startSection(watched, lead, (what) => this.load(what), toSizes);
    const empty = watched.standing.kind === 'empty';
    if (empty && view !== 'Help' && view !== 'Workings') return watched.working ? waiting(watched) : start();
    // Nothing can be shown of what has just been begun, but what is next.
    if (watched.runs.length === 0 && SHOWN_OF_RUNS.has(view) && !watched.working && begins(watched)) {
      return view === 'Run' ? html`${start()} ${this.sizes()}` : start();
    }
    switch (view) {
      case 'Build':
        return html`${begins(watched) ? start() : nothing} ${buildSection(watched, lead, frames.build, figures, width)}
        ${benchSection(watched, figures)} ${begins(watched) ? nothing : start()}`;
      case 'Cutting':
        return allCut(watched)
          ? waiting(watched, 'All pairs of this run are cut, as Cut in Pairage says; nothing is left to lay.')
          : html`${cuttingSection(watched, lead, frames.sheet, this.sheetChoice, figures, width, (cutting, stocks) =>
              this.searches(cutting, stocks),
            )}
            ${bookSection(watched, this.booking, () => this.book())}`;
      case 'Run':
        return html`${runSection(watched, lead, frames, width)} ${benchDaysSection(watched, this.calendar, lead)}
        ${this.sizes()}`;
      case 'Buy':
        return html`${makeOrBuySection(watched, this.toCost)}
        ${buySection(watched, this.buying, (bought) => this.writeBought(bought), this.undoes)}
        ${fillSection(watched, this.filling, (pair) => this.addPair(pair), this.undoes)}`;
      case 'Compare':
        return html`${compareSection(watched, lead, this.comparing, figures)}
        ${whatIfSection(watched, this.whatIf, frames.whatIf, width, (cell, tried) => this.writeTried(cell, tried))}`;
      case 'Checks':
        return checksSection(
          watched,
          lead,
          figures,
          (lost, to) => this.rename(lost, to),
          (table, missing) => this.putSumsBack(table, missing),
        );
      case 'Paper':
        return paperSection(watched, this.paper);
      case 'Workings':
        return html`<solebench-workings .host=${this.host} .functions=${this.functions}></solebench-workings>`;
      case 'Help':
        return this.help();
    }
  }

  private sizes(): TemplateResult | typeof nothing {
    const { watched, sizeChoice, host } = this;
    return host.insertColumns ? sizesSection(watched, sizeChoice, (columns) => this.insertSizes(columns)) : nothing;
  }

  /** Shows where columns for sizes are made. */
  private toSizes(): void {
    this.sizeChoice.open = true;
    this.turnTo('Run');
    requestAnimationFrame(() => document.getElementById('size-columns')?.focus());
  }

  /** The search of one stock and that of the run; while one goes on the other waits. */
  private searches(cutting: StockCutting, stocks: readonly StockCutting[]): TemplateResult {
    const { searching, runSearching, undoes, watched } = this;
    const one = runSearching.running
      ? nothing
      : searchSection(cutting, stocks, searching, (found) => this.writeLayout(found), undoes);
    if (searching.state.kind === 'running') return html`${one}`;
    const write = (found: readonly StockFound[]) => this.writeLayouts(found);
    const { effort } = searching;
    return html`${one}
    ${runSearchSection({ stocks, searching: runSearching, effort, money: watched.money, write, undoes })}`;
  }

  private help(): TemplateResult {
    return functionList({
      functions: this.functions,
      query: this.query,
      onColumn: this.lead,
      onQuery: (next) => {
        this.query = next;
        this.draw();
      },
      onInsert: (formula) =>
        this.attempt(
          () => this.host.insertFormula(formula),
          'The formula is in the selected cell; fill in what is left blank in it.',
        ),
    });
  }

  private turnTo(next: View): void {
    [this.view, this.said] = [next, ''];
    this.nameRun();
    this.draw();
  }

  /** Documents are called by the run's own name. */
  private nameRun(): void {
    if (this.view === 'Paper')
      runNameIn(this.host)
        .then((name) => this.paper.named(name))
        .catch(this.refused);
  }

  private go(next: View): void {
    this.turnTo(next);
    this.element.querySelector<HTMLElement>(`#tab-${next}`)?.focus();
  }

  private showCautions(open: boolean): void {
    this.cautious = open;
    this.draw();
    if (open) this.element.querySelector<HTMLElement>('.cautions')?.focus();
  }

  private showUnits(units: UnitSystem): void {
    this.units = units;
    keepUnits(units);
    this.say(`${figuresOf(units).sentence}.`);
  }

  private readonly lead = (place: InputPlace): void => {
    goTo(this.host, place)
      .then((found) => found || this.say(`The workbook has no table ${place.table}.`))
      .catch(this.refused);
  };

  private readonly toCost = (style: string): void => {
    goToCost(this.host, style)
      .then((found) => found || this.say(`${style} has no row in a sheet Cost of this workbook.`))
      .catch(this.refused);
  };

  /** Does something to the workbook and says so; nothing where the maker would rather not, and why where it fails. */
  private attempt(work: () => Promise<unknown>, done: string): void {
    const before = this.watched.tables;
    work()
      .then((held) => {
        this.say(held === false ? '' : done);
        // The workbook may have told of it before this does.
        this.done = { before, seen: !sameInputs(this.watched.tables, before) };
      })
      .catch(this.refused);
  }

  /** What was done and is said to be done is undone once the tables say again what they said before. */
  private noticeUndo(): void {
    const { done, watched } = this;
    if (!done || watched.tables === done.before) return;
    if (!sameInputs(watched.tables, done.before)) done.seen = true;
    else if (done.seen) {
      [this.done, this.said] = [undefined, ''];
      for (const search of [this.searching, this.runSearching, this.buying]) search.takenBack();
    }
  }

  private readonly refused = (error: unknown): void => this.say(whatWentWrong(error));

  private get undoes(): boolean {
    return this.host.name === 'grid';
  }

  private writeLayout(progress: StockProgress): void {
    this.write([progress], () => this.searching.wrote(), `The layout of ${progress.stock} is in Layouts.`);
  }

  private writeLayouts(found: readonly StockFound[]): void {
    const all = found.map(({ progress }) => progress);
    this.write(all, () => this.runSearching.wrote(), 'The layouts are in Layouts.');
  }

  /** Writes layouts in one step, so that one undo takes them back. */
  private write(found: readonly StockProgress[], wrote: () => void, done: string): void {
    const work = async () => {
      await writeLayouts(this.host, found);
      wrote();
    };
    this.attempt(work, done);
  }

  /** Layouts of stocks on sheets of all their formats. */
  private writeBought(bought: readonly Bought[]): void {
    const work = async () => {
      await writeLayouts(this.host, boughtLayouts(bought));
      this.buying.wrote();
    };
    this.attempt(work, 'The layouts are in Layouts, and the order follows them.');
  }

  private book(): void {
    const { booking, host } = this;
    const pairs = booking.state.kind === 'shown' ? pairsOf(booking.state.booking) : 0;
    this.attempt(() => booking.write(host), bookedInWords(pairs, this.undoes));
  }

  private insertSizes({ added, headed }: SizeColumns): void {
    const work = async () => this.host.insertColumns?.(pairageTable.name, added, headed);
    const more = counted(added.length, 'column');
    const done = headed.length > 0 ? 'Pairage has these sizes' : `Pairage has ${more} more`;
    this.attempt(work, `${done}. Undo takes it back.`);
  }

  private addPair(pair: FurtherPair): void {
    this.attempt(() => this.filling.add(pair, this.host), `${named(pair)} has a pair more in Pairage.`);
  }

  /** What was tried, as a sheet of its own. */
  private writeTried(cell: TriedCell, tried: readonly Tried[]): void {
    this.host
      .addSheet(whatIfSheet(cell, tried, this.watched.money))
      .then((name) => this.whatIf.wrote(name))
      .catch(this.refused);
  }

  private rename(lost: LostCode, to: string): void {
    carryThrough(this.host, lost, to)
      .then((count) => this.say(carriedInWords(lost, to, count, this.undoes)))
      .catch(this.refused);
  }

  private putSumsBack(table: string, missing: readonly BlockCell[]): void {
    this.attempt(() => putSumsBack(this.host, table, missing), 'The sums are back.');
  }

  private load(what: 'demo' | 'blank'): void {
    const { begin } = this;
    if (begin) return this.attempt(async () => begin(await planOf(what)), '');
    const done = what === 'demo' ? 'The demo is in the workbook.' : 'Blank tables are in the workbook.';
    const before = this.undoes ? 'Undo brings back what was there.' : 'Your own sheets are as they were.';
    this.say('Putting the sheets into the workbook.');
    this.attempt(async () => this.host.load(await planOf(what)), `${done} ${before}`);
  }
}

/** The demo loads when it is asked for: most who open the pane have a run of their own. */
async function planOf(what: 'demo' | 'blank'): Promise<WorkbookPlan> {
  return what === 'blank' ? blank : (await import(/* webpackChunkName: "demo" */ '../workbook/demo')).demo;
}

/** What the pane shows, spoken whenever a selected cell brings in something else: "Betony, EU 38, left". */
function shownInWords({ shown, sizeRun }: Watched): string {
  if (!shown || !sizeRun) return '';
  return `${shown.style}, ${sizeRun.system} ${shown.size}, ${shown.foot === 'L' ? 'left' : 'right'}`;
}
