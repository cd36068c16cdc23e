/** A button of a notice. */
export interface NoticeAction {
  readonly name: string;
  readonly run: () => void;
}

/**
 * Shows a sentence under the page's head until it is put away.
 * @param actions buttons beside it; each puts the notice away
 * @returns puts it away
 */
export function showNotice(sentence: string, actions: readonly NoticeAction[] = []): () => void {
  const notice = document.createElement('div');
  const text = document.createElement('p');
  text.textContent = sentence;
  const buttons = [...actions, { name: 'Close', run: () => undefined }].map(({ name, run }) => {
    const button = document.createElement('button');
    button.type = 'button';
    button.textContent = name;
    button.addEventListener('click', () => {
      notice.remove();
      run();
    });
    return button;
  });
  notice.append(text, ...buttons);
  document.getElementById('notices')?.append(notice);
  return () => notice.remove();
}
