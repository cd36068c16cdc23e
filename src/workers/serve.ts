import type { Message, Work } from './crew';

/** Makes a worker of its own of the thread that runs this: it works tasks through and tells the best so far and the answer. Stopped by being sent home. */
export function serve<T, A>(work: Work<T, A | Promise<A>>): void {
  const scope = self as unknown as {
    onmessage: (event: { readonly data: T }) => void;
    postMessage(message: Message<A>): void;
  };
  const ended = (answer: A) => scope.postMessage({ answer, ended: true });
  scope.onmessage = ({ data }) => {
    const answer = work(data, { stopped: false }, (best) => scope.postMessage({ answer: best as A, ended: false }));
    if (!(answer instanceof Promise)) return ended(answer);
    // What fails later is told to whoever hired the worker as what fails at once is.
    answer.then(ended, (error: unknown) =>
      setTimeout(() => {
        throw error;
      }),
    );
  };
}
