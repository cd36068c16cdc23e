import { Inject, Injector, Plugin, ThemeService, UniverInstanceType } from '@univerjs/core';
import { CanvasColorService, ICanvasColorService } from '@univerjs/engine-render';
import { colours } from '../host/grid/look';
import { type Colour, readColour, writeColour } from '../host/colour';

/** Colours that the grid draws of itself, and which of ours stand in for them. */
const drawnByGrid: Readonly<Record<string, keyof typeof colours>> = {
  '#ffffff': 'paper',
  '#000000': 'ink',
  '#f8f9fa': 'tint',
  '#d9d9d9': 'line',
  '#c7c7c7': 'edge',
  // The mark in the corner of a cell that shows an error.
  '#409f11': 'signal',
};

const key = ({ red, green, blue }: Colour) => `${red} ${green} ${blue}`;

/** Turns colours of the light look, in which cells are kept, into those of the theme that the page shows now. */
export class PaletteColours extends CanvasColorService {
  private readonly now = new Map<string, Colour>();
  private readonly turned = new Map<string, string | undefined>();

  override getRenderColor(colour: string): string {
    if (!this.turned.has(colour)) this.turned.set(colour, this.turn(colour));
    return this.turned.get(colour) ?? super.getRenderColor(colour);
  }

  /** Takes the page's colours over. Whatever the look does not name, the grid turns by itself. */
  read(page: HTMLElement): void {
    this.now.clear();
    this.turned.clear();
    const sample = document.createElement('span');
    // Where the system forces its colours on the page, those of the look's names are wanted all the same.
    sample.style.setProperty('forced-color-adjust', 'none');
    page.append(sample);
    const take = (light: string, token: string) => {
      sample.style.color = `var(--${token})`;
      const from = readColour(light);
      const to = readColour(getComputedStyle(sample).color);
      if (from && to) this.now.set(key(from), to);
    };
    for (const [light, token] of Object.entries(drawnByGrid)) take(light, token);
    for (const [token, light] of Object.entries(colours)) take(light, token);
    sample.remove();
  }

  private turn(colour: string): string | undefined {
    const from = readColour(colour);
    const to = from && this.now.get(key(from));
    return to && writeColour({ ...to, cover: to.cover * from.cover });
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
