import { OfficeMockObject } from 'office-addin-mock';
import type { Area } from '../../../src/workbook/workbook';

/**
 * The office suite's workbook for tests: a model that changes only when a batch is synced, in the order in which it was
 * told to, and objects in front of it that show a property only after it was loaded and synced (office-addin-mock keeps
 * that account). What the host uses is here; anything else is refused, so that no slip of the pen passes.
 */

export interface CellModel {
  value?: unknown;
  formula?: string;
  numberFormat?: string;
  /** false where the maker has unlocked it. */
  locked?: boolean;
  /** Where a formula's table spills over the cell. */
  spilledFrom?: { row: number; column: number };
}
export interface TableModel {
  id: string;
  name: string;
  sheet: SheetModel;
  area: Area;
  settings: Record<string, unknown>;
}
export interface SheetModel {
  id: string;
  name: string;
  visibility: string;
  protected?: boolean;
  settings: Record<string, unknown>;
  /** What is kept with the sheet under keys; a copy of the sheet has it too. */
  properties: Map<string, string>;
  cells: Map<string, CellModel>;
  /** What was set of formats, validation and the like, with where: for tests to look at. */
  looks: { area: Area; path: string; value: unknown }[];
}

type Values = Record<string, unknown>;
interface Entry {
  readonly mock: OfficeMockObject;
  readonly pending: Set<string>;
  readonly read: (path: string) => unknown;
}

const PROMISED = new Set(['then', 'catch', 'finally', 'toJSON', 'constructor', Symbol.toStringTag, Symbol.iterator]);

export class Suite {
  readonly sheets: SheetModel[] = [];
  tables: TableModel[] = [];
  readonly names: string[] = [];
  readonly settings = new Map<string, unknown>();
  active: { sheet: SheetModel; area: Area } | undefined;
  /** Exchanges so far. */
  syncs = 0;
  suspended = 0;
  /** A refusal for the next exchange, by the suite's code. */
  refuse: string | undefined;
  /** Sets that the suite does not have, such as "SharedRuntime 1.1". */
  readonly lacking = new Set<string>();
  /** The newest set of ExcelApi that this version of the suite has, by its second number: 14 is 1.14. */
  excelApi = 20;
  startup = 'None';
  /** As what this version hands blank cells over to functions: '', null or 0. */
  blankCell: unknown = '';
  calculationMode = 'Automatic';
  /** Whether the workbook counts its days from 1904. */
  from1904 = false;
  /** Whether what is typed and shown has a comma for its decimals. */
  decimalComma = false;
  /** Calls after which the desktop suite undoes nothing that was before (its maker's list of what has no undo). */
  readonly undoEnds: string[] = [];
  private readonly handlers = new Map<string, Set<() => Promise<void>>>();
  private next = 1;

  constructor(names: readonly string[] = ['Sheet1']) {
    for (const name of names) this.addSheet(name);
    this.active = { sheet: this.sheets[0]!, area: { row: 0, column: 0, rows: 1, columns: 1 } };
  }

  /** Takes the place of the suite's globals. */
  install(): void {
    Object.assign(globalThis, {
      Excel: {
        run: async (first: object, work: (context: unknown) => Promise<unknown>) =>
          work('sync' in first ? first : this.context()),
      },
      Office: {
        context: {
          requirements: {
            isSetSupported: (name: string, version: string) =>
              !this.lacking.has(`${name} ${version}`) && (name !== 'ExcelApi' || minor(version) <= this.excelApi),
          },
        },
        StartupBehavior: { load: 'Load', none: 'None' },
        addin: {
          getStartupBehavior: async () => this.startup,
          setStartupBehavior: async (behaviour: string) => {
            this.startup = behaviour;
          },
        },
      },
    });
  }

  sheet(name: string): SheetModel {
    const found = this.sheets.find((sheet) => sheet.name === name);
    if (!found) throw new Error(`The model has no sheet ${name}.`);
    return found;
  }

  cell(sheet: string, row: number, column: number): CellModel {
    return this.sheet(sheet).cells.get(`${row},${column}`) ?? {};
  }

  set(sheet: string, row: number, column: number, cell: CellModel): void {
    this.sheet(sheet).cells.set(`${row},${column}`, cell);
  }

  addSheet(name: string): SheetModel {
    if (this.sheets.some((sheet) => sheet.name.toLowerCase() === name.toLowerCase())) {
      throw refusal('ItemAlreadyExists', `There is a sheet ${name} already.`);
    }
    const sheet: SheetModel = {
      id: `{${this.next++}}`,
      name,
      visibility: 'Visible',
      settings: {},
      properties: new Map(),
      cells: new Map(),
      looks: [],
    };
    this.sheets.push(sheet);
    return sheet;
  }

  addTable(sheet: SheetModel, name: string, area: Area): TableModel {
    const table: TableModel = { id: String(this.next++), name, sheet, area, settings: {} };
    this.tables.push(table);
    return table;
  }

  /** Another name, which formulas follow. */
  rename(what: SheetModel | TableModel, name: string): void {
    const before = what.name;
    what.name = name;
    this.rewrite((formula) => formula.replace(calls(what, before), `$1${name}$2`));
  }

  /** What formulas say of it leads nowhere from now on. */
  lose(what: SheetModel | TableModel): void {
    this.rewrite((formula) => formula.replace(calls(what, what.name), '$1#REF!$2'));
  }

  removeTable(table: TableModel): void {
    this.tables = this.tables.filter((one) => one !== table);
    this.lose(table);
  }

  /** The workbook as it opens the next time: sheets have other ids. */
  reopen(): void {
    for (const sheet of this.sheets) sheet.id = `{${this.next++} anew}`;
  }

  private rewrite(change: (formula: string) => string): void {
    for (const { cells } of this.sheets) {
      for (const cell of cells.values()) if (cell.formula !== undefined) cell.formula = change(cell.formula);
    }
  }

  /** @throws what the suite answers where its version does not have a member yet */
  need(member: string): void {
    const since = SINCE[member];
    if (since !== undefined && minor(since) > this.excelApi) {
      throw refusal('ApiNotFound', `${member} needs ExcelApi ${since}.`);
    }
  }

  async fire(event: string): Promise<void> {
    for (const handler of this.handlers.get(event) ?? []) await handler();
  }

  listeners(): number {
    return [...this.handlers.values()].reduce((sum, { size }) => sum + size, 0);
  }

  /** A value as its cell shows it, without a number format. */
  private shown(value: unknown): string {
    const text = String(value ?? '');
    return this.decimalComma && typeof value === 'number' ? text.replace('.', ',') : text;
  }

  private context() {
    const queue: (() => void)[] = [];
    const entries: Entry[] = [];
    const presence: (() => void)[] = [];
    // eslint-disable-next-line @typescript-eslint/no-this-alias -- the objects below are functions of their own
    const suite = this;

    /** An object in front of the model. */
    const front = (about: {
      read?: (path: string) => unknown;
      write?: (path: string, value: unknown) => void;
      methods?: Record<string, (...args: never[]) => unknown>;
      /** Objects that hang on it, among them those of which properties are loaded with a "/". */
      children?: Record<string, unknown>;
      exists?: () => boolean;
    }): never => {
      const { read, write, methods = {}, children = {}, exists } = about;
      const mock = new OfficeMockObject(undefined, 'excel' as never);
      const pending = new Set<string>();
      if (read) entries.push({ mock, pending, read });
      const loadAll = (names: string) => {
        for (const name of names.split(',').map((one) => one.trim())) {
          const [child, rest] = name.split('/');
          if (rest === undefined) pending.add(name);
          else if (child === 'items') pending.add('items');
          else (children[child!] as { load(names: string): unknown }).load(rest);
        }
      };
      let gone: boolean | undefined;
      if (exists) presence.push(() => (gone = !exists()));
      const proxy: never = new Proxy(
        {},
        {
          get: (_, property) => {
            if (PROMISED.has(property as string)) return undefined;
            const name = String(property);
            if (name === 'load') return (names: string) => (loadAll(names), proxy);
            if (name === 'isNullObject' && exists) {
              if (gone === undefined) throw new Error('isNullObject was read before context.sync().');
              return gone;
            }
            if (name === 'context') return context;
            if (Object.hasOwn(methods, name)) return methods[name];
            if (Object.hasOwn(children, name)) return children[name];
            const value = (mock as unknown as Values)[name];
            if (value === undefined && !Object.hasOwn(mock, name)) {
              throw new Error(`${name} was read before it was loaded, or the model does not know it.`);
            }
            if (typeof value === 'string' && /^Error, /.test(value)) throw new Error(`${name}: ${value}`);
            return value;
          },
          set: (_, property, value: unknown) => {
            if (!write) throw new Error(`${String(property)} cannot be set.`);
            queue.push(() => write(String(property), value));
            return true;
          },
        },
      ) as never;
      return proxy;
    };

    const rangeFront = (sheet: () => SheetModel, area: () => Area, exists?: () => boolean): never => {
      const cellsOf = () => {
        const { row, column, rows, columns } = area();
        return Array.from({ length: rows }, (_, r) =>
          Array.from({ length: columns }, (_, c) => sheet().cells.get(`${row + r},${column + c}`) ?? {}),
        );
      };
      const note = (path: string) => (property: string, value: unknown) => {
        refuseProtected(sheet());
        sheet().looks.push({ area: area(), path: `${path}${property}`, value });
      };
      const noting = (path: string, children: Record<string, unknown> = {}): never =>
        front({ write: note(`${path}.`), children });
      const borders = (path: string): never =>
        front({ methods: { getItem: (edge: string) => noting(`${path}.${edge}`) } });
      return front({
        ...(exists && { exists }),
        read: (path) => {
          if (exists && !exists()) return undefined;
          if (path === 'values')
            return cellsOf().map((row) => row.map((cell) => cell.value ?? (cell.formula ? 0 : '')));
          if (path === 'formulas') return cellsOf().map((row) => row.map((cell) => cell.formula ?? cell.value ?? ''));
          if (path === 'text') return cellsOf().map((row) => row.map((cell) => this.shown(cell.value)));
          if (path === 'valueTypes') {
            return cellsOf().map((row) => row.map(({ value }) => (/^#/.test(String(value)) ? 'Error' : typeof value)));
          }
          const { row, column, rows, columns } = area();
          const known: Values = { rowIndex: row, columnIndex: column, rowCount: rows, columnCount: columns };
          if (!(path in known)) throw new Error(`The model knows no ${path} of a range.`);
          return known[path];
        },
        write: (path, value) => {
          if (
            cellsOf()
              .flat()
              .some(({ locked }) => locked !== false)
          )
            refuseProtected(sheet());
          const { row, column, rows, columns } = area();
          const block = value as unknown[][];
          const single = block.length === 1 && block[0]?.length === 1;
          if (!single && (block.length !== rows || block.some((line) => line.length !== columns))) {
            throw refusal('InvalidArgument', `${block.length} × ${block[0]?.length} for ${rows} × ${columns} cells.`);
          }
          for (let r = 0; r < rows; r++) {
            for (let c = 0; c < columns; c++) {
              const given = single ? block[0]![0] : block[r]![c];
              // Nothing leaves a cell as it is.
              if (given === null) continue;
              const key = `${row + r},${column + c}`;
              const cell = sheet().cells.get(key) ?? {};
              if (path === 'numberFormat') cell.numberFormat = String(given);
              else if (path === 'values' || path === 'formulas') write(cell, given, suite.decimalComma);
              else throw new Error(`${path} of a range cannot be set in the model.`);
              sheet().cells.set(key, cell);
            }
          }
        },
        children: {
          worksheet: front({
            read: (path) => (path === 'name' ? sheet().name : sheet().id),
            children: { protection: front({ read: () => sheet().protected ?? false }) },
          }),
          format: noting('format', {
            font: noting('format.font'),
            fill: noting('format.fill'),
            borders: borders('format.borders'),
            protection: front({
              read: () => {
                const locks = new Set(
                  cellsOf()
                    .flat()
                    .map(({ locked = true }) => locked),
                );
                return locks.size > 1 ? null : [...locks][0];
              },
            }),
          }),
          dataValidation: front({
            write: note('dataValidation.'),
            methods: { clear: () => queue.push(() => dropLooks(sheet(), area(), /^dataValidation/)) },
          }),
          conditionalFormats: front({
            methods: {
              clearAll: () => queue.push(() => dropLooks(sheet(), area(), /^conditional/)),
              add: (kind: string) => {
                if (kind !== 'Custom') throw new Error(`The model has no conditional format ${kind}.`);
                return front({
                  children: {
                    custom: front({
                      children: {
                        rule: noting('conditional.rule'),
                        format: noting('conditional', {
                          fill: noting('conditional.fill'),
                          font: noting('conditional.font'),
                          borders: borders('conditional.borders'),
                        }),
                      },
                    }),
                  },
                });
              },
            },
          }),
        },
        methods: {
          select: () => queue.push(() => (suite.active = { sheet: sheet(), area: area() })),
          insert: (shift: string) =>
            queue.push(() => {
              refuseProtected(sheet());
              moveCells(suite.tables, sheet(), area(), shift === 'Down' ? 'Down' : 'Right', 1);
            }),
          delete: (shift: string) =>
            queue.push(() => {
              refuseProtected(sheet());
              moveCells(suite.tables, sheet(), area(), shift === 'Up' ? 'Down' : 'Right', -1);
            }),
          clear: (what: string) =>
            queue.push(() => {
              refuseProtected(sheet());
              if (what !== 'All' && what !== 'Formats') throw new Error(`The model clears no ${what}.`);
              dropLooks(sheet(), area(), /^format/);
              for (const [key, cell] of sheet().cells) {
                if (!isIn(key, area())) continue;
                if (what === 'All') sheet().cells.delete(key);
                else delete cell.numberFormat;
              }
            }),
          getRowsBelow: (count: number) =>
            rangeFront(sheet, () => {
              const { row, column, rows, columns } = area();
              return { row: row + rows, column, rows: count, columns };
            }),
          getUsedRangeOrNullObject: (valuesOnly: boolean) => {
            if (!valuesOnly) throw new Error('The model knows used cells of a range by their values only.');
            const used = () =>
              usedArea({
                cells: new Map([...sheet().cells].filter(([key, cell]) => isIn(key, area()) && holds(cell))),
              });
            return rangeFront(sheet, used, () => used().rows > 0);
          },
          getSpecialCellsOrNullObject: (kind: string) =>
            front({
              exists: () => specialCells(sheet(), kind) > 0,
              read: (path) => (path === 'cellCount' ? specialCells(sheet(), kind) : undefined),
            }),
          getSpillParentOrNullObject: () => {
            queue.push(() => suite.need('getSpillParentOrNullObject'));
            const parent = () => cellsOf()[0]?.[0]?.spilledFrom;
            return front({
              exists: () => parent() !== undefined,
              read: (path) => {
                const { row = 0, column = 0 } = parent() ?? {};
                if (path === 'formulas') return [[sheet().cells.get(`${row},${column}`)?.formula ?? '']];
                return path === 'rowIndex' ? row : column;
              },
              children: { worksheet: front({ read: () => sheet().name }) },
            });
          },
        },
      });
    };

    const worksheetFront = (find: () => SheetModel | undefined): never => {
      const sheet = () => {
        const found = find();
        if (!found) throw refusal('ItemNotFound', 'There is no such sheet.');
        return found;
      };
      const noted = (path: string, methods: readonly string[] = []): never =>
        front({
          write: (property, value) => (sheet().settings[`${path}.${property}`] = value),
          methods: Object.fromEntries(
            methods.map((name) => [
              name,
              (...args: unknown[]) => queue.push(() => (sheet().settings[`${path}.${name}`] = args)),
            ]),
          ),
        });
      return front({
        exists: () => find() !== undefined,
        read: (path) => (find() ? (sheet() as unknown as Values)[path] : undefined),
        write: (path, value) => {
          const one = sheet();
          if (path === 'name') {
            const taken = suite.sheets.find(({ name }) => name.toLowerCase() === String(value).toLowerCase());
            if (taken && taken !== one) throw refusal('ItemAlreadyExists', `There is a sheet ${value} already.`);
            suite.undoEnds.push('Worksheet.name');
            suite.rename(one, String(value));
          } else if (path === 'visibility') {
            suite.undoEnds.push('Worksheet.visibility');
            one.visibility = String(value);
          } else one.settings[path] = value;
        },
        children: {
          protection: front({ read: () => sheet().protected ?? false }),
          customProperties: front({
            methods: {
              add: (key: string, value: string) =>
                queue.push(() => {
                  suite.need('customProperties');
                  sheet().properties.set(key, value);
                }),
              getItemOrNullObject: (key: string) => {
                queue.push(() => suite.need('customProperties'));
                return front({
                  exists: () => find()?.properties.has(key) ?? false,
                  read: () => find()?.properties.get(key),
                });
              },
            },
          }),
          tables: front({
            read: (path) =>
              path === 'items'
                ? loadedItems(
                    () => suite.tables.filter((one) => one.sheet === find()),
                    (each) => tableFront(each),
                  )()
                : undefined,
            methods: {
              add: (range: never, hasHeaders: boolean) => {
                if (!hasHeaders) throw new Error('A table without headings.');
                let made: TableModel | undefined;
                queue.push(() => {
                  made = suite.addTable(sheet(), `Table${suite.next}`, areas.get(range)!());
                });
                return tableFront(() => made);
              },
            },
          }),
          freezePanes: noted('freezePanes', ['freezeAt', 'freezeRows', 'freezeColumns', 'unfreeze']),
          pageLayout: front({
            write: (property, value) => (sheet().settings[`pageLayout.${property}`] = value),
            methods: {
              setPrintMargins: (...args: unknown[]) => queue.push(() => (sheet().settings['margins'] = args)),
              setPrintTitleRows: (rows: string) => queue.push(() => (sheet().settings['titleRows'] = rows)),
            },
            children: { headersFooters: front({ children: { defaultForAllPages: noted('foot') } }) },
          }),
        },
        methods: {
          getRange: (address?: string) =>
            remembered(sheet, () => {
              if (address === undefined) return { row: 0, column: 0, rows: 1_048_576, columns: 16_384 };
              const [from, to] = address.split(':').map(Number) as [number, number];
              return { row: from - 1, column: 0, rows: to - from + 1, columns: 16_384 };
            }),
          getUsedRangeOrNullObject: () =>
            rangeFront(
              sheet,
              () => usedArea(sheet()),
              () => sheet().cells.size > 0,
            ),
          getRangeByIndexes: (row: number, column: number, rows: number, columns: number) => {
            if (![row, column].every((n) => n >= 0) || !(rows > 0) || !(columns > 0)) {
              throw new Error(`No range is at ${row}, ${column}, ${rows} × ${columns}.`);
            }
            return remembered(sheet, () => ({ row, column, rows, columns }));
          },
          activate: () =>
            queue.push(() => (suite.active = { sheet: sheet(), area: { row: 0, column: 0, rows: 1, columns: 1 } })),
          delete: () =>
            queue.push(() => {
              const one = sheet();
              const visible = suite.sheets.filter(({ visibility }) => visibility === 'Visible');
              if (visible.length === 1 && visible[0] === one) {
                throw refusal('InvalidOperation', 'A workbook keeps at least one visible sheet.');
              }
              suite.undoEnds.push('Worksheet.delete');
              suite.sheets.splice(suite.sheets.indexOf(one), 1);
              suite.lose(one);
              for (const table of suite.tables.filter((each) => each.sheet === one)) suite.removeTable(table);
            }),
        },
      });
    };
    const areas = new Map<unknown, () => Area>();
    const remembered = (sheet: () => SheetModel, area: () => Area) => {
      const range = rangeFront(sheet, area);
      areas.set(range, area);
      return range;
    };

    const tableFront = (find: () => TableModel | undefined): never => {
      const table = () => {
        const found = find();
        if (!found) throw refusal('ItemNotFound', 'There is no such table.');
        return found;
      };
      return front({
        exists: () => find() !== undefined,
        read: (path) => (find() ? (table() as unknown as Values)[path] : undefined),
        write: (path, value) => {
          if (path !== 'name') {
            table().settings[path] = value;
            return;
          }
          const same = (one: string) => one.toLowerCase() === String(value).toLowerCase();
          if (suite.tables.some((one) => one !== table() && same(one.name)) || suite.names.some(same)) {
            throw refusal('InvalidArgument', `The name ${value} is taken.`);
          }
          suite.rename(table(), String(value));
        },
        methods: {
          convertToRange: () => queue.push(() => suite.removeTable(table())),
          resize: (range: never) =>
            queue.push(() => {
              suite.need('resize');
              const wanted = areas.get(range)!();
              const { row, column, columns } = table().area;
              const overlaps = wanted.column < column + columns && column < wanted.column + wanted.columns;
              if (wanted.row !== row || !overlaps)
                throw refusal('InvalidArgument', 'A table keeps its row of headings.');
              table().area = wanted;
            }),
          getRange: () =>
            rangeFront(
              () => table().sheet,
              () => table().area,
            ),
        },
      });
    };

    const collection = (items: () => never[], more: object = {}): never =>
      front({ read: (path) => (path === 'items' ? items() : undefined), ...more });

    const loadedItems = <T>(list: () => readonly T[], make: (find: () => T) => never) => {
      // Items come with what was asked of them.
      return () =>
        list().map((one) => {
          const item = make(() => one) as { load(names: string): unknown };
          item.load('id, name');
          return item;
        }) as never[];
    };

    const event = (name: string) => ({
      add: (handler: () => Promise<void>) => {
        queue.push(() => {
          suite.need(name);
          const set = this.handlers.get(name) ?? new Set();
          this.handlers.set(name, set.add(handler));
        });
        return { context, remove: () => queue.push(() => this.handlers.get(name)?.delete(handler)) };
      },
    });

    const workbook = front({
      children: {
        application: front({
          read: () => suite.calculationMode,
          methods: { suspendApiCalculationUntilNextSync: () => queue.push(() => suite.suspended++) },
        }),
        worksheets: collection(
          loadedItems(
            () => suite.sheets,
            (find) => worksheetFront(find),
          ),
          {
            children: Object.fromEntries(
              ['onSelectionChanged', 'onActivated', 'onChanged', 'onCalculated', 'onDeleted', 'onNameChanged'].map(
                (name) => [name, event(name)],
              ),
            ),
            methods: {
              add: (name: string) => {
                let made: SheetModel | undefined;
                queue.push(() => {
                  made = suite.addSheet(name);
                });
                return worksheetFront(() => made);
              },
              ...Object.fromEntries(
                ['getItem', 'getItemOrNullObject'].map((method) => [
                  method,
                  (key: string) =>
                    worksheetFront(() => suite.sheets.find(({ id, name }) => id === key || name === key)),
                ]),
              ),
            },
          },
        ),
        tables: collection(
          loadedItems(
            () => suite.tables,
            (find) => tableFront(find),
          ),
          {
            methods: {
              getItemOrNullObject: (key: string) =>
                tableFront(() => suite.tables.find(({ id, name }) => id === key || name === key)),
            },
          },
        ),
        names: collection(
          loadedItems(
            () => suite.names.map((name) => ({ name })),
            (find) => front({ read: (path) => (find() as Values)[path] }),
          ),
        ),
        functions: front({
          methods: {
            date: (year: number, month: number, day: number) =>
              front({ read: () => dayNumber(year, month, day) - (suite.from1904 ? DAYS_TO_1904 : 0) }),
          },
        }),
        settings: front({
          methods: {
            getItemOrNullObject: (key: string) =>
              front({
                exists: () => suite.settings.has(key),
                read: () => suite.settings.get(key),
              }),
            add: (key: string, value: unknown) =>
              queue.push(() => suite.settings.set(key, JSON.parse(JSON.stringify(value)))),
          },
        }),
      },
      methods: {
        getActiveCell: () => remembered(activeSheet, () => ({ ...activeArea(), rows: 1, columns: 1 })),
        getSelectedRanges: () =>
          front({ children: { areas: front({ methods: { getItemAt: () => rangeFront(activeSheet, activeArea) } }) } }),
      },
    });
    const activeSheet = () => {
      if (!suite.active) throw refusal('InvalidSelection', 'No cell is selected.');
      return suite.active.sheet;
    };
    const activeArea = () => {
      if (!suite.active) throw refusal('InvalidSelection', 'No cell is selected.');
      return suite.active.area;
    };

    const context = {
      workbook,
      sync: async () => {
        suite.syncs++;
        const { refuse } = suite;
        suite.refuse = undefined;
        if (refuse) throw refusal(refuse, 'The suite refuses.');
        for (const change of queue.splice(0)) change();
        for (const tell of presence) tell();
        // Twice, because the items of a collection are loaded in the same exchange.
        for (let round = 0; round < 2; round++) {
          for (const { mock, pending, read } of entries.filter((entry) => entry.pending.size > 0)) {
            const shown = mock as unknown as { setValue(name: string, value: unknown): void };
            for (const name of pending) {
              shown.setValue(name, read(name));
              mock.load(name);
            }
            pending.clear();
            await mock.sync();
          }
        }
        // The account keeper shows what it has after its own promises.
        await new Promise((resolve) => setTimeout(resolve));
      },
    };
    return context;
  }
}

/** The box about all cells that hold anything. */
function usedArea({ cells }: Pick<SheetModel, 'cells'>): Area {
  if (cells.size === 0) return { row: 0, column: 0, rows: 0, columns: 0 };
  const places = [...cells.keys()].map((key) => key.split(',').map(Number) as [row: number, column: number]);
  const [rows, columns] = [places.map(([row]) => row), places.map(([, column]) => column)];
  const [row, column] = [Math.min(...rows), Math.min(...columns)];
  return { row, column, rows: Math.max(...rows) - row + 1, columns: Math.max(...columns) - column + 1 };
}

/**
 * Since which set of ExcelApi the suite has what the host uses beyond 1.1 (Excel JavaScript API requirement sets, as the
 * type declarations of office-js name them at each member).
 */
const SINCE: Readonly<Record<string, string>> = {
  onActivated: '1.7',
  onDeleted: '1.7',
  onCalculated: '1.8',
  onSelectionChanged: '1.9',
  onChanged: '1.9',
  getSpillParentOrNullObject: '1.12',
  customProperties: '1.12',
  resize: '1.13',
  onNameChanged: '1.17',
};

/** Second number of a version: 1.12 is newer than 1.9. */
function minor(version: string): number {
  return Number(version.split('.')[1]);
}

function refusal(code: string, message: string): Error {
  return Object.assign(new Error(message), { code, name: 'RichApi.Error' });
}

/** Between the two ways in which workbooks count days: "XL: The 1900 date system vs. the 1904 date system", its maker. */
const DAYS_TO_1904 = 1462;

function dayNumber(year: number, month: number, day: number): number {
  return (Date.UTC(year, month - 1, day) - Date.UTC(1899, 11, 30)) / 86_400_000;
}

function refuseProtected({ name, protected: held = false }: SheetModel): void {
  if (held) throw refusal('AccessDenied', `The sheet ${name} is protected.`);
}

/** As if typed: what an apostrophe stands before is text. */
function write(cell: CellModel, given: unknown, decimalComma: boolean): void {
  delete cell.formula;
  delete cell.value;
  if (given === '') return;
  if (typeof given === 'string' && given.startsWith('=')) cell.formula = given;
  else if (typeof given === 'string' && given.startsWith("'")) cell.value = given.slice(1);
  else {
    const typed = typeof given === 'string' && given.trim() !== '' ? numberTyped(given, decimalComma) : undefined;
    cell.value = typed ?? given;
  }
}

/** The number that a text is taken for where it is typed; with a decimal comma, points set off thousands or parts of a day. */
function numberTyped(text: string, decimalComma: boolean): number | undefined {
  if (decimalComma && text.includes('.')) return undefined;
  const number = Number(decimalComma ? text.replace(',', '.') : text);
  return Number.isFinite(number) ? number : undefined;
}

function specialCells(sheet: SheetModel, kind: string): number {
  return [...sheet.cells.values()].filter(({ formula, value, spilledFrom }) =>
    kind === 'Formulas' ? formula !== undefined : formula === undefined && value !== undefined && !spilledFrom,
  ).length;
}

function isIn(key: string, { row, column, rows, columns }: Area): boolean {
  const [r, c] = key.split(',').map(Number) as [number, number];
  return r >= row && r < row + rows && c >= column && c < column + columns;
}

function holds({ value, formula }: CellModel): boolean {
  return formula !== undefined || (value !== undefined && value !== '');
}

/** Moves cells for whole rows or columns that come (1) or go (−1); tables and what lies in them go along. */
function moveCells(
  tables: readonly TableModel[],
  sheet: SheetModel,
  { row, column, rows, columns }: Area,
  way: 'Down' | 'Right',
  sign: 1 | -1,
): void {
  const down = way === 'Down';
  const [at, count] = down ? [row, rows] : [column, columns];
  if ((down ? columns : rows) < 10_000) throw new Error('The model moves whole rows and columns only.');
  const shifted = (place: number) => (place < at ? place : place + sign * count);
  const gone = (place: number) => sign < 0 && place >= at && place < at + count;
  const cells = [...sheet.cells].flatMap(([key, cell]) => {
    const [r, c] = key.split(',').map(Number) as [number, number];
    if (gone(down ? r : c)) return [];
    return [[down ? `${shifted(r)},${c}` : `${r},${shifted(c)}`, cell] as const];
  });
  sheet.cells.clear();
  for (const [key, cell] of cells) sheet.cells.set(key, cell);
  for (const table of tables.filter((one) => one.sheet === sheet)) {
    const { area } = table;
    const [start, size] = down ? [area.row, area.rows] : [area.column, area.columns];
    if (gone(start)) throw new Error('The model takes no headings of tables away.');
    const lost = Array.from({ length: size }, (_, i) => start + i).filter(gone).length;
    const grown = sign > 0 && at > start && at < start + size ? count : 0;
    const moved = sign > 0 && at <= start ? start + count : shifted(start);
    const length = size + grown - lost;
    // The suite heads what is inserted into a table itself.
    for (let i = 0; !down && i < grown; i++) sheet.cells.set(`${area.row},${at + i}`, { value: `Column${i + 1}` });
    table.area = down ? { ...area, row: moved, rows: length } : { ...area, column: moved, columns: length };
  }
}

/** Where formulas name a sheet or a table, with what stands before and after the name. */
function calls(what: SheetModel | TableModel, name: string): RegExp {
  const literal = name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  return 'cells' in what ? new RegExp(`(^|[^\\w'])'?${literal}'?(!)`, 'g') : new RegExp(`(^|\\W)${literal}(\\[)`, 'g');
}

/** Takes what was set of looks away from an area, where nothing of it reaches beyond. */
function dropLooks(sheet: SheetModel, area: Area, path: RegExp): void {
  const within = (look: Area) =>
    isIn(`${look.row},${look.column}`, area) &&
    isIn(`${look.row + look.rows - 1},${look.column + look.columns - 1}`, area);
  sheet.looks = sheet.looks.filter((look) => !path.test(look.path) || !within(look.area));
}
