import { whatWentWrong } from '../core/what-went-wrong';
import type { InParts, PaperJob, TicketsFor } from '../drawing/paper/chosen';
import { DOCUMENT_NAMES, type DocumentName, WORKSHEET } from '../drawing/paper/document-names';
import type { Cells } from '../tables/cell';
import { INPUT_TABLES } from '../tables/input-tables';
import { gridFault, type LabelGrid, usualGrid } from '../drawing/paper/label-grid';
import { dateInWords } from '../drawing/paper/orders';
import { type Page, type PaperFormat, paperOf, PAPERS } from '../drawing/paper/page';
import { BROWSER, type FilesOut, handOver, handOverOnly, nameOfFile, whereItWent } from './files-out';

/** Where the making of a document stands. */
export type MakingState =
  | { readonly kind: 'none' }
  | { readonly kind: 'running'; readonly what: string; readonly done: number; readonly of: number | undefined }
  /** Pages to be looked at; with an address once they are a file. */
  | {
      readonly kind: 'made';
      readonly pages: readonly Page[];
      readonly file?: { readonly name: string; readonly address: string; readonly lacking: readonly string[] };
    }
  | { readonly kind: 'failed'; readonly why: string };

/** Longer than this without a pause, and typing would feel it, ms. */
const BREATH = 12;
/** How far it is is shown so often, ms: to draw the pane anew takes longer than most pages. */
const SHOWN_EVERY = 200;
/** Pages are counted so long after a choice, ms. */
const SOON = 300;
/** The tables that plan functions take, in their order. */
const PLAN_TABLES = Object.values(INPUT_TABLES).map(({ name }) => name);
/** Thrown out of the work when it is stopped. */
class Stopped extends Error {}

/** What is chosen for paper, and the document being made of it. */
export class PaperMaking {
  state: MakingState = { kind: 'none' };
  readonly documents = new Set<string>(['templates']);
  /** Codes and sizes that are chosen; undefined is all. */
  styles: ReadonlySet<string> | undefined;
  sizes: ReadonlySet<number> | undefined;
  stocks: ReadonlySet<string> | undefined;
  paper = 'A4';
  /** Name of the run as the maker gives it for paper; undefined is its own. */
  given: string | undefined;
  date = dateInWords(new Date());
  prices = true;
  labels: LabelGrid | undefined;
  /** The page that is looked at, from 0. */
  page = 0;
  tickets: TicketsFor = 'size';
  private own: string | undefined;
  private turn = 0;
  /** The pages of a choice, once they are counted. */
  private counted: { readonly of: string; readonly plan: PaperJob['plan']; pages?: readonly Page[] } | undefined;

  get run(): string {
    return this.given ?? this.own ?? 'Run';
  }

  /** Takes over the run's own name. */
  named(own: string | undefined): void {
    if (own === this.own) return;
    this.own = own;
    // Pages that are shown have the name before on them.
    if (this.given === undefined && this.state.kind === 'made') this.put({ kind: 'none' });
    else this.changed();
  }

  get kinds(): readonly DocumentName[] {
    return [...DOCUMENT_NAMES, WORKSHEET];
  }

  /** The workbook's tables by name. */
  tables: ReadonlyMap<string, Cells> = new Map();

  constructor(
    private readonly changed: () => void,
    private readonly say: (sentence: string) => void,
    readonly files: FilesOut = BROWSER,
  ) {}

  /** Takes over a choice; what was made of the one before is put away. */
  choose(change: () => void): void {
    change();
    this.page = 0;
    this.stop();
    this.put({ kind: 'none' });
  }

  /** Tells of something done. */
  told(sentence: string): void {
    this.say(sentence);
  }

  look(page: number): void {
    this.page = page;
    this.changed();
  }

  get format(): PaperFormat | undefined {
    return paperOf(this.paper);
  }

  get grid(): LabelGrid {
    return this.labels ?? usualGrid(this.format ?? PAPERS.A4);
  }

  /** What keeps a document from being made, in a sentence. */
  get fault(): string | undefined {
    if (!this.format) return 'Give the paper as A4, A3, Letter or its width × height in mm, such as 300 × 400.';
    const labels = this.documents.has('labels') || this.documents.has('pairs');
    if (labels) return gridFault(this.grid, this.format);
    return this.documents.size === 0 ? 'Choose a document.' : undefined;
  }

  job(plan: PaperJob['plan'], money: string): PaperJob {
    const list = <T>(set: ReadonlySet<T> | undefined) => set && [...set];
    return {
      plan,
      money,
      paper: this.format ?? PAPERS.A4,
      run: this.run,
      date: this.date,
      styles: list(this.styles),
      sizes: list(this.sizes),
      stocks: list(this.stocks),
      prices: this.prices,
      tickets: this.tickets,
      labels: this.labels,
    };
  }

  stop(): void {
    this.turn++;
  }

  /** How many pages the choice comes to; undefined until they are counted, which begins by itself. */
  count(job: PaperJob): number | undefined {
    const { state, fault } = this;
    if (state.kind === 'made') return state.pages.length;
    if (fault !== undefined || state.kind === 'running') return undefined;
    const known = this.knownPages(job);
    if (known) return known.length;
    const { plan, ...choice } = job;
    const of = JSON.stringify([choice, [...this.documents]]);
    if (this.counted?.of === of && this.counted.plan === plan) return undefined;
    const counting = { of, plan };
    this.counted = counting;
    // What is ticked one after the other is counted once. What cannot be counted says why when it is made.
    setTimeout(() => {
      this.countPages(job, counting).catch(() => undefined);
    }, SOON);
    return undefined;
  }

  private async countPages(job: PaperJob, counting: NonNullable<PaperMaking['counted']>): Promise<void> {
    let since = performance.now();
    counting.pages = await this.pages(job, async () => {
      if (performance.now() - since > BREATH) {
        await new Promise((resolve) => setTimeout(resolve));
        since = performance.now();
      }
      if (this.counted !== counting) throw new Stopped();
    });
    this.changed();
  }

  private knownPages({ plan, ...choice }: PaperJob): readonly Page[] | undefined {
    const { counted } = this;
    const same = counted?.plan === plan && counted.of === JSON.stringify([choice, [...this.documents]]);
    return same ? counted.pages : undefined;
  }

  /** Makes the pages, to be looked at. */
  show(job: PaperJob): void {
    this.work(async (breathe) => {
      this.put({ kind: 'made', pages: this.knownPages(job) ?? (await this.pages(job, breathe)) });
      this.look(0);
    });
  }

  /** Makes one PDF of all that is chosen, and saves it where that may be. */
  save(job: PaperJob): void {
    const known = this.state.kind === 'made' ? this.state.pages : this.knownPages(job);
    this.work(async (breathe) => {
      const pages = known ?? (await this.pages(job, breathe));
      if (pages.length === 0) {
        this.put({ kind: 'made', pages });
        return;
      }
      const { pdfOf } = await import(/* webpackChunkName: "paper" */ './paper-files');
      const names = this.kinds.filter(({ id }) => this.documents.has(id)).map(({ name }) => name.toLowerCase());
      const title = `${job.run}, ${names.join(', ')}`;
      const { bytes, lacking } = await pdfOf(pages, title, new Date(), async (done) =>
        breathe({ kind: 'running', what: 'writing the PDF', done, of: pages.length }),
      );
      const name = nameOfFile(`${title}.pdf`);
      const address = handOver(bytes, 'application/pdf', name);
      this.put({ kind: 'made', pages, file: { name, address, lacking } });
      this.say(`${pages.length === 1 ? 'One page' : `${pages.length} pages`}. ${whereItWent(name, this.files)}`);
    });
  }

  /** Pieces and layouts as SVG and DXF in one archive. */
  saveDrawings(job: PaperJob): void {
    const before = this.state;
    this.work(async (breathe) => {
      const { drawingsOf } = await import(/* webpackChunkName: "paper" */ './paper-files');
      let done = 0;
      const bytes = await drawingsOf(job, (what) => breathe({ kind: 'running', what, done: ++done, of: undefined }));
      const name = nameOfFile(`${job.run}, drawings.zip`);
      handOverOnly(bytes, 'application/zip', name);
      this.put(before.kind === 'made' ? before : { kind: 'none' });
      this.say(`${done} drawings, each in SVG and DXF. ${whereItWent(name, this.files)}`);
    });
  }

  /** Saves some text as a file. */
  saveText(text: string, type: string, name: string): void {
    const file = nameOfFile(name);
    handOverOnly(text, type, file);
    this.say(whereItWent(file, this.files));
  }

  private async pages(job: PaperJob, breathe: Breathe): Promise<readonly Page[]> {
    const { documentKinds } = await import(/* webpackChunkName: "documents" */ './document-pages');
    const kinds = documentKinds(PLAN_TABLES.map((name) => this.tables.get(name) ?? null));
    const pages: Page[] = [];
    for (const { pages: make, name } of kinds.filter(({ id }) => this.documents.has(id))) {
      const parts: InParts<readonly Page[]> = make(job);
      for (let part = parts.next(), n = 1; ; part = parts.next(), n++) {
        if (part.done) {
          pages.push(...part.value);
          break;
        }
        await breathe({ kind: 'running', what: `${name}: ${part.value}`, done: n, of: undefined });
      }
    }
    return pages;
  }

  /** Works with pauses, in which it is shown how far it is and can be stopped. */
  private work(work: (breathe: Breathe) => Promise<void>): void {
    this.workedOut(work).catch((error: unknown) => this.say(whatWentWrong(error)));
  }

  private async workedOut(work: (breathe: Breathe) => Promise<void>): Promise<void> {
    const turn = ++this.turn;
    let since = performance.now();
    let shown = since;
    this.put({ kind: 'running', what: 'beginning', done: 0, of: undefined });
    try {
      await work(async (state) => {
        if (performance.now() - since > BREATH) {
          if (performance.now() - shown > SHOWN_EVERY) {
            this.put(state);
            shown = performance.now();
          }
          await new Promise((resolve) => setTimeout(resolve));
          since = performance.now();
        }
        if (turn !== this.turn) throw new Stopped();
      });
    } catch (error) {
      if (turn === this.turn) this.put({ kind: 'failed', why: whatWentWrong(error) });
      else if (!(error instanceof Stopped)) throw error;
    }
  }

  private put(state: MakingState): void {
    const old = this.state.kind === 'made' ? this.state.file : undefined;
    const kept = state.kind === 'made' ? state.file : undefined;
    if (old && old !== kept) URL.revokeObjectURL(old.address);
    this.state = state;
    this.changed();
  }
}

type Breathe = (state: MakingState & { readonly kind: 'running' }) => Promise<void>;
