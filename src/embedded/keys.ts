import { type ICommandService, RedoCommand, UndoCommand } from '@univerjs/core';

/** A part of the page that F6 goes to. */
interface Region {
  readonly element: HTMLElement;
  /** Only what such a part of the element holds; the grid makes its parts anew at any time. */
  readonly within?: string;
  /** Puts the focus into it; false where it has nothing to focus. */
  readonly enter: () => boolean;
}

/**
 * F6 goes from the page's head to the sheet, to its tabs, to the pane and round again, Shift+F6 the other way: the sheet keeps
 * the Tab key for itself.
 * @param regions in order, a part of another after it
 */
export function goRound(regions: readonly Region[]): void {
  document.addEventListener(
    'keydown',
    (event) => {
      if (event.key !== 'F6' || event.ctrlKey || event.altKey || event.metaKey) return;
      const at = regions.findLastIndex((region) => holdsFocus(region));
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

function holdsFocus({ element, within }: Region): boolean {
  const focused = document.activeElement;
  return element.contains(focused) && (within === undefined || focused?.closest(within) != null);
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

/**
 * Undo and redo by the keyboard also where the focus is beside the sheet, such as after a click in the pane; fields that
 * text is typed into keep their own.
 */
export function undoBeside(sheet: HTMLElement, commands: ICommandService): void {
  document.addEventListener('keydown', (event) => {
    const { target } = event;
    if (event.defaultPrevented || event.altKey || !(event.ctrlKey || event.metaKey)) return;
    if (!(target instanceof Element) || sheet.contains(target) || takesText(target)) return;
    const key = event.key.toLowerCase();
    const command =
      key === 'y' || (key === 'z' && event.shiftKey) ? RedoCommand : key === 'z' ? UndoCommand : undefined;
    if (!command) return;
    event.preventDefault();
    commands.syncExecuteCommand(command.id);
  });
}

/** Enter in a number of the grid's menu, such as how many rows to insert, chooses the item that it is in. */
export function enterChooses(): void {
  document.addEventListener('keydown', ({ key, target, isComposing }) => {
    if (key !== 'Enter' || isComposing || !(target instanceof HTMLInputElement)) return;
    const item = target.closest<HTMLElement>('.univer-popup button');
    // After the grid has taken the number over.
    if (item) setTimeout(() => item.click());
  });
}

/** How long the grid puts off to open the list of names that what is typed into the name box may be of, ms, and some more. */
const LIST_OPENS = 150;

/** Enter in the name box closes the list under it, which the grid opens late: it would stay over the sheet. */
export function enterClosesNames(): void {
  document.addEventListener(
    'keydown',
    ({ key, target }) => {
      if (key !== 'Enter' || !(target instanceof Element) || !target.closest('[data-u-comp="defined-name"]')) return;
      setTimeout(() => {
        if (!document.querySelector('[data-u-comp="defined-name"] [data-state="open"]')) return;
        document.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape' }));
      }, LIST_OPENS);
    },
    true,
  );
}

function takesText(target: Element): boolean {
  return target.closest('textarea, [contenteditable="true"], input:not([type="checkbox"], [type="radio"])') !== null;
}
