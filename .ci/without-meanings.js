import ts from 'typescript';

/** The name of a property, where it is a plain one. */
const nameOf = (property) => (property.name && ts.isIdentifier(property.name) ? property.name.text : '');

/**
 * Leaves out of src/tables what its columns mean, for a bundle that reads and writes cells and shows nobody those words:
 * `meaning` wherever it stands beside a `heading`.
 * @type {ts.TransformerFactory<ts.SourceFile>}
 */
export const withoutMeanings = (context) => (file) => {
  if (!/[\\/]src[\\/]tables[\\/]/.test(file.fileName)) return file;
  const visit = (node) => {
    const seen = ts.visitEachChild(node, visit, context);
    if (!ts.isObjectLiteralExpression(seen)) return seen;
    const { properties } = seen;
    if (!properties.some((one) => nameOf(one) === 'heading')) return seen;
    const kept = properties.filter((one) => nameOf(one) !== 'meaning');
    return kept.length === properties.length ? seen : context.factory.updateObjectLiteralExpression(seen, kept);
  };
  return ts.visitNode(file, visit);
};
