type Table = (string | number)[][];

export interface Workshop {
  readonly pairage: Table;
  readonly styles: Table;
  readonly lasts: Table;
  readonly stock: Table;
  readonly rates: Table;
}

/** The minimal standard generator of Park and Miller, so that every run plans the same workshop. */
function generator(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 16807) % 2147483647) / 2147483647;
}

/** An invented workshop of so many styles in twelve sizes: wedges, heels and flat soles in turn. */
export function workshop(styles: number, seed: number): Workshop {
  const random = generator(seed);
  const between = (from: number, to: number) => Math.round((from + random() * (to - from)) * 10) / 10;
  const sizes = Array.from({ length: 12 }, (_, i) => 35 + i);
  const lasts: Table = [
    [
      'Last',
      'System',
      'Base size',
      'Bottom length',
      'Heel height',
      'Toe spring',
      'Tread',
      'Waist',
      'Seat',
      'Swing',
      'Pairs on hand',
    ],
  ];
  const styleRows: Table = [
    ['Style', 'Last', 'Raise', 'Lifts', 'Platform', 'Sole', 'Outsole', 'Top piece', 'Most rasping', 'Projection'],
  ];
  const pairage: Table = [['Style', ...sizes]];
  for (let i = 0; i < styles; i++) {
    const kind = i % 3;
    const heel = kind === 0 ? between(25, 48) : kind === 1 ? between(30, 50) : 0;
    lasts.push([
      `Last ${i}`,
      'EU',
      38,
      between(250, 262),
      heel,
      between(6, 12),
      between(80, 92),
      between(54, 64),
      between(54, 64),
      between(2, 5),
      2,
    ]);
    styleRows.push([
      `Style ${i}`,
      `Last ${i}`,
      ['wedge', 'heel', 'none'][kind] as string,
      kind === 2 ? '' : 'Cork 6, Cork 4.5, Cork 4',
      kind === 0 ? 'Foam 10' : '',
      kind === 0 ? '' : 'Bend 4',
      'Rubber 4',
      kind === 1 ? 'Rubber 6' : '',
      2,
      between(0, 3),
    ]);
    pairage.push([`Style ${i}`, ...sizes.map(() => Math.floor(random() * 3))]);
  }
  const sheet = (
    code: string,
    material: string,
    thick: number,
    width: number,
    length: number,
    price: number,
    lies: string,
  ) => [code, material, thick, width, length, price, 'sheet', lies, 200];
  return {
    pairage,
    styles: styleRows,
    lasts,
    stock: [
      ['Stock', 'Material', 'Thick', 'Width', 'Length', 'Price', 'Sold by', 'Direction', 'Density'],
      sheet('Cork 6', 'cork', 6, 500, 1000, 13.4, 'any way'),
      sheet('Cork 4.5', 'cork', 4.5, 500, 1000, 10.6, 'any way'),
      sheet('Cork 4', 'cork', 4, 500, 1000, 9.6, 'any way'),
      sheet('Foam 10', 'foam', 10, 800, 1200, 34, 'any way'),
      sheet('Bend 4', 'leather', 4, 620, 1350, 90, 'end for end'),
      sheet('Rubber 4', 'rubber', 4, 600, 1000, 22, 'any way'),
      sheet('Rubber 6', 'rubber', 6, 500, 500, 15, 'any way'),
    ],
    rates: [
      ['Item', 'Value', 'Unit'],
      ['Work', 30, 'money an hour'],
      ['Adhesive', 14, 'money a litre'],
      ['Adhesive', 3.5, 'm² a litre'],
    ],
  };
}
