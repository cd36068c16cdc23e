/** A part of the page by its id. @throws Error where the page has none of that kind */
export function element<T extends HTMLElement = HTMLElement>(id: string, kind?: new () => T): T {
  const found = document.getElementById(id);
  if (!found || (kind && !(found instanceof kind))) throw new Error(`The page lacks its part "${id}".`);
  return found as T;
}
