import { number, optional, table, text } from './schema';

export const layoutsTable = table({
  name: 'Layouts',
  argument: 'layouts',
  meaning: 'Written by a long search: where each piece lies on which sheet',
  columns: {
    stock: text({ heading: 'Stock', meaning: 'Code of the sheet' }),
    sheet: number({ heading: 'Sheet', meaning: 'Number of the sheet', least: 1, most: 100_000, whole: true }),
    format: optional(
      text({ heading: 'Format', meaning: 'Of the sheet, such as 1000 × 500; blank is as in Bottom stock', width: 100 }),
    ),
    offcut: optional(text({ heading: 'Offcut', meaning: 'Code of the offcut that it lies on, where it is no sheet' })),
    piece: text({ heading: 'Piece', meaning: 'Style, item, size and foot', width: 180 }),
    x: number({ heading: 'x', unit: 'mm', meaning: 'Where its back stands', least: -1e6, most: 1e6, format: '0.000' }),
    y: number({ heading: 'y', unit: 'mm', meaning: 'Where its back stands', least: -1e6, most: 1e6, format: '0.000' }),
    turn: number({
      heading: 'Turn',
      unit: '°',
      meaning: 'Direction of its toe, counter-clockwise',
      least: -360,
      most: 360,
    }),
  },
});
