/** Does something that only one tab may do at a time: tabs that open together take turns. */
export async function alone<T>(work: () => Promise<T>): Promise<T> {
  if (!('locks' in navigator)) return work();
  return navigator.locks.request('solebench taking in', work);
}
