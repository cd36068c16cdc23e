import { followTheme, type Theme } from '../taskpane/theme';

/**
 * Shows the page light or dark: as the maker chose with the button, else as the suite is where it tells, else as the system
 * has it. The page outlives the pane, and the suite tells nothing of a change: so it is asked again whenever the pane is
 * shown, and what it said before counts no longer once the system has changed.
 */
export function followSuite(button: HTMLButtonElement): void {
  const { suggest } = followTheme(button);
  button.hidden = false;
  let told: Theme | undefined;
  const ask = () => {
    const theme = suiteTheme();
    if (theme !== undefined && theme !== told) suggest(theme);
    told = theme;
  };
  ask();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') ask();
  });
  // The pane of a page that stays may be hidden without the page being told.
  Office.addin
    ?.onVisibilityModeChanged?.(({ visibilityMode }) => {
      if (visibilityMode === Office.VisibilityMode.taskpane) ask();
    })
    .catch(() => undefined);
}

/** What the suite says; undefined where it says nothing, as on the web at times. */
function suiteTheme(): Theme | undefined {
  const { officeTheme } = Office.context;
  // The first is newer and surer; neither is everywhere.
  const { isDarkTheme } = (officeTheme ?? {}) as { readonly isDarkTheme?: boolean };
  if (typeof isDarkTheme === 'boolean') return isDarkTheme ? 'dark' : 'light';
  const dark = isDark(officeTheme?.bodyBackgroundColor ?? '');
  return dark === undefined ? undefined : dark ? 'dark' : 'light';
}

/** Whether a colour such as #262626 is nearer to black than to white; undefined for what is no such colour. */
function isDark(colour: string): boolean | undefined {
  const match = /^#?([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})/i.exec(colour);
  if (!match) return undefined;
  const [red, green, blue] = match.slice(1).map((part) => parseInt(part, 16)) as [number, number, number];
  // Weights of the three colours in what the eye sees as bright: ITU-R BT.709.
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue < 128;
}
