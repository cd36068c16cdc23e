/** What the tests use of it; it brings no types along. */
declare module 'xlsx-populate' {
  interface Cell {
    value(value: unknown): Cell;
    formula(formula: string): Cell;
    style(styles: Readonly<Record<string, unknown>>): Cell;
    hyperlink(target: string): Cell;
    dataValidation(rule: Readonly<Record<string, unknown>>): Cell;
  }
  interface Range extends Cell {
    merged(merged: boolean): Range;
  }
  interface Sheet {
    cell(address: string): Cell;
    range(address: string): Range;
    column(name: string | number): { width(width: number): unknown; hidden(hidden: boolean): unknown };
    row(number: number): { height(height: number): unknown; hidden(hidden: boolean): unknown };
    name(name: string): Sheet;
    hidden(hidden: boolean | 'very'): Sheet;
    tabColor(colour: string): Sheet;
    gridLinesVisible(visible: boolean): Sheet;
    rightToLeft(rightToLeft: boolean): Sheet;
    freezePanes(columns: number, rows: number): Sheet;
    splitPanes(x: number, y: number): Sheet;
    autoFilter(range: Range): Sheet;
  }
  interface Workbook {
    sheet(at: number | string): Sheet;
    addSheet(name: string): Sheet;
    definedName(name: string, refersTo: unknown): Workbook;
    outputAsync(): Promise<Uint8Array>;
  }
  const XlsxPopulate: {
    fromBlankAsync(): Promise<Workbook>;
    RichText: new () => { add(text: string, styles?: Readonly<Record<string, unknown>>): unknown };
    FormulaError: { DIV0: unknown; NA: unknown };
  };
  export default XlsxPopulate;
}
