import { beforeEach, describe, expect, it } from 'vitest';
import { shortfalls, supports } from '../../../src/host/excel/requirements';
import { startsWithWorkbook, startWithWorkbook } from '../../../src/host/excel/start-with-workbook';
import { Suite } from './suite';

describe('what a version of the suite can do', () => {
  let suite: Suite;
  beforeEach(() => {
    suite = new Suite();
    suite.install();
  });

  it('is everything where every set is there', () => {
    expect(shortfalls()).toEqual([]);
    expect(supports('ExcelApi', '1.12')).toBe(true);
  });

  it.each(['SharedRuntime 1.1', 'CustomFunctionsRuntime 1.2', 'ExcelApi 1.9'])('is too little without %s', (set) => {
    if (set.startsWith('ExcelApi')) suite.excelApi = 8;
    else suite.lacking.add(set);
    expect(shortfalls()).toEqual([expect.stringMatching(/^This version of Excel cannot run the functions\./)]);
  });

  it('is told of where answers are plain and where tables do not spill', () => {
    suite.lacking.add('CustomFunctionsRuntime 1.4');
    suite.excelApi = 11;
    expect(shortfalls()).toEqual([
      'This version of Excel cannot show a whole table from one formula.',
      'Answers stand without their unit: this version of Excel has plain numbers only.',
    ]);
  });

  it('is loaded with the workbook only when the maker asks for it', async () => {
    expect(await startsWithWorkbook()).toBe(false);
    await startWithWorkbook(true);
    expect([suite.startup, await startsWithWorkbook()]).toEqual(['Load', true]);
    await startWithWorkbook(false);
    expect(await startsWithWorkbook()).toBe(false);
  });
});
