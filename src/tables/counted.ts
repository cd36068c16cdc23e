/** A number of things: "1 sheet", "2 sheets". */
export function counted(count: number, what: string): string {
  return `${count} ${what}${count === 1 ? '' : 's'}`;
}
