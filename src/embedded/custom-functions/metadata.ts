/** What functions.json says of a parameter. */
export interface ParameterMetadata {
  readonly name: string;
  readonly description?: string;
  readonly type?: string;
  /** "matrix" for a range, which arrives as rows of cells. */
  readonly dimensionality?: string;
  readonly optional?: boolean;
  /** The last parameter may stand for any number of arguments; they arrive as one list. */
  readonly repeating?: boolean;
  readonly customEnumId?: string;
}

/** What functions.json says of a function. */
export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description?: string;
  readonly helpUrl?: string;
  readonly parameters: readonly ParameterMetadata[];
  readonly options?: {
    readonly cancelable?: boolean;
    readonly requiresAddress?: boolean;
    readonly requiresParameterAddresses?: boolean;
    readonly stream?: boolean;
    readonly volatile?: boolean;
    readonly excludeFromAutoComplete?: boolean;
  };
}

/** The words or numbers that a parameter takes. */
export interface EnumMetadata {
  readonly id: string;
  readonly values: readonly {
    readonly name: string;
    readonly stringValue?: string;
    readonly numberValue?: number;
    readonly tooltip?: string;
  }[];
}

/** The content of functions.json. */
export interface Metadata {
  readonly functions: readonly FunctionMetadata[];
  readonly enums?: readonly EnumMetadata[];
}

/** How many arguments a function takes; the greatest is infinite where its last parameter repeats. */
export function argumentCount({ parameters }: FunctionMetadata): { readonly least: number; readonly most: number } {
  return {
    least: parameters.filter(({ optional, repeating }) => !optional && !repeating).length,
    most: parameters.some(({ repeating }) => repeating) ? Infinity : parameters.length,
  };
}
