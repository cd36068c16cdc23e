/** What to do about the suite's own refusals, by its code for them. */
const remedies: Readonly<Record<string, string>> = {
  AccessDenied: 'The sheet or the workbook is protected. Take its protection off, then do it again.',
  InvalidOperationInCellEditMode: 'A cell is being edited. Press Enter or Esc, then do it again.',
  RequestPayloadSizeLimitExceeded: 'That is more than Excel takes at once. Do it for fewer rows.',
  RequestAborted: 'Excel was busy and dropped the request. Do it again.',
  ActivityLimitReached: 'Excel has too much to do at the moment. Wait a little, then do it again.',
};

/**
 * Works on the workbook in as few exchanges with the suite as the work has syncs; waits while a cell is being edited.
 * @throws Error with a sentence for the maker
 */
export async function run<T>(work: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
  try {
    return await Excel.run({ delayForCellEdit: true }, work);
  } catch (error) {
    const code = codeOf(error);
    if (!code) throw error;
    const message = error instanceof Error ? error.message : '';
    throw new Error(remedies[code] ?? `Excel could not do it: ${message || code}`, { cause: error });
  }
}

/** The suite's code for what it refused, of its own error or of one made from it; '' for errors that are not the suite's. */
export function codeOf(error: unknown): string {
  if (typeof error !== 'object' || error === null) return '';
  if ('code' in error) return String(error.code);
  return 'cause' in error ? codeOf(error.cause) : '';
}
