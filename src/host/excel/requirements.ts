/** Sets of abilities that the office suite names. */
type Ability = 'ExcelApi' | 'CustomFunctionsRuntime' | 'SharedRuntime';

/** Whether this version of the suite can do what a set names. */
export function supports(ability: Ability, version: string): boolean {
  return Office.context.requirements.isSetSupported(ability, version);
}

/** Whether this version of the suite can run the functions and the pane at all. */
export function canRun(): boolean {
  return supports('SharedRuntime', '1.1') && supports('CustomFunctionsRuntime', '1.1') && supports('ExcelApi', '1.9');
}

/** What this version of the suite cannot do, for the maker; nothing where it can do all. */
export function shortfalls(): readonly string[] {
  if (!canRun()) {
    return [
      'This version of Excel cannot run the functions. Excel on the web, Microsoft 365, or Excel 2021 or newer can.',
    ];
  }
  return [
    supports('ExcelApi', '1.12') ? '' : 'This version of Excel cannot show a whole table from one formula.',
    supports('CustomFunctionsRuntime', '1.4')
      ? ''
      : 'Answers stand without their unit: this version of Excel has plain numbers only.',
  ].filter(Boolean);
}
