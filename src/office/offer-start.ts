import { whatWentWrong } from '../core/what-went-wrong';
import { startsWithWorkbook, startWithWorkbook } from '../host/excel/start-with-workbook';

const OFFER = 'Load the functions whenever this workbook opens';

/**
 * Offers to load the functions whenever the workbook opens, so that no cell shows #NAME? until the pane is opened. Off
 * until the maker chooses it.
 */
export async function offerStart(place: HTMLElement): Promise<void> {
  const box = document.createElement('input');
  const words = document.createElement('span');
  const failed = (error: unknown) => (words.textContent = `${OFFER}: Excel refused. ${whatWentWrong(error)}`);
  box.type = 'checkbox';
  box.addEventListener('change', () => {
    const wanted = box.checked;
    startWithWorkbook(wanted).then(
      () => (words.textContent = OFFER),
      (error: unknown) => {
        box.checked = !wanted;
        failed(error);
      },
    );
  });
  try {
    box.checked = await startsWithWorkbook();
    words.textContent = OFFER;
  } catch (error) {
    box.disabled = true;
    failed(error);
  }
  const label = document.createElement('label');
  label.append(box, ' ', words);
  place.append(label);
}
