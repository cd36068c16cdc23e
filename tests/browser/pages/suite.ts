/**
 * Stands for the office suite as its custom functions runtime sees it: the bridge over which both exchange messages, in
 * the form that the runtime of @microsoft/office-js 1.1.110 reads and writes. Loads before that runtime.
 */

export interface SuiteCall {
  readonly name: string;
  readonly args: readonly unknown[];
  /** How it is made: bits that the runtime knows. */
  readonly flags?: number;
}

/** What came back for a call: a value, or the number that the suite has for an error and its sentence. */
export type SuiteAnswer = { readonly value: unknown } | { readonly code: number; readonly message: unknown };

interface Bridge {
  /** Set by the runtime. */
  onMessageFromHost?: (message: string) => void;
  sendMessageToHost(message: string): void;
}

interface Request {
  readonly id: number;
  readonly message: { readonly body: { readonly Actions?: readonly Action[] } };
}
interface Action {
  readonly Id: number;
  readonly Name: string;
  readonly ArgumentInfo?: { readonly Arguments?: readonly (readonly unknown[])[] };
}

export class Suite {
  /** Messages with results so far; each call of one level comes back in as few as possible. */
  messages = 0;
  private next = 1;
  private readonly waiting = new Map<number, (answer: SuiteAnswer) => void>();
  private readonly bridge: Bridge = {
    sendMessageToHost: (text) => this.receive(JSON.parse(text) as Request),
  };

  constructor() {
    Object.assign(window, { _richApiNativeBridge: this.bridge });
  }

  /** Calls functions in one message, as the suite does for cells that it works out together. */
  call(calls: readonly SuiteCall[]): { readonly ids: number[]; readonly answers: Promise<SuiteAnswer[]> } {
    const ids = calls.map(() => this.next++);
    const answers = Promise.all(ids.map((id) => new Promise<SuiteAnswer>((resolve) => this.waiting.set(id, resolve))));
    this.send(
      calls.map(({ name, args, flags = 0 }, at) => [1, 1000, '', [ids[at], name, [...args], null, flags, null], null]),
    );
    return { ids, answers };
  }

  /** Tells that nobody waits for a call any longer. */
  cancel(id: number): void {
    this.send([[1, 1001, '', { invocationId: id }, null]]);
  }

  private send(entries: unknown[]): void {
    this.bridge.onMessageFromHost?.(JSON.stringify({ type: 3, message: { entries } }));
  }

  private receive({ id, message }: Request): void {
    const { Actions: actions = [] } = message.body;
    for (const { Name, ArgumentInfo } of actions) {
      if (Name !== 'SetInvocationArrayResults') continue;
      this.messages++;
      for (const result of ArgumentInfo?.Arguments?.[0] ?? []) {
        const [call, ok, value, code] = result as [number, boolean, unknown, number];
        this.waiting.get(call)?.(ok ? { value } : { code, message: value });
        this.waiting.delete(call);
      }
    }
    const body = JSON.stringify({ Results: actions.map(({ Id }) => ({ ActionId: Id, Value: null })) });
    // The suite answers later, never within the call.
    setTimeout(() =>
      this.bridge.onMessageFromHost?.(JSON.stringify({ id, type: 2, message: { statusCode: 200, headers: {}, body } })),
    );
  }
}

Object.assign(window, { suite: new Suite() });
