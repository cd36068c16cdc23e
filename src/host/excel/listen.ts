import type { Failed, Stop } from '../host';
import { type SheetEvent, tellsOf } from './requirements';
import { run } from './run';

/**
 * Acts once events have rested. An event that this version of the suite does not have is left out; each is registered by
 * itself, so that one which is refused takes none of the others with it.
 * @param rest ms
 * @param failed is told of each event that the suite does not let be heard, and where what is done at one fails
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
  const listening = events.filter(tellsOf).map((event) =>
    hear(event, heard).catch((error: unknown) => {
      failed(error);
      return undefined;
    }),
  );
  return () => {
    if (stopped) return;
    stopped = true;
    clearTimeout(timer);
    for (const one of listening) one.then(takeAway).catch(failed);
  };
}

function hear(event: SheetEvent, heard: () => Promise<void>): Promise<OfficeExtension.EventHandlerResult<unknown>> {
  return run(async (context) => {
    const { worksheets } = context.workbook;
    const handler = (worksheets[event] as OfficeExtension.EventHandlers<unknown>).add(heard);
    await context.sync();
    return handler;
  });
}

async function takeAway(handler: OfficeExtension.EventHandlerResult<unknown> | undefined): Promise<void> {
  if (!handler) return;
  await Excel.run(handler.context, async (context) => {
    handler.remove();
    await context.sync();
  });
}
