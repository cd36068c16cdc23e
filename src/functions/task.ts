/** Does something in a task of its own, after what else waits. */
type Later = (work: () => void) => void;

/**
 * Has something done in a task of its own; undefined where the engine has no tasks. In a page by messages: browsers slow
 * timers down, by up to a minute, where a page is hidden, as the suite's is while its pane is closed.
 */
export const inTaskOfItsOwn: Later | undefined =
  typeof window !== 'undefined' && typeof MessageChannel !== 'undefined'
    ? byMessages()
    : typeof setTimeout === 'undefined'
      ? undefined
      : (work) => void setTimeout(work);

function byMessages(): Later {
  const { port1, port2 } = new MessageChannel();
  const works: (() => void)[] = [];
  port1.onmessage = () => works.shift()?.();
  return (work) => {
    works.push(work);
    port2.postMessage(undefined);
  };
}
