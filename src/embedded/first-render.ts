import { type Injector, LifecycleService, LifecycleStages } from '@univerjs/core';
import { ILayoutService, IUIController } from '@univerjs/ui';

/** What puts a workbook into the grid's part of the page. */
interface Renderer {
  _changeRenderUnit(unitId: string, content: HTMLElement): boolean;
}

/**
 * Shows the workbook as soon as the grid has its part of the page, and not only after the 300 ms that the grid waits then;
 * what the grid itself does after them finds it done.
 * @param failed is told where the workbook could not be shown
 * @throws Error where the grid comes onto the page otherwise than the version that this was written for
 */
export function showWithoutDelay(injector: Injector, unitId: string, failed: (error: unknown) => void): void {
  const renderer = injector.get(IUIController) as unknown as Renderer;
  if (typeof renderer._changeRenderUnit !== 'function')
    throw new Error('The grid comes onto the page otherwise than it did.');
  const lifecycle = injector.get(LifecycleService);
  const layout = injector.get(ILayoutService);
  const register = layout.registerContentElement.bind(layout);
  layout.registerContentElement = (content) => {
    const show = () => {
      if (renderer._changeRenderUnit(unitId, content)) lifecycle.stage = LifecycleStages.Rendered;
    };
    lifecycle.onStage(LifecycleStages.Ready).then(show).catch(failed);
    return register(content);
  };
}
