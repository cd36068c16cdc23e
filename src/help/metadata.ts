/** What functions.json says of a function and of the words of its arguments. */
export interface DescribedFunction {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly parameters: readonly DescribedParameter[];
  readonly result: { readonly type?: string; readonly dimensionality?: string };
}

export interface DescribedParameter {
  readonly name: string;
  readonly description: string;
  readonly optional?: boolean;
  readonly dimensionality?: string;
  readonly customEnumId?: string;
}

export interface Description {
  readonly functions: readonly DescribedFunction[];
  readonly enums?: readonly {
    readonly id: string;
    readonly values: readonly { readonly stringValue: string; readonly tooltip?: string }[];
  }[];
}

/** The page of a function in the help's folder. */
export function pageOf(name: string): string {
  return `${name.toLowerCase()}.html`;
}

/** A function with its arguments, those that may be left out in brackets. */
export function signature({ name, parameters }: DescribedFunction, between = ', '): string {
  return `${name}(${parameters.map((one) => (one.optional ? `[${one.name}]` : one.name)).join(between)})`;
}
