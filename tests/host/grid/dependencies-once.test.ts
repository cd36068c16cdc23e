import { Injector, RTree } from '@univerjs/core';
import { DependencyManagerService, FormulaDependencyTree, IDependencyManagerService } from '@univerjs/engine-formula';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { noteDependenciesOnce } from '../../../src/host/grid/dependencies-once';

const sheets = { unitId: 'book', sheetId: 'inputs' };

/** A formula that reads the rows named of two columns. */
function formula(treeId: number, startRow: number, endRow: number): FormulaDependencyTree {
  const one = new FormulaDependencyTree(treeId);
  one.rangeList = [{ ...sheets, range: { startRow, endRow, startColumn: 0, endColumn: 1 } }];
  return one;
}

describe('noteDependenciesOnce', () => {
  const inserted = vi.spyOn(RTree.prototype, 'insert');
  let manager: IDependencyManagerService;

  beforeEach(() => {
    const injector = new Injector([[IDependencyManagerService, { useClass: DependencyManagerService }]]);
    noteDependenciesOnce(injector);
    manager = injector.get(IDependencyManagerService);
    inserted.mockClear();
  });
  afterEach(() => manager.dispose());

  /** Formulas that read a cell of the first column. */
  const readers = (row: number) => [
    ...manager.searchDependency([{ ...sheets, range: { startRow: row, endRow: row, startColumn: 0, endColumn: 0 } }]),
  ];

  it('notes the same ranges of a formula once, of another formula too', () => {
    for (let calculation = 0; calculation < 3; calculation++) {
      for (const id of [1, 2]) manager.addDependencyRTreeCache(formula(id, 0, 3));
    }
    expect(inserted).toHaveBeenCalledTimes(2);
    expect(readers(2)).toEqual([1, 2]);
  });

  it('forgets the ranges that a formula read before', () => {
    manager.addDependencyRTreeCache(formula(1, 0, 3));
    manager.addDependencyRTreeCache(formula(1, 5, 6));
    expect([readers(2), readers(5)]).toEqual([[], [1]]);
  });

  it('notes them again after the formula went, after all did, and after the sheet that it reads was cleared', () => {
    const note = () => manager.addDependencyRTreeCache(formula(1, 0, 3));
    const cell = formula(1, 0, 3);
    manager.addFormulaDependency('book', 'results', 4, 4, cell);
    note();
    manager.removeFormulaDependency('book', 'results', 4, 4);
    expect(readers(2)).toEqual([]);
    note();
    expect(readers(2)).toEqual([1]);
    manager.reset();
    expect(readers(2)).toEqual([]);
    note();
    expect(readers(2)).toEqual([1]);
    manager.addFormulaDependency('book', 'inputs', 9, 9, formula(2, 7, 8));
    manager.clearFormulaDependency('book', 'inputs');
    expect(readers(2)).toEqual([]);
    note();
    expect(readers(2)).toEqual([1]);
  });
});
