/** What an error says, whatever it was that was thrown. */
export function whatWentWrong(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
