import { compare, type Comparison } from '../core/plan/compare';
import type { PlanInput } from '../core/plan/inputs';
import { type Aspect, aspectsOf, variantsOf } from '../core/plan/variants';
import type { Style } from '../core/bottom/style';
import { whatWentWrong } from '../core/what-went-wrong';

/**
 * Compares ways to build the style shown, one after the other with pauses between, so that the page goes on answering.
 * Begins anew when style, aspect or plan change.
 */
export class Comparing {
  /** What is compared; the first that the style has where it lacks the one chosen. */
  private chosen: Aspect | undefined;
  private of: { readonly input: PlanInput; readonly style: string; readonly aspect: Aspect } | undefined;
  private turn = 0;
  done: readonly Comparison[] = [];
  /** How many ways there are to work out. */
  wanted = 0;
  stopped = false;
  /** Why no more ways could be worked out. */
  trouble: string | undefined;

  constructor(private readonly changed: () => void) {}

  get running(): boolean {
    return !this.stopped && this.trouble === undefined && this.done.length < this.wanted;
  }

  aspect(style: Style): Aspect | undefined {
    const all = aspectsOf(style);
    return all.find((one) => one === this.chosen) ?? all[0];
  }

  choose(aspect: Aspect): void {
    this.chosen = aspect;
    this.changed();
  }

  /** Sees to it that what is compared is what is shown. */
  follow(input: PlanInput, style: Style): void {
    const aspect = this.aspect(style);
    if (!aspect) return;
    const { of } = this;
    if (of?.input === input && of.style === style.code && of.aspect === aspect) return;
    this.of = { input, style: style.code, aspect };
    this.done = [];
    this.wanted = variantsOf(style, input.stock, aspect).length;
    this.begin(style);
  }

  stop(): void {
    this.turn++;
    this.stopped = true;
    this.changed();
  }

  goOn(): void {
    const style = this.of?.input.styles.find(({ code }) => code === this.of?.style);
    if (style) this.begin(style);
    this.changed();
  }

  private begin(style: Style): void {
    const turn = ++this.turn;
    this.stopped = false;
    this.trouble = undefined;
    this.work(style, turn).catch((error: unknown) => {
      if (turn !== this.turn) return;
      this.trouble = whatWentWrong(error);
      this.changed();
    });
  }

  private async work(style: Style, turn: number): Promise<void> {
    const { of } = this;
    if (!of) return;
    for (const variant of variantsOf(style, of.input.stock, of.aspect).slice(this.done.length)) {
      await new Promise((resolve) => setTimeout(resolve, 20));
      if (turn !== this.turn) return;
      this.done = [...this.done, ...compare(of.input, of.style, [variant])];
      this.changed();
    }
  }
}
