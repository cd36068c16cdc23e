import { SelectionControl } from '@univerjs/sheets-ui';

/** Width of the line round what is selected, px. */
const width = 2;

type Style = { readonly strokeWidth?: number } | null | undefined;

/** The grid's line round a selection is one pixel wide and cannot be set; here every style that it is given is widened. */
export function widenSelectionOutline(): void {
  const control = SelectionControl.prototype as unknown as { _updateLayoutOfSelectionControl(style?: Style): void };
  const update = control._updateLayoutOfSelectionControl;
  if (typeof update !== 'function') throw new Error('The grid draws selections otherwise than it did.');
  control._updateLayoutOfSelectionControl = function (style) {
    update.call(this, style && { ...style, strokeWidth: Math.max(width, style.strokeWidth ?? 0) });
  };
}
