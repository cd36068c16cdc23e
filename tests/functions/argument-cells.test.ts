import { describe, expect, it } from 'vitest';
import { addressesIn, argumentCells } from '../../src/functions/argument-cells';

const pairage = [
  ['Style', 'Due', 38],
  ['Betony', null, 2],
  ['Betony', null, 3],
];
const due = { argument: 'pairage', table: 'Pairage', row: 2, column: 'Due' };
const told = (address: unknown) => argumentCells([pairage], [address])(due);

describe('cells of arguments', () => {
  it('are named by the address that the host tells', () => {
    expect(told('Run!A7:C9')).toBe('Run, B9, Due');
    expect(told("'Maker''s run'!$AA$7:$AC$9")).toBe("Maker's run, AB9, Due");
    expect(told("'[Shoes.xlsx]My run'!A7:C9")).toBe('My run, B9, Due');
    expect(told('Größen!A7:C9')).toBe('Größen, B9, Due');
  });

  it('are rows of the table where the host tells none, or one that is not of these cells', () => {
    for (const address of [undefined, null, '', 7, '#REF!', 'Run!A7:C12', 'Run!A7', 'Pairage[#All]', 'Run!A:C']) {
      expect(told(address)).toBe('row 2 of Pairage, Due');
    }
    expect(argumentCells([pairage], undefined)(due)).toBe('row 2 of Pairage, Due');
  });

  it('come with what hosts hand over behind the arguments, if they do', () => {
    expect(addressesIn({ parameterAddresses: ['Run!A7:C9'] })).toEqual(['Run!A7:C9']);
    for (const none of [undefined, null, {}, [['Style']], { parameterAddresses: null }]) {
      expect(addressesIn(none)).toBeUndefined();
    }
  });
});
