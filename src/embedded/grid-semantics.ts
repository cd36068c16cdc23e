/** Names for the grid's controls that have only a picture, by where they stand and the picture's name. */
const names: readonly (readonly [selector: string, name: string])[] = [
  ["[data-u-comp='formula-bar'] input", 'Cell or cells to go to'],
  ['a[aria-haspopup]:has(.univerjs-icon-more-down-icon)', 'Named ranges'],
  ["[data-u-comp='sheet-bar-append-button']:has(.univerjs-icon-increase-icon)", 'Add a sheet'],
  ["[data-u-comp='sheet-bar-append-button']:has(.univerjs-icon-convert-icon)", 'All sheets'],
  ["[data-u-comp='button']:has(.univerjs-icon-reduce-icon)", 'Smaller'],
  ["[data-u-comp='button']:has(.univerjs-icon-increase-icon)", 'Larger'],
  ["[role='track'] > a", 'Actual size'],
  ["[role='handle']", 'Drag for another size'],
];

/** Roles that do not exist. */
const noRoles = "[role='track'], [role='handle']";
/** What carries a pop-up's state without being a control. */
const noStates = 'div[aria-expanded]:not([role]), a[aria-expanded]:not([role])';

/** Gives the grid's controls the names, roles and places in the tab order that readers of the screen need. */
export function mendSemantics(grid: HTMLElement): void {
  const mend = () => {
    for (const [selector, name] of names) {
      for (const control of grid.querySelectorAll(`${selector}:not([aria-label])`))
        control.setAttribute('aria-label', name);
    }
    for (const control of grid.querySelectorAll(noStates)) {
      if (control.tagName === 'A') control.setAttribute('role', 'button');
      else control.removeAttribute('aria-expanded');
    }
    for (const control of grid.querySelectorAll(noRoles)) control.removeAttribute('role');
    // The grid has its place for notices twice.
    [...grid.querySelectorAll("section[aria-label='Notifications alt+T']")]
      .slice(1)
      .forEach((place) => place.setAttribute('aria-label', 'More notifications'));
    // The sheet is entered by F6; a canvas takes the focus from it only for its own editor.
    for (const canvas of grid.querySelectorAll("canvas[tabindex='1']")) canvas.setAttribute('tabindex', '-1');
  };
  mend();
  new MutationObserver(mend).observe(grid, { childList: true, subtree: true });
}
