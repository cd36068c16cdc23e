import { CommandType, type ICommandInfo, ICommandService, type Injector } from '@univerjs/core';
import {
  FormulaExecutedStateType,
  IActiveDirtyManagerService,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationResultMutation,
  SetFormulaCalculationStartMutation,
  SetFormulaCalculationStopMutation,
  SetTriggerFormulaCalculationStartMutation,
} from '@univerjs/engine-formula';
import { TriggerCalculationController } from '@univerjs/sheets-formula';
import { WorkAhead } from './work-ahead';

/** What the grid's own trigger keeps to itself: what has changed, and when it begins to work that out. */
interface Trigger {
  _setTimeoutKey: ReturnType<typeof setTimeout> | number;
  _waitingCommandQueue: readonly unknown[];
  _executingDirtyData: object;
  _restartCalculation: boolean;
  _generateDirty(commands: readonly unknown[]): object;
  _mergeDirty(one: object, other: object): object;
}

/** Least and longest wait, ms: so long that what was typed is painted first, and that a burst of changes is one. */
const WAIT = { least: 20, most: 500 } as const;
/** The wait as a share of how long the last calculation took: large workbooks wait for the typing to rest. */
const SHARE = 0.1;

/** Changes by which cells come to stand elsewhere. */
const MOVES_CELLS = /^sheet\.mutation\.(insert-row|insert-col|remove-rows|remove-col|move-)/;

/**
 * Lets the grid work changes out sooner than after the tenth of a second that it always waits.
 * @param failed is told where a calculation could not begin
 * @param withAll whether nothing is worked out until every formula is to be: what lists offer would be, by itself
 * @param ahead what is done first whenever something has changed
 * @throws Error where the grid begins calculations otherwise than the version that this was written for
 */
export function beginCalculationsSoon(
  injector: Injector,
  failed: (error: unknown) => void,
  withAll = false,
  ahead = new WorkAhead(),
): void {
  const commands = injector.get(ICommandService);
  const watched = injector.get(IActiveDirtyManagerService);
  const trigger = injector.get(TriggerCalculationController) as unknown as Trigger;
  const methods = [trigger._generateDirty, trigger._mergeDirty];
  if (methods.some((method) => typeof method !== 'function') || !Array.isArray(trigger._waitingCommandQueue)) {
    throw new Error('The grid begins calculations otherwise than it did.');
  }
  const calculations = new Calculations(commands, trigger, failed, withAll, ahead);
  commands.beforeCommandExecuted((command) => calculations.before(command));
  commands.onCommandExecuted((command) => {
    calculations.after(command);
    if (command.type === CommandType.MUTATION && watched.get(command.id)) calculations.beginSoon();
  });
}

/** The grid's calculations: one at a time, begun soon after a change. */
class Calculations {
  private wait: number = WAIT.least;
  private begun = NaN;
  private running = false;
  /** Whether the one that is running has been told to stop. */
  private stopping = false;
  /** Whether cells have moved since the last began, and whether its answers are of where they were. */
  private moved = false;
  private stale = false;
  private pending: object | undefined;
  private clock: Trigger['_setTimeoutKey'];
  /** Counts changes: what was done ahead of one begins no calculation where another has followed. */
  private changes = 0;

  constructor(
    private readonly commands: ICommandService,
    private readonly trigger: Trigger,
    private readonly failed: (error: unknown) => void,
    /** Whether none begins yet. */
    private held: boolean,
    private readonly ahead: WorkAhead,
  ) {
    this.clock = trigger._setTimeoutKey;
  }

  /**
   * A calculation writes its answers where their formulas were when it began: over what the maker has entered, where rows or
   * columns have moved since. So it is stopped before they do, and all is worked out anew.
   */
  before({ id, params }: Readonly<ICommandInfo>): void {
    if (this.stale && id === SetFormulaCalculationResultMutation.id) Object.assign(params as object, { unitData: {} });
    if (!this.running || !MOVES_CELLS.test(id)) return;
    this.moved = this.stale = true;
    this.commands.syncExecuteCommand(SetFormulaCalculationStopMutation.id, {});
  }

  /** Follows when calculations begin and end. */
  after({ id, params }: Readonly<ICommandInfo>): void {
    if (id === SetTriggerFormulaCalculationStartMutation.id && isOfAll(params)) this.held = false;
    if (id === SetFormulaCalculationStartMutation.id) {
      this.begun = performance.now();
      this.running = true;
      this.stopping = this.stale = false;
      this.pending = undefined;
    }
    if (id === SetFormulaCalculationStopMutation.id) this.stopping = true;
    if (id === SetFormulaCalculationNotificationMutation.id && this.isEnd(params)) {
      this.running = false;
      if (this.pending) setTimeout(() => this.goOn());
      this.wait = Math.min(WAIT.most, Math.max(WAIT.least, SHARE * (performance.now() - this.begun) || 0));
    }
  }

  /** Something has changed: the trigger has heard of it before, and set its own clock for it. */
  beginSoon(): void {
    const { trigger } = this;
    if (trigger._setTimeoutKey === this.clock) return;
    this.changes++;
    clearTimeout(trigger._setTimeoutKey);
    trigger._setTimeoutKey = this.clock = this.held ? -1 : setTimeout(() => this.beginAfterWork(), this.wait);
  }

  private beginAfterWork(): void {
    // What is at work is to stop at once: its answers are of what stood there before.
    const work = this.running ? undefined : this.ahead.done();
    if (!work) {
      this.begin();
      return;
    }
    const { changes } = this;
    const begin = () => {
      if (changes === this.changes) this.begin();
    };
    work.catch(this.failed).then(begin, this.failed);
  }

  private begin(): void {
    const { trigger } = this;
    const changed = trigger._generateDirty(trigger._waitingCommandQueue);
    const merged = trigger._mergeDirty(trigger._executingDirtyData, changed);
    // What had changed before cells moved is no longer where it was.
    trigger._executingDirtyData = this.moved ? { ...merged, forceCalculation: true } : merged;
    this.moved = false;
    trigger._waitingCommandQueue = [];
    if (!this.running) {
      this.start();
      return;
    }
    // One at a time: two would write over each other's answers.
    this.pending = trigger._executingDirtyData;
    trigger._restartCalculation = true;
    this.commands.executeCommand(SetFormulaCalculationStopMutation.id, {}).catch(this.failed);
  }

  private start(): void {
    const all = { ...this.trigger._executingDirtyData };
    this.commands.executeCommand(SetFormulaCalculationStartMutation.id, all, { onlyLocal: true }).catch(this.failed);
  }

  /** What was to begin again and did not, since there was nothing left to stop. */
  private goOn(): void {
    if (this.running || !this.pending) return;
    this.trigger._restartCalculation = false;
    this.trigger._executingDirtyData = this.pending;
    this.start();
  }

  /**
   * Whether a notification tells of the end of the calculation that is running. One that is stopped tells of it twice, the
   * second time when the next has begun already.
   */
  private isEnd(params: unknown): boolean {
    const state = (params as { readonly functionsExecutedState?: unknown } | undefined)?.functionsExecutedState;
    return state !== undefined && (this.stopping || state !== FormulaExecutedStateType.STOP_EXECUTION);
  }
}

/** Whether every formula is to be worked out, whatever has changed. */
function isOfAll(params: unknown): boolean {
  return (params as { readonly forceCalculation?: unknown } | undefined)?.forceCalculation === true;
}
