import type { Message, Work } from './crew';

/** Makes a worker of its own of the thread that runs this: it works tasks through and tells the best so far and the answer. Stopped by being sent home. */
export function serve<T, A>(work: Work<T, A>): void {
  const scope = self as unknown as {
    onmessage: (event: { readonly data: T }) => void;
    postMessage(message: Message<A>): void;
  };
  scope.onmessage = ({ data }) => {
    const answer = work(data, { stopped: false }, (best) => scope.postMessage({ answer: best, ended: false }));
    scope.postMessage({ answer, ended: true });
  };
}
