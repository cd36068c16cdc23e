import { listen } from '../host/excel/listen';
import { run } from '../host/excel/run';
import { cautionsOf, stateOf } from '../host/excel/workbook-state';
import type { Stop } from '../host/host';

/** How long changes must rest before the workbook is asked again, ms. */
const RESTS = 1000;

/**
 * Says in a place of the page what of the workbook's own settings keeps plans from being right, as long as it does.
 * Settings tell of no event: they are read again after a change and on another sheet.
 */
export function cautionAgainstSettings(place: HTMLElement): Stop {
  const act = async () => {
    const sentence = cautionsOf(await run(stateOf)).join(' ');
    if (place.textContent !== sentence) place.textContent = sentence;
  };
  // Where the suite does not tell, nothing is said: all else of the pane works.
  const failed = () => undefined;
  act().catch(failed);
  return listen(['onChanged', 'onActivated'], RESTS, act, failed);
}
