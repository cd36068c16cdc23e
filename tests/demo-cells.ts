export { planArguments, tableCells } from '../src/workbook/table-cells';
