/** Where the maker's choice is kept. */
const kept = 'solebench-theme';

export type Theme = 'light' | 'dark';

/** What the page is shown in, and who says so. */
export interface ThemeFollowed {
  /** Takes over what the program around the page is shown in, until the system says something else. */
  suggest(theme: Theme): void;
}

/**
 * Shows the page light or dark: as the maker chose, else as the newest of system and surroundings has it. To choose what
 * these have is to follow them again.
 * @param button switches to the other one
 * @param repaint is told of every change, of contrast and forced colours too
 */
export function followTheme(button: HTMLButtonElement, repaint?: (dark: boolean) => void): ThemeFollowed {
  const system = matchMedia('(prefers-color-scheme: dark)');
  const others = ['(prefers-contrast: more)', '(forced-colors: active)'].map((query) => matchMedia(query));
  let suggested: Theme | undefined;
  let chosen = read();

  const followed = (): Theme => suggested ?? (system.matches ? 'dark' : 'light');
  const show = () => {
    const theme = chosen ?? followed();
    document.documentElement.dataset['theme'] = theme;
    button.textContent = theme === 'dark' ? 'Light' : 'Dark';
    repaint?.(theme === 'dark');
  };
  button.addEventListener('click', () => {
    const other = (chosen ?? followed()) === 'dark' ? 'light' : 'dark';
    chosen = other === followed() ? undefined : other;
    write(chosen);
    show();
  });
  system.addEventListener('change', () => {
    suggested = undefined;
    show();
  });
  for (const query of others) query.addEventListener('change', show);
  show();
  return {
    suggest(theme) {
      suggested = theme;
      show();
    },
  };
}

function read(): Theme | undefined {
  try {
    const value = localStorage.getItem(kept);
    return value === 'light' || value === 'dark' ? value : undefined;
  } catch {
    return undefined;
  }
}

/** A browser that keeps nothing still shows what was chosen until the page is closed. */
function write(value: Theme | undefined): void {
  try {
    if (value === undefined) localStorage.removeItem(kept);
    else localStorage.setItem(kept, value);
  } catch {
    return;
  }
}
