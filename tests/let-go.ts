import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';

/** Whether nothing holds an object any longer, once what is no longer held has been collected. */
export async function letGo(object: WeakRef<object>): Promise<boolean> {
  setFlagsFromString('--expose-gc');
  const collect = runInNewContext('gc') as () => void;
  // A weak reference that was read holds its object until the task ends; what ends late needs some tasks more.
  for (let task = 0; task < 20 && object.deref(); task++) {
    await new Promise((resolve) => setTimeout(resolve, 10));
    collect();
  }
  return object.deref() === undefined;
}
