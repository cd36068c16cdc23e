/** Where the maker's choice is kept. */
const kept = 'solebench-theme';

/**
 * Shows the page light or dark: as the maker chose, else as the system has it.
 * @param button switches to the other one
 * @param repaint is told of every change, of contrast and forced colours too
 */
export function followTheme(button: HTMLButtonElement, repaint: (dark: boolean) => void): void {
  const system = matchMedia('(prefers-color-scheme: dark)');
  const others = ['(prefers-contrast: more)', '(forced-colors: active)'].map((query) => matchMedia(query));
  let chosen = read();

  const isDark = () => (chosen ? chosen === 'dark' : system.matches);
  const show = () => {
    const dark = isDark();
    document.documentElement.dataset['theme'] = dark ? 'dark' : 'light';
    button.textContent = dark ? 'Light' : 'Dark';
    repaint(dark);
  };
  button.addEventListener('click', () => {
    chosen = isDark() ? 'light' : 'dark';
    write(chosen);
    show();
  });
  for (const query of [system, ...others]) query.addEventListener('change', show);
  show();
}

function read(): 'light' | 'dark' | undefined {
  try {
    const value = localStorage.getItem(kept);
    return value === 'light' || value === 'dark' ? value : undefined;
  } catch {
    return undefined;
  }
}

/** A browser that keeps nothing still shows what was chosen until the page is closed. */
function write(value: string): void {
  try {
    localStorage.setItem(kept, value);
  } catch {
    return;
  }
}
