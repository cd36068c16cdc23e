import { startsWithWorkbook, startWithWorkbook } from '../host/excel/start-with-workbook';

/**
 * Offers to load the functions whenever the workbook opens, so that no cell shows #NAME? until the pane is opened. Off
 * until the maker chooses it.
 */
export async function offerStart(place: HTMLElement): Promise<void> {
  const label = document.createElement('label');
  const box = document.createElement('input');
  box.type = 'checkbox';
  box.checked = await startsWithWorkbook();
  box.addEventListener('change', () => {
    const wanted = box.checked;
    void startWithWorkbook(wanted).catch(() => (box.checked = !wanted));
  });
  label.append(box, ' Load the functions whenever this workbook opens');
  place.append(label);
}
