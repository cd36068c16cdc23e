import { type Message, perform, type Task } from './crew';

/** Runs in a worker of its own: works a task through and tells the best so far and its answer. Stopped by being sent home. */
const scope = self as unknown as {
  onmessage: (event: { readonly data: Task }) => void;
  postMessage(message: Message): void;
};

scope.onmessage = ({ data }) => {
  const answer = perform(data, { stopped: false }, (best) => scope.postMessage({ answer: best, ended: false }));
  scope.postMessage({ answer, ended: true });
};
