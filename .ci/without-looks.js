import ts from 'typescript';

/** The name of a property, where it is a plain one. */
const nameOf = (property) => (property.name && ts.isIdentifier(property.name) ? property.name.text : '');

/** How a column looks on a sheet. A value of another kind belongs to something else of that name, such as a column itself. */
const LOOKS = {
  width: (value) => ts.isNumericLiteral(value),
  format: (value) => ts.isStringLiteral(value),
  align: (value) => ts.isStringLiteral(value),
  wraps: (value) => value.kind === ts.SyntaxKind.TrueKeyword,
};

/** What is said where an input table has no rows stands beside the argument that it is. */
const isShown = (properties) => properties.some((one) => nameOf(one) === 'argument');

/**
 * Leaves out of src/tables what its columns and tables mean, what they may hold and how they look, for a bundle that reads and writes cells and shows
 * nobody either.
 * @type {ts.TransformerFactory<ts.SourceFile>}
 */
export const withoutLooks = (context) => (file) => {
  if (!/[\\/]src[\\/]tables[\\/]/.test(file.fileName)) return file;
  const visit = (node) => {
    const seen = ts.visitEachChild(node, visit, context);
    if (!ts.isObjectLiteralExpression(seen)) return seen;
    const { properties } = seen;
    const shown = isShown(properties);
    const kept = properties.filter((one) => {
      const name = nameOf(one);
      if (!ts.isPropertyAssignment(one)) return name !== 'meaning';
      if (name === 'bounds') return false;
      return name === 'meaning' ? shown : !(Object.hasOwn(LOOKS, name) && LOOKS[name](one.initializer));
    });
    return kept.length === properties.length ? seen : context.factory.updateObjectLiteralExpression(seen, kept);
  };
  return ts.visitNode(file, visit);
};
