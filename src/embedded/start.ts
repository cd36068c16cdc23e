import { ICommandService, type Injector } from '@univerjs/core';
import { ILayoutService } from '@univerjs/ui';
import { GridHost } from '../host/grid/grid-host';
import { ask } from '../taskpane/ask';
import { followTheme } from '../taskpane/theme';
import { demo } from '../workbook/demo';
import type { WorkbookPlan } from '../workbook/workbook';
import { moveByKeys } from './cells-by-keys';
import { pasteUnstyled } from './clipboard';
import { bindFunctions } from './custom-functions/bind';
import type { Metadata } from './custom-functions/metadata';
import type { StandIn } from './custom-functions/stand-in';
import { holdDrawing } from './drawing-held';
import { enterPage } from './enter-page';
import { showErrorsOnHover } from './error-on-hover';
import { goToWhatIsTyped, selectOnClick } from './go-to-typed';
import { mendSemantics } from './grid-semantics';
import { keepAndTell, type RunNews } from './keep-and-tell';
import { enterChooses, enterClosesNames, enterFirst, goRound, undoBeside } from './keys';
import { showNotice, tellFault } from './notices';
import { offerFiles } from './offer-files';
import { element } from './part-of-page';
import { Doorway } from './runs/doorway';
import { offerRuns } from './runs/offer-runs';
import { markOpened } from './runs/opening-mark';
import { RunsHere } from './runs/runs-here';
import { enterTabs, TABS, tabsLeaveFocus, turnSheetsByKeys } from './sheets-by-keys';
import { speakSelection } from './spoken-selection';
import { createSpreadsheet, type Spreadsheet } from './spreadsheet';
import { markTabs } from './tab-marks';
import { offerTableView } from './table-view';
import { tellWhyInCells } from './why-in-cells';

/** Stands before the name of each custom function, as the manifest has it for the office suite. */
const namespace = 'SOLEBENCH';

/** What is at work in the page. */
export interface Page {
  readonly host: GridHost;
  readonly spreadsheet: Spreadsheet;
}

/**
 * Puts the page together and opens the run that its address names, else that of the last visit.
 * @param plan what it opens where there is none
 */
export async function start(plan: WorkbookPlan = demo): Promise<Page> {
  // Loads while the sheet is being laid out and worked out.
  const pane = import(/* webpackChunkName: "pane" */ '../taskpane/pane').catch(() => undefined);
  const doorway = new Doorway(element('stage'), element('progress'));
  let heard: RunNews = { moved: () => undefined, lost: () => undefined };
  const entering = enterPage(plan, doorway, { moved: (to) => heard.moved(to), lost: () => heard.lost() });
  const [metadata, entry] = await Promise.all([readMetadata(), entering]);
  stage('Laying out the sheet');
  const { associated } = (globalThis as unknown as { CustomFunctions: StandIn }).CustomFunctions;
  const spreadsheet = createSpreadsheet('grid', entry.workbook, tellFault, entry.fresh);
  const { injector } = spreadsheet;
  const functions = bindFunctions(injector, namespace, metadata, associated, tellFault);
  const host = new GridHost(injector, functions.messageAt, spreadsheet.ahead);

  const enterSheet = () => {
    injector.get(ILayoutService).focus();
    return true;
  };
  furnish(host, spreadsheet, enterSheet);
  const { runs, files } = offerKeeping(host, injector);
  showName(host);
  markTabs(injector, host);

  const workOut = async () => {
    // What cannot be planned ahead, the functions tell of in the cells.
    await (await pane)?.planAhead(host).catch(() => undefined);
    await functions.workOutAll();
  };

  await spreadsheet.shown;
  mendSemantics(element('grid'));
  const uncover = () => {
    heard = keepAndTell(entry, runs, injector, files.save);
    element('actions').hidden = false;
    element('loading').remove();
    enterSheet();
  };
  if (entry.fresh) {
    stage('Working out the workbook');
    const draw = holdDrawing(injector);
    await workOut().finally(draw);
    uncover();
  } else {
    // Its last values can be seen while it is worked out anew.
    uncover();
    const working = workingInPane();
    await painted();
    await opening(workOut(), entry.kept?.run.id);
    working.remove();
  }
  const loaded = await pane;
  if (loaded) loaded.mountPane(element('pane'), host, { begin: (next) => runs.begin(next) });
  else showNotice('The pane beside the sheet did not load. Load the page again to have it.');
  return { host, spreadsheet };
}

/** What the page has around its sheet: its look, its ways by keys, and what is read aloud. */
function furnish(host: GridHost, { injector, recolour }: Spreadsheet, enterSheet: () => boolean): void {
  followTheme(element('theme', HTMLButtonElement), recolour);
  pasteUnstyled();
  showErrorsOnHover(injector, host);
  tellWhyInCells(injector, host);
  speakSelection(host, element('said'), element('problem'));
  offerTableView(injector, host, element('as-table'), element('readable', HTMLDialogElement));
  goRound([
    { element: element('actions'), enter: () => enterFirst(element('actions')) },
    { element: element('sheet'), enter: enterSheet },
    { element: element('sheet'), within: TABS, enter: () => enterTabs(element('grid')) },
    { element: element('pane'), enter: () => enterFirst(element('pane')) },
  ]);
  undoBeside(element('sheet'), injector.get(ICommandService));
  moveByKeys(injector);
  turnSheetsByKeys(injector);
  tabsLeaveFocus(element('grid'), injector);
  goToWhatIsTyped(injector);
  selectOnClick();
  enterChooses();
  enterClosesNames();
}

/** Runs that are kept and files, with their buttons. */
function offerKeeping(host: GridHost, injector: Injector) {
  const runs = new RunsHere(host, injector, {
    ask: (question) => ask(element('asking', HTMLDialogElement), question),
    say: showNotice,
  });
  const files = offerFiles(injector, host, runs, {
    open: element('open-file'),
    save: element('save-file'),
    saveValues: element('save-values'),
    choose: element('choose-file', HTMLInputElement),
  });
  offerRuns(element('runs'), element('runs-list', HTMLDialogElement), runs, files.choose);
  return { runs, files };
}

/** What stands in the pane's place until it has something to show. */
function workingInPane(): HTMLElement {
  const working = document.createElement('p');
  working.className = 'working';
  working.role = 'status';
  working.textContent = 'Working out the workbook';
  element('pane').append(working);
  return working;
}

/** Says that a run opened well once it is worked out; to leave it before that is no failure of it. */
async function opening(work: Promise<void>, run: string | undefined): Promise<void> {
  if (run === undefined) return work;
  const opened = () => markOpened(run);
  addEventListener('pagehide', opened);
  await work;
  removeEventListener('pagehide', opened);
  opened();
}

/** Waits until the page has been painted; not for long, since a page that is hidden is not painted. */
function painted(): Promise<void> {
  return new Promise((resolve) => {
    requestAnimationFrame(() => setTimeout(resolve));
    setTimeout(resolve, 100);
  });
}

async function readMetadata(): Promise<Metadata> {
  const response = await fetch('functions.json');
  if (!response.ok) throw new Error(`functions.json did not load (${response.status}).`);
  return (await response.json()) as Metadata;
}

function showName(host: GridHost): void {
  const show = () => {
    element('workbook').textContent = host.workbookName;
    document.title = `${host.workbookName} – Solebench`;
  };
  show();
  host.onContent(show);
}

function stage(sentence: string): void {
  element('stage').textContent = sentence;
  const progress = element('progress', HTMLProgressElement);
  progress.value = progress.max - 1;
}
