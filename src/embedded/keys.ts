/**
 * F6 goes from the page's head to the sheet, to the pane and round again, Shift+F6 the other way: the sheet keeps the
 * Tab key for itself.
 * @param enter puts the focus into each region, in order; false where it has nothing to focus
 */
export function goRound(regions: readonly { readonly element: HTMLElement; readonly enter: () => boolean }[]): void {
  document.addEventListener(
    'keydown',
    (event) => {
      if (event.key !== 'F6' || event.ctrlKey || event.altKey || event.metaKey) return;
      const at = regions.findIndex(({ element }) => element.contains(document.activeElement));
      const step = event.shiftKey ? -1 : 1;
      const from = at < 0 ? (event.shiftKey ? 0 : -1) : at;
      for (let count = 1; count <= regions.length; count++) {
        const next = (from + step * count + regions.length * 2) % regions.length;
        if (regions[next]?.enter()) break;
      }
      event.preventDefault();
      event.stopPropagation();
    },
    true,
  );
}

/** Focuses the first thing in an element that takes the focus. */
export function enterFirst(element: HTMLElement): boolean {
  const first = element.querySelector<HTMLElement>(
    'button:not([disabled]), a[href], select, input, [tabindex]:not([tabindex="-1"])',
  );
  if (!first || first.offsetParent === null) return false;
  first.focus();
  return true;
}
