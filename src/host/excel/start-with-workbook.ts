/** Whether the functions and the pane's code load as soon as this workbook opens, and not only when they are first used. */
export async function startsWithWorkbook(): Promise<boolean> {
  return (await Office.addin.getStartupBehavior()) === 'Load';
}

/** Has this workbook load the functions when it opens, or no longer. Only when the maker asks for it. */
export async function startWithWorkbook(wanted: boolean): Promise<void> {
  await Office.addin.setStartupBehavior(wanted ? Office.StartupBehavior.load : Office.StartupBehavior.none);
}
