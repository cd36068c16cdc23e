import type { Failed, Stop } from '../host';
import { run } from './run';

/** Events of all worksheets together. */
export type SheetEvent =
  'onSelectionChanged' | 'onActivated' | 'onChanged' | 'onCalculated' | 'onDeleted' | 'onNameChanged';

/**
 * Acts once events have rested.
 * @param rest ms
 * @param failed is told where the suite does not let the events be heard, or what is done at one fails
 */
export function listen(events: readonly SheetEvent[], rest: number, act: () => Promise<void>, failed: Failed): Stop {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let stopped = false;
  const heard = async () => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      if (!stopped) act().catch(failed);
    }, rest);
  };
  const listening = run(async (context) => {
    const { worksheets } = context.workbook;
    const handlers = events.map((event) => (worksheets[event] as OfficeExtension.EventHandlers<unknown>).add(heard));
    await context.sync();
    return handlers;
  }).catch((error: unknown) => {
    failed(error);
    return [];
  });
  return () => {
    if (stopped) return;
    stopped = true;
    clearTimeout(timer);
    listening.then(takeAway).catch(failed);
  };
}

async function takeAway(handlers: readonly OfficeExtension.EventHandlerResult<unknown>[]): Promise<void> {
  const [first] = handlers;
  if (!first) return;
  await Excel.run(first.context, async (context) => {
    for (const handler of handlers) handler.remove();
    await context.sync();
  });
}
