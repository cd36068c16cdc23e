/**
 * Asks the maker in a dialog of the page, since the office suite shows none of the browser's own. Escape is no.
 * @param dialog with buttons whose values are yes and no
 */
export function ask(dialog: HTMLDialogElement, question: string): Promise<boolean> {
  const sentence = dialog.querySelector('p');
  if (sentence) sentence.textContent = question;
  dialog.returnValue = 'no';
  dialog.showModal();
  return new Promise((resolve) => {
    dialog.addEventListener('close', () => resolve(dialog.returnValue === 'yes'), { once: true });
  });
}
