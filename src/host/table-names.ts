/**
 * Names by which formulas may call tables: letters, digits and low lines, and unlike any sheet's name, which the grid
 * does not allow for a range. "Bottom stock" becomes BottomStockTable.
 * @param others names that stand in the workbook already, whatever their capitals
 */
export function tableNames(tables: readonly string[], others: readonly string[] = []): string[] {
  const taken = new Set(others.map((name) => name.toUpperCase()));
  return tables.map((table) => {
    const words = table.split(/[^\p{L}\p{N}]+/u).filter(Boolean);
    const stem = `${words.map((word) => word.charAt(0).toUpperCase() + word.slice(1)).join('')}Table`;
    const start = /^\p{L}/u.test(stem) ? stem : `_${stem}`;
    let name = start;
    for (let at = 2; taken.has(name.toUpperCase()); at++) name = `${start}${at}`;
    taken.add(name.toUpperCase());
    return name;
  });
}
