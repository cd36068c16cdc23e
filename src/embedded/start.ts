import { ICommandService } from '@univerjs/core';
import { ILayoutService } from '@univerjs/ui';
import { whatWentWrong } from '../core/what-went-wrong';
import { GridHost } from '../host/grid/grid-host';
import { snapshotOf } from '../host/grid/snapshot';
import { ask } from '../taskpane/ask';
import { blank } from '../workbook/blank';
import { demo } from '../workbook/demo';
import type { WorkbookPlan } from '../workbook/workbook';
import { autosave } from './autosave';
import { pasteUnstyled } from './clipboard';
import { bindFunctions } from './custom-functions/bind';
import type { Metadata } from './custom-functions/metadata';
import type { StandIn } from './custom-functions/stand-in';
import { showErrorsOnHover } from './error-on-hover';
import { mendSemantics } from './grid-semantics';
import { enterFirst, goRound, undoBeside } from './keys';
import { showNotice } from './notices';
import { Replacing } from './replacing';
import { offerFiles } from './offer-files';
import { saveAsFile } from './save-as-file';
import { type Found, SavedWorkbook } from './saved-workbook';
import { speakSelection } from './spoken-selection';
import { createSpreadsheet, type Spreadsheet } from './spreadsheet';
import { markTabs } from './tab-marks';
import { offerTableView } from './table-view';
import { followTheme } from './theme';

/** Stands before the name of each custom function, as the manifest has it for the office suite. */
const namespace = 'SOLEBENCH';

/** What is at work in the page. */
export interface Page {
  readonly host: GridHost;
  readonly spreadsheet: Spreadsheet;
}

/**
 * Puts the page together and opens the workbook of the last visit.
 * @param plan what it opens where there is none
 */
export async function start(plan: WorkbookPlan = demo): Promise<Page> {
  // Loads while the sheet is being laid out and worked out.
  const pane = import(/* webpackChunkName: "pane" */ '../taskpane/pane').catch(() => undefined);
  const saved = new SavedWorkbook();
  const [metadata, found] = await Promise.all([readMetadata(), saved.find()]);
  stage('Laying out the sheet');
  const { associated } = (globalThis as unknown as { CustomFunctions: StandIn }).CustomFunctions;
  const spreadsheet = createSpreadsheet(
    'grid',
    found.kind === 'workbook' ? found.workbook : snapshotOf(plan, 'workbook'),
    tellFault,
  );
  const { injector } = spreadsheet;
  const functions = bindFunctions(injector, namespace, metadata, associated, tellFault);
  const before = element('before', HTMLButtonElement);
  const replacing = new Replacing(injector, saved, [plan, demo, blank], {
    ask: (question) => ask(element('asking', HTMLDialogElement), question),
    offer: (name) => {
      before.hidden = name === undefined;
      before.textContent = `Bring back “${name ?? ''}”`;
    },
    say: showNotice,
  });
  const host = new GridHost(injector, functions.messageAt, (next) => replacing.may(next));

  const sheet = element('sheet');
  const enterSheet = () => {
    injector.get(ILayoutService).focus();
    return true;
  };
  followTheme(element('theme', HTMLButtonElement), spreadsheet.recolour);
  pasteUnstyled();
  showErrorsOnHover(injector, host);
  speakSelection(host, element('said'), element('problem'));
  offerTableView(injector, host, element('as-table'), element('readable', HTMLDialogElement));
  goRound([
    { element: element('actions'), enter: () => enterFirst(element('actions')) },
    { element: sheet, enter: enterSheet },
    { element: element('pane'), enter: () => enterFirst(element('pane')) },
  ]);
  element('demo').addEventListener('click', () => {
    host.load(plan).then((held) => {
      enterSheet();
      if (!held) return;
      showNotice('The demo is in the place of the workbook. Undo brings the workbook back.');
    }, tellFault);
  });
  before.addEventListener('click', () => {
    replacing.bringBack(host).then(enterSheet, tellFault);
  });
  undoBeside(element('sheet'), injector.get(ICommandService));
  offerFiles(injector, host, {
    open: element('open-file'),
    save: element('save-file'),
    saveValues: element('save-values'),
    choose: element('choose-file', HTMLInputElement),
  });
  showName(host);
  markTabs(injector, host);

  await spreadsheet.shown;
  mendSemantics(element('grid'));
  const uncover = () => {
    tellOf(found);
    if (found.kind !== 'unable') keep(host, injector, saved);
    element('actions').hidden = false;
    element('loading').remove();
    enterSheet();
  };
  if (found.kind === 'workbook') {
    // Its last values can be seen while it is worked out anew.
    uncover();
    await painted();
    await opening(functions.workOutAll(), saved);
  } else {
    stage('Working out the workbook');
    await functions.workOutAll();
    uncover();
  }
  await replacing.offerAgain();
  const loaded = await pane;
  if (loaded) loaded.mountPane(element('pane'), host);
  else showNotice('The pane beside the sheet did not load. Load the page again to have it.');
  return { host, spreadsheet };
}

/** Says that a saved workbook opened well once it is worked out; to leave it before that is no failure of it. */
async function opening(work: Promise<void>, saved: SavedWorkbook): Promise<void> {
  const leave = () => {
    saved.opened().catch(tellFault);
  };
  addEventListener('pagehide', leave);
  await work;
  removeEventListener('pagehide', leave);
  await saved.opened();
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

function keep(host: GridHost, injector: Parameters<typeof autosave>[0], saved: SavedWorkbook): void {
  let putAway: (() => void) | undefined;
  let failed = false;
  autosave(injector, host, saved, {
    waiting: () => {
      putAway = showNotice(
        'Solebench is open in another tab. What you change here is kept only after that tab is closed.',
      );
    },
    keeping: () => putAway?.(),
    kept: () => {
      if (failed) putAway?.();
      failed = false;
    },
    failed: () => {
      // It tries again and again: the notice stands once.
      if (failed) return;
      failed = true;
      putAway?.();
      putAway = showNotice(
        'This browser has no room to keep the workbook. It is tried again; until then what you change is lost when the page closes.',
      );
    },
  });
}

function tellOf(found: Found): void {
  if (found.kind === 'unable') {
    showNotice('This browser keeps nothing for the page. What you change is lost when the page closes.');
  }
  if (found.kind !== 'damaged') return;
  showNotice('The workbook of your last visit could not be opened, so the demo stands here. It has been put aside.', [
    {
      name: 'Save it as a file',
      run: () => saveAsFile('damaged-workbook.json', JSON.stringify(found.kept), 'application/json'),
    },
  ]);
}

function tellFault(error: unknown): void {
  showNotice(`The page has a fault here: ${whatWentWrong(error)} What is in the sheet may be from before.`);
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

function element<T extends HTMLElement = HTMLElement>(id: string, kind?: new () => T): T {
  const found = document.getElementById(id);
  if (!found || (kind && !(found instanceof kind))) throw new Error(`The page lacks its part "${id}".`);
  return found as T;
}
