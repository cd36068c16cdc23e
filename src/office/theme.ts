/** Shows the page light or dark as the suite is; where it does not tell, the page is as the system has it. */
export function followSuite(): void {
  const ground = Office.context.officeTheme?.bodyBackgroundColor;
  const dark = ground === undefined ? undefined : isDark(ground);
  if (dark !== undefined) document.documentElement.dataset['theme'] = dark ? 'dark' : 'light';
}

/** Whether a colour such as #262626 is nearer to black than to white; undefined for what is no such colour. */
function isDark(colour: string): boolean | undefined {
  const match = /^#?([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})/i.exec(colour);
  if (!match) return undefined;
  const [red, green, blue] = match.slice(1).map((part) => parseInt(part, 16)) as [number, number, number];
  // Weights of the three colours in what the eye sees as bright: ITU-R BT.709.
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue < 128;
}
