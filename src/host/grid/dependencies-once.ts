import type { Injector } from '@univerjs/core';
import { IDependencyManagerService, type IFormulaDependencyTree } from '@univerjs/engine-formula';

/** What the grid keeps to itself of the ranges that formulas read. */
interface Dependencies {
  addDependencyRTreeCache(formula: Formula): void;
  reset(): void;
  _removeDependencyRTreeCache(id: number): void;
  _removeDependencyRTreeCacheById(unit: string, sheet: string): void;
  _removeAllTreeMap(id: number): void;
}

type Formula = Pick<IFormulaDependencyTree, 'treeId' | 'rangeList'>;

/**
 * Has the grid note once what ranges a formula reads. By itself it notes those of every formula again with each calculation
 * beside what it had noted, so that its index grows with every edit, and so does the time to search it.
 * @throws Error where the grid notes them otherwise than the version that this was written for
 */
export function noteDependenciesOnce(injector: Pick<Injector, 'get'>): void {
  const manager = injector.get(IDependencyManagerService) as unknown as Dependencies;
  const { addDependencyRTreeCache, reset, _removeDependencyRTreeCacheById, _removeAllTreeMap } = manager;
  const used = [addDependencyRTreeCache, reset, _removeDependencyRTreeCacheById, _removeAllTreeMap];
  if ([...used, manager._removeDependencyRTreeCache].some((method) => typeof method !== 'function')) {
    throw new Error('The grid notes what formulas read otherwise than it did.');
  }
  const noted = new Map<number, string>();
  manager.addDependencyRTreeCache = function (formula) {
    const { treeId, rangeList } = formula;
    const ranges = JSON.stringify(rangeList);
    if (noted.get(treeId) === ranges) return;
    this._removeDependencyRTreeCache(treeId);
    this._removeAllTreeMap(treeId);
    addDependencyRTreeCache.call(this, formula);
    noted.set(treeId, ranges);
  };
  manager._removeAllTreeMap = function (id) {
    noted.delete(id);
    _removeAllTreeMap.call(this, id);
  };
  // With a sheet go the ranges on it that formulas of other sheets read.
  manager._removeDependencyRTreeCacheById = function (unit, sheet) {
    noted.clear();
    _removeDependencyRTreeCacheById.call(this, unit, sheet);
  };
  manager.reset = function () {
    noted.clear();
    reset.call(this);
  };
}
