import { ICanvasColorService, CanvasColorService } from '@univerjs/engine-render';
import { Inject, Injector, Plugin, ThemeService, UniverInstanceType } from '@univerjs/core';
import { colours } from '../host/grid/look';

/** Colours that the grid draws of itself, and which of ours stand in for them. */
const drawnByGrid: Readonly<Record<string, keyof typeof colours>> = {
  '#ffffff': 'paper',
  'rgb(255, 255, 255, 1)': 'paper',
  '#000000': 'ink',
  'rgb(248,249,250)': 'tint',
  'rgb(217,217,217)': 'line',
  'rgb(199, 199, 199)': 'edge',
  // The mark in the corner of a cell that shows an error.
  '#409f11': 'signal',
};

/** Turns colours of the light look, in which cells are kept, into those of the theme that the page shows now. */
export class PaletteColours extends CanvasColorService {
  private readonly page = new Map<string, string>();

  override getRenderColor(colour: string): string {
    return this.page.get(colour.toLowerCase()) ?? super.getRenderColor(colour);
  }

  /** Takes the page's colours over. Whatever the look does not name, the grid turns by itself. */
  read(style: CSSStyleDeclaration): void {
    this.page.clear();
    const now = (token: string) => style.getPropertyValue(`--${token}`).trim();
    for (const [token, light] of Object.entries(colours)) {
      if (now(token)) this.page.set(light.toLowerCase(), now(token));
    }
    for (const [drawn, token] of Object.entries(drawnByGrid)) {
      if (now(token)) this.page.set(drawn, now(token));
    }
  }
}

/** Puts the palette in the place of the grid's own colours as soon as the grid's renderer is there. */
export class PalettePlugin extends Plugin {
  static override readonly pluginName = 'SOLEBENCH_PALETTE';
  static override readonly type = UniverInstanceType.UNIVER_UNKNOWN;

  constructor(
    _config: undefined,
    protected override readonly _injector: Injector,
  ) {
    super();
  }

  override onStarting(): void {
    this._injector.replace([ICanvasColorService, { useClass: PaletteColours }]);
  }
}
// What a decorator would say: the plugin is built with the injector, the palette with the theme.
Inject(Injector)(PalettePlugin, '', 1);
Inject(ThemeService)(PaletteColours, '', 0);
