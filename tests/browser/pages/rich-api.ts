/**
 * A workbook behind the bridge that the suite's own client library (office.js) talks over: it answers the requests which
 * that library makes of our calls, in the form that @microsoft/office-js 1.1.110 writes and reads. Loads before office.js.
 * Cells hold what was written; nothing is calculated.
 */

interface Path {
  readonly Id: number;
  readonly ObjectPathType: number;
  readonly Name: string;
  readonly ParentObjectPathId?: number;
  readonly ArgumentInfo?: Arguments;
}
interface Arguments {
  readonly Arguments?: readonly unknown[];
  readonly ReferencedObjectPathIds?: readonly (number | null)[];
}
interface Action {
  readonly Id: number;
  readonly ActionType: number;
  readonly Name: string;
  readonly ObjectPathId: number;
  readonly ArgumentInfo?: Arguments;
  readonly QueryInfo?: { readonly Select?: readonly string[]; readonly Expand?: readonly string[] };
}
interface Request {
  readonly id: number;
  readonly message: {
    readonly body: { readonly Actions: readonly Action[]; readonly ObjectPaths: Record<string, Path> };
  };
}

const kind = { root: 1, service: 2, method: 3, property: 4, item: 5 } as const;
/** Numbers of the events that we listen to, among those that the library knows. */
const events = { changed: 10, selectionChanged: 14, calculated: 16 } as const;

const act = { instantiate: 1, query: 2, method: 3, set: 4, trace: 5 } as const;

/** An object of the workbook: what it tells, what can be set of it, and what can be called on it. */
interface Thing {
  /** Values of properties by name; null where there is no such object. */
  readonly told?: () => Record<string, unknown> | null;
  readonly items?: () => Thing[];
  readonly set?: (name: string, value: unknown) => void;
  readonly methods?: Record<string, (...args: never[]) => Thing | void>;
  readonly properties?: Record<string, () => Thing>;
}

interface Area {
  row: number;
  column: number;
  rows: number;
  columns: number;
}
interface Sheet {
  id: string;
  name: string;
  visibility: string;
  /** What is kept with it under keys. */
  readonly properties?: Map<string, string>;
  readonly cells: Map<string, { value: unknown; formula?: string }>;
}
interface Table {
  id: string;
  name: string;
  readonly sheet: Sheet;
  area: Area;
}

/** What was set of looks, widths, lists and the like: accepted and counted. */
const noted = (count: (name: string) => void): Thing => ({
  told: () => ({}),
  set: count,
  methods: new Proxy({}, { get: (_, name) => (count(String(name)), () => noted(count)) }),
  properties: new Proxy({}, { get: () => () => noted(count) }),
});

export class RichApi {
  readonly sheets: Sheet[] = [{ id: '{0}', name: 'Sheet1', visibility: 'Visible', cells: new Map() }];
  tables: Table[] = [];
  readonly settings = new Map<string, unknown>();
  /** Pictures put over sheets. */
  readonly pictures: { readonly sheet: string; readonly image: string }[] = [];
  active: { sheet: Sheet; area: Area } = { sheet: this.sheets[0]!, area: { row: 0, column: 0, rows: 1, columns: 1 } };
  /** Characters of each request. */
  readonly requests: number[] = [];
  readonly counts: Record<string, number> = {};
  private next = 1;
  private wrote = false;
  private readonly calls = new Map<number, (value: unknown) => void>();
  private readonly bridge = {
    onMessageFromHost: undefined as ((message: string) => void) | undefined,
    sendMessageToHost: (text: string) => {
      this.requests.push(text.length);
      const { id, message } = JSON.parse(text) as Request;
      let answer: object;
      try {
        answer = { Results: this.work(message.body) };
      } catch (error) {
        answer = { Error: { Code: 'GeneralException', Message: String(error) } };
      }
      const body = JSON.stringify(answer);
      const sent = { id, type: 2, message: { statusCode: 200, headers: {}, body } };
      setTimeout(() => {
        this.bridge.onMessageFromHost?.(JSON.stringify(sent));
        if (this.wrote) this.tell('changed');
        this.wrote = false;
      });
    },
  };

  constructor() {
    Object.assign(window, { _richApiNativeBridge: this.bridge });
  }

  /** Selects a cell as the maker does. */
  select(sheet: string, row: number, column: number): void {
    const found = this.sheets.find(({ name }) => name === sheet)!;
    this.active = { sheet: found, area: { row, column, rows: 1, columns: 1 } };
    this.tell('selectionChanged');
  }

  /** Enters something as the maker does. */
  enter(sheet: string, row: number, column: number, value: unknown): void {
    this.sheets.find(({ name }) => name === sheet)!.cells.set(`${row},${column}`, { value });
    this.tell('changed');
  }

  private tell(event: keyof typeof events): void {
    const message = JSON.stringify({ worksheetId: this.active.sheet.id, address: 'A1' });
    const entries = [[65536, events[event], 'Workbook', message, null]];
    this.bridge.onMessageFromHost?.(JSON.stringify({ type: 3, message: { entries } }));
  }

  formula(sheet: string, row: number, column: number): string | undefined {
    return this.sheets.find(({ name }) => name === sheet)?.cells.get(`${row},${column}`)?.formula;
  }

  private work({ Actions, ObjectPaths }: Request['message']['body']): { ActionId: number; Value: unknown }[] {
    const resolved = new Map<number, Thing>();
    const given = (info: Arguments = {}): unknown[] =>
      (info.Arguments ?? []).map((value, at) => {
        const path = info.ReferencedObjectPathIds?.[at];
        return typeof path === 'number' && path > 0 ? resolve(path) : value;
      });
    const resolve = (id: number): Thing => {
      const known = resolved.get(id);
      if (known) return known;
      const path = ObjectPaths[id]!;
      const parent = path.ParentObjectPathId === undefined ? undefined : resolve(path.ParentObjectPathId);
      const found =
        path.ObjectPathType === kind.root
          ? this.workbook()
          : path.ObjectPathType === kind.service
            ? this.functions()
            : path.ObjectPathType === kind.property
              ? parent?.properties?.[path.Name]?.()
              : path.ObjectPathType === kind.method || path.ObjectPathType === kind.item
                ? parent?.methods?.[path.Name || 'GetItem']?.(...(given(path.ArgumentInfo) as never[]))
                : undefined;
      if (!found) throw new Error(`There is no ${path.Name} (path of type ${path.ObjectPathType}).`);
      resolved.set(id, found);
      return found;
    };
    return Actions.map((action) => {
      if (action.ActionType === act.trace) return { ActionId: action.Id, Value: null };
      const thing = resolve(action.ObjectPathId);
      const { ActionType: type, Name: name } = action;
      if (type === act.instantiate) return { ActionId: action.Id, Value: thing.told ? picked(thing.told()) : {} };
      if (type === act.query) return { ActionId: action.Id, Value: told(thing, action.QueryInfo?.Select) };
      if (type === act.set) {
        if (!thing.set) throw new Error(`${name} cannot be set.`);
        const [value] = given(action.ArgumentInfo);
        thing.set(name, value);
      } else if (type === act.method) {
        const method = thing.methods?.[name];
        // The library keeps track of ranges for as long as a batch lasts, and says which events it wants.
        if (!method && !/^_(KeepReference|Register|Unregister)/.test(name))
          throw new Error(`There is no method ${name}.`);
        method?.(...(given(action.ArgumentInfo) as never[]));
      } else throw new Error(`There is no action of type ${type}.`);
      return { ActionId: action.Id, Value: null };
    });
  }

  private count(name: string): void {
    this.counts[name] = (this.counts[name] ?? 0) + 1;
  }

  /** Calls a function as the suite does for a cell, in the runtime that the pane's page shares with the functions. */
  callFunction(name: string, args: readonly unknown[]): Promise<unknown> {
    const id = this.next++;
    const answer = new Promise((resolve) => this.calls.set(id, resolve));
    const entries = [[1, 1000, '', [id, name, [...args], null, 0, null], null]];
    this.bridge.onMessageFromHost?.(JSON.stringify({ type: 3, message: { entries } }));
    return answer;
  }

  private functions(): Thing {
    return {
      told: () => ({}),
      methods: {
        SetInvocationArrayResults: (results: readonly [number, boolean, unknown][]) => {
          for (const [id, , value] of results) this.calls.get(id)?.(value);
        },
        _SetOsfControlContainerReadyForCustomFunctions: () => undefined,
        _GetEnabledFeatures: () => undefined,
      },
    };
  }

  private workbook(): Thing {
    const look = () => noted((name) => this.count(name));
    return {
      told: () => ({}),
      properties: {
        Application: () => ({ ...look(), told: () => ({ CalculationMode: 'Automatic' }) }),
        // 1 January 2000, which is asked for to know from which year days are counted.
        Functions: () => ({ told: () => ({}), methods: { Date: () => ({ told: () => ({ Value: 36_526 }) }) } }),
        Names: () => ({ told: () => ({}), items: () => [] }),
        Settings: () => ({
          told: () => ({}),
          methods: {
            GetItemOrNullObject: (key: string) => ({
              told: () => (this.settings.has(key) ? { Key: key, Value: this.settings.get(key) } : null),
            }),
            Add: (key: string, value: unknown) => {
              this.settings.set(key, value);
              return { told: () => ({ Key: key }) };
            },
          },
        }),
        Worksheets: () => ({
          told: () => ({}),
          items: () => this.sheets.map((sheet) => this.sheet(() => sheet)),
          methods: {
            Add: (name: string) => {
              const sheet: Sheet = {
                id: `{${this.next++}}`,
                name,
                visibility: 'Visible',
                properties: new Map(),
                cells: new Map(),
              };
              this.sheets.push(sheet);
              return this.sheet(() => sheet);
            },
            ...Object.fromEntries(
              ['GetItem', 'GetItemOrNullObject'].map((method) => [
                method,
                (key: string) => this.sheet(() => this.sheets.find(({ id, name }) => id === key || name === key)),
              ]),
            ),
          },
        }),
        Tables: () => ({
          told: () => ({}),
          items: () => this.tables.map((table) => this.table(() => table)),
          methods: Object.fromEntries(
            ['GetItem', 'GetItemOrNullObject'].map((method) => [
              method,
              (key: string) => this.table(() => this.tables.find(({ id, name }) => id === key || name === key)),
            ]),
          ),
        }),
      },
      methods: {
        GetActiveCell: () => this.range(this.active.sheet, { ...this.active.area, rows: 1, columns: 1 }),
        GetSelectedRanges: () => ({
          told: () => ({}),
          properties: {
            Areas: () => ({
              told: () => ({}),
              methods: { GetItemAt: () => this.range(this.active.sheet, this.active.area) },
            }),
          },
        }),
      },
    };
  }

  private sheet(find: () => Sheet | undefined): Thing {
    const one = () => find()!;
    const look = () => noted((name) => this.count(name));
    return {
      told: () => {
        const sheet = find();
        return sheet ? { Id: sheet.id, Name: sheet.name, Visibility: sheet.visibility } : null;
      },
      set: (name, value) => {
        if (name === 'Name') one().name = String(value);
        else if (name === 'Visibility') one().visibility = String(value);
        else this.count(name);
      },
      properties: {
        FreezePanes: look,
        PageLayout: look,
        Protection: () => ({ told: () => ({ Protected: false }) }),
        CustomProperties: () => ({
          told: () => ({}),
          methods: {
            Add: (key: string, value: string) => {
              one().properties?.set(key, value);
              return { told: () => ({ Key: key, Value: value }) };
            },
            GetItemOrNullObject: (key: string) => ({
              told: () => (find()?.properties?.has(key) ? { Key: key, Value: find()?.properties?.get(key) } : null),
            }),
          },
        }),
        Shapes: () => ({
          told: () => ({}),
          methods: {
            AddImage: (image: string) => {
              this.pictures.push({ sheet: one().name, image });
              return look();
            },
          },
        }),
        Tables: () => ({
          told: () => ({}),
          items: () => this.tables.filter((table) => table.sheet === find()).map((table) => this.table(() => table)),
          methods: {
            Add: (range: Thing) => {
              const { RowIndex, ColumnIndex, RowCount, ColumnCount } = range.told!() as Record<string, number>;
              const area = { row: RowIndex!, column: ColumnIndex!, rows: RowCount!, columns: ColumnCount! };
              const table: Table = { id: String(this.next++), name: `Table${this.next}`, sheet: one(), area };
              this.tables.push(table);
              return this.table(() => table);
            },
          },
        }),
      },
      methods: {
        GetRange: (address?: string) => {
          const [from, to] = address ? (address.split(':').map(Number) as [number, number]) : [1, 100];
          return this.range(one(), { row: from - 1, column: 0, rows: to - from + 1, columns: 50 });
        },
        GetRangeByIndexes: (row: number, column: number, rows: number, columns: number) =>
          this.range(one(), { row, column, rows, columns }),
        GetUsedRangeOrNullObject: () =>
          one().cells.size > 0
            ? this.range(one(), { row: 0, column: 0, rows: 100, columns: 50 })
            : { told: () => null },
        Activate: () => {
          this.active = { sheet: one(), area: { row: 0, column: 0, rows: 1, columns: 1 } };
        },
        Delete: () => {
          const sheet = one();
          this.tables = this.tables.filter((table) => table.sheet !== sheet);
          this.sheets.splice(this.sheets.indexOf(sheet), 1);
        },
      },
    };
  }

  private table(find: () => Table | undefined): Thing {
    return {
      told: () => {
        const table = find();
        return table ? { Id: table.id, Name: table.name } : null;
      },
      set: (name, value) => {
        if (name === 'Name') find()!.name = String(value);
        else this.count(name);
      },
      methods: {
        GetRange: () => this.range(find()!.sheet, find()!.area),
        Resize: (range: Thing) => {
          const { RowIndex, ColumnIndex, RowCount, ColumnCount } = range.told!() as Record<string, number>;
          find()!.area = { row: RowIndex!, column: ColumnIndex!, rows: RowCount!, columns: ColumnCount! };
        },
      },
    };
  }

  private range(sheet: Sheet, area: Area): Thing {
    const { row, column, rows, columns } = area;
    const block = <T>(of: (cell: { value: unknown; formula?: string } | undefined) => T) =>
      Array.from({ length: Math.min(rows, 3000) }, (_, r) =>
        Array.from({ length: Math.min(columns, 60) }, (_, c) => of(sheet.cells.get(`${row + r},${column + c}`))),
      );
    return {
      told: () => ({
        RowIndex: row,
        ColumnIndex: column,
        RowCount: rows,
        ColumnCount: columns,
        Left: 64 * column,
        Top: 20 * row,
        get Values() {
          return block((cell) => cell?.value ?? '');
        },
        get Formulas() {
          return block((cell) => cell?.formula ?? cell?.value ?? '');
        },
        get Text() {
          return block((cell) => String(cell?.value ?? ''));
        },
        get ValueTypes() {
          return block((cell) => (cell ? 'String' : 'Empty'));
        },
      }),
      set: (name, value) => {
        if (name !== 'Values' && name !== 'Formulas') {
          this.count(name);
          return;
        }
        this.wrote = true;
        const given = value as unknown[][];
        if (given.length !== rows || given[0]?.length !== columns) throw new Error('The block does not fit the range.');
        given.forEach((line, r) =>
          line.forEach((cell, c) => {
            if (cell === null) return;
            const key = `${row + r},${column + c}`;
            if (cell === '') sheet.cells.delete(key);
            else if (typeof cell === 'string' && cell.startsWith('='))
              sheet.cells.set(key, { value: 0, formula: cell });
            else sheet.cells.set(key, { value: typeof cell === 'string' ? cell.replace(/^'/, '') : cell });
          }),
        );
      },
      properties: {
        Worksheet: () => this.sheet(() => sheet),
        Format: () => noted((name) => this.count(name)),
        DataValidation: () => noted((name) => this.count(`list ${name}`)),
        ConditionalFormats: () => noted((name) => this.count(`conditional ${name}`)),
      },
      methods: {
        Select: () => {
          this.active = { sheet, area };
        },
        Insert: () => this.count('Insert'),
        GetRowsBelow: (count: number) => this.range(sheet, { row: row + rows, column, rows: count, columns }),
        GetUsedRangeOrNullObject: () => {
          const own = [...sheet.cells.keys()].map((key) => key.split(',').map(Number) as [number, number]);
          const inside = own.filter(([r, c]) => r >= row && r < row + rows && c >= column && c < column + columns);
          const first = Math.min(...inside.map(([r]) => r));
          return inside.length > 0 ? this.range(sheet, { row: first, column, rows: 1, columns }) : { told: () => null };
        },
        Clear: (what: string) => {
          if (what !== 'All') return;
          for (const key of sheet.cells.keys()) {
            const [r, c] = key.split(',').map(Number) as [number, number];
            if (r >= row && r < row + rows && c >= column && c < column + columns) sheet.cells.delete(key);
          }
        },
        GetSpillParentOrNullObject: () => ({ told: () => null }),
        GetSpecialCellsOrNullObject: (type: string) => {
          const cells = [...sheet.cells.values()].filter(
            ({ formula }) => (type === 'Formulas') === (formula !== undefined),
          );
          return { told: () => (cells.length > 0 ? { CellCount: cells.length } : null) };
        },
      },
    };
  }
}

function told(thing: Thing, asked: readonly string[] = []): unknown {
  if (thing.items) return { _Items: thing.items().map((one) => told(one, asked)) };
  const values = picked(thing.told?.() ?? null, asked);
  const worksheet = thing.properties?.['Worksheet'];
  return values && worksheet ? { ...values, Worksheet: worksheet().told?.() } : values;
}

/** What a range tells cell by cell: of a whole sheet too much to tell unasked. */
const BY_CELL = ['Values', 'Formulas', 'Text', 'ValueTypes'];

/** Of what an object tells all but what was not asked for and is told cell by cell. */
function picked(values: Record<string, unknown> | null, asked: readonly string[] = []): Record<string, unknown> | null {
  if (!values) return null;
  const names = asked.map((name) => name.charAt(0).toUpperCase() + name.slice(1));
  const wanted = Object.keys(values).filter((name) => !BY_CELL.includes(name) || names.includes(name));
  return Object.fromEntries(wanted.map((name) => [name, values[name]]));
}

Object.assign(window, { richApi: new RichApi() });
