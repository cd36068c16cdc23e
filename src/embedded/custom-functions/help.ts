import { BooleanNumber } from '@univerjs/core';
import { FunctionType, type IFunctionInfo } from '@univerjs/engine-formula';
import type { IDescriptionService } from '@univerjs/sheets-formula';
import type { EnumMetadata, FunctionMetadata, Metadata, ParameterMetadata } from './metadata';

/** What the grid shows of a function while its formula is typed. */
export function helpFor(namespace: string, metadata: FunctionMetadata, enums: Metadata['enums'] = []): IFunctionInfo {
  const description = metadata.description ?? '';
  return {
    functionName: `${namespace}.${metadata.name}`,
    functionType: FunctionType.User,
    description,
    abstract: description,
    functionParameter: metadata.parameters.map((parameter) => ({
      name: parameter.name,
      detail: [parameter.description, choices(enums.find(({ id }) => id === parameter.customEnumId))]
        .filter(Boolean)
        .join(' '),
      example: example(parameter),
      require: parameter.optional || parameter.repeating ? BooleanNumber.FALSE : BooleanNumber.TRUE,
      repeat: parameter.repeating ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    })),
  };
}

function choices(found: EnumMetadata | undefined): string {
  if (!found) return '';
  return `One of ${found.values.map(({ stringValue, numberValue, name }) => stringValue ?? numberValue ?? name).join(', ')}.`;
}

/** The grid shows a call made of examples; references say what kind of argument is meant without making up a number. */
function example({ dimensionality }: ParameterMetadata): string {
  return dimensionality === 'matrix' ? 'A1:D9' : 'A1';
}

/** Offers a function whose own name is typed, as if its namespace had been typed before it. */
export function offerWithoutNamespace(service: IDescriptionService, namespace: string): void {
  const offered = service.getSearchListByNameFirstLetter.bind(service);
  service.getSearchListByNameFirstLetter = (text) => {
    const typed = text.trim();
    return typed === '' ? offered(text) : [...offered(`${namespace}.${typed}`), ...offered(text)];
  };
}
