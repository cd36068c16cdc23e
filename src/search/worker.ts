import { perform, type Task } from './crew';

/** Runs in a worker of its own: works a task through and hands back its answer. Stopped by being sent home. */
const scope = self as unknown as {
  onmessage: (event: { readonly data: Task }) => void;
  postMessage(answer: unknown): void;
};

scope.onmessage = ({ data }) => scope.postMessage(perform(data, { stopped: false }));
