/** Sets of abilities that the office suite names. */
type Ability = 'ExcelApi' | 'CustomFunctionsRuntime' | 'SharedRuntime' | 'ExcelUndoApiAll';

/** Whether this version of the suite can do what a set names. */
export function supports(ability: Ability, version: string): boolean {
  return Office.context.requirements.isSetSupported(ability, version);
}

/** The set of ExcelApi from which on all worksheets together tell of an event (Excel JavaScript API requirement sets). */
const EVENTS_SINCE = {
  onSelectionChanged: '1.9',
  onActivated: '1.7',
  onChanged: '1.9',
  onCalculated: '1.8',
  onDeleted: '1.7',
  onNameChanged: '1.17',
} as const;

/** Events of all worksheets together. */
export type SheetEvent = keyof typeof EVENTS_SINCE;

/** Whether this version of the suite tells of an event. */
export function tellsOf(event: SheetEvent): boolean {
  return supports('ExcelApi', EVENTS_SINCE[event]);
}

/** Whether this version of the suite can run the functions and the pane at all. */
export function canRun(): boolean {
  // Errors with a sentence are of the set 1.2.
  return supports('SharedRuntime', '1.1') && supports('CustomFunctionsRuntime', '1.2') && supports('ExcelApi', '1.9');
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
