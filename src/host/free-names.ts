/** Names unlike those that are taken, which sheets of the maker's own have: "Run" becomes "Run 2". */
export function freeNames(wanted: readonly string[], others: readonly string[]): string[] {
  const taken = new Set(others.map((name) => name.toLowerCase()));
  return wanted.map((name) => {
    let free = name;
    for (let at = 2; taken.has(free.toLowerCase()); at++) free = `${name} ${at}`;
    taken.add(free.toLowerCase());
    return free;
  });
}
