import { whatWentWrong } from '../core/what-went-wrong';
import { ExcelHost } from '../host/excel/excel-host';
import { canRun, shortfalls } from '../host/excel/requirements';
import { useTodaysFunctions } from '../host/excel/todays-functions';
import { ask } from '../taskpane/ask';
import { mountPane } from '../taskpane/pane';
import { cautionAgainstSettings } from './cautions';
import { filesOut } from './files-out';
import { offerStart } from './offer-start';
import { followSuite } from './theme';

/** Puts the pane into the suite's page, or says why there is none. */
export async function start(): Promise<void> {
  if (typeof Office === 'undefined') {
    say('Excel’s own script did not load. Check the network, then open the pane again.');
    return;
  }
  const { host, platform } = await Office.onReady();
  if (host !== Office.HostType.Excel) {
    say('This is the pane for Excel. Open it there with the button Solebench on the Home tab.');
    return;
  }
  followSuite(element('theme') as HTMLButtonElement);
  if (!canRun()) {
    say(shortfalls().join(' '));
    return;
  }
  element('alone').remove();
  const dialog = element('asking') as HTMLDialogElement;
  const workbook = new ExcelHost((question) => ask(dialog, question));
  mountPane(element('pane'), workbook, { files: filesOut(platform) });
  // Before anything else is looked at, so that no cell stays an error for a name alone.
  await useTodaysFunctions().catch((error: unknown) =>
    say(`Formulas with former names of functions stay as they are. ${whatWentWrong(error)}`),
  );
  cautionAgainstSettings(element('cautions'));
  const offer = element('offer');
  offer.title = shortfalls().join(' ');
  await offerStart(offer);
}

/** Says a sentence where the pane is to stand, or below it once it does. */
export function say(sentence: string): void {
  (document.getElementById('state') ?? element('offer')).textContent = sentence;
}

function element(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (!found) throw new Error(`The page lacks its part "${id}".`);
  return found;
}
