import { type Injector, IUniverInstanceService, UniverInstanceType } from '@univerjs/core';
import { IRenderManagerService } from '@univerjs/engine-render';

/**
 * Keeps the grid from drawing its workbook for as long as nobody sees it. It is to be on the page already.
 * @returns lets it draw again, all that has changed meanwhile at once
 */
export function holdDrawing(injector: Injector): () => void {
  const workbook = injector.get(IUniverInstanceService).getCurrentUnitOfType(UniverInstanceType.UNIVER_SHEET);
  const scene = workbook && injector.get(IRenderManagerService).getRenderById(workbook.getUnitId())?.scene;
  if (!scene) throw new Error('The grid is not on the page yet.');
  scene.render = () => undefined;
  return () => {
    Reflect.deleteProperty(scene, 'render');
    scene.makeDirty();
  };
}
