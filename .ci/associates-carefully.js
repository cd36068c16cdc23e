import ts from 'typescript';

/** The files whose functions are given to the host; what gives them stands beside them. */
const FUNCTIONS = /[\\/]src[\\/]functions[\\/][^\\/]+\.ts$/;
const OWN = 'associate';

/** Whether a statement is a call of the host's own `associate`, as the metadata's plugin appends it. */
const associates = (statement) =>
  ts.isExpressionStatement(statement) &&
  ts.isCallExpression(statement.expression) &&
  statement.expression.expression.getText() === 'CustomFunctions.associate';

/**
 * Puts src/functions/associate.ts in the place of the host's own `associate`: it takes care of the host's calls before they reach
 * the functions. It is imported as any other file, so that webpack can join all files in one scope; what its ProvidePlugin
 * puts in, and whatever that needs, stays apart.
 * @type {ts.TransformerFactory<ts.SourceFile>}
 */
export const associatesCarefully = (context) => (file) => {
  if (!FUNCTIONS.test(file.fileName) || !file.statements.some(associates)) return file;
  const { factory } = context;
  const statements = file.statements.map((statement) => {
    if (!associates(statement)) return statement;
    const call = factory.createCallExpression(factory.createIdentifier(OWN), [], statement.expression.arguments);
    return factory.updateExpressionStatement(statement, call);
  });
  const named = factory.createImportSpecifier(false, undefined, factory.createIdentifier(OWN));
  const clause = factory.createImportClause(undefined, undefined, factory.createNamedImports([named]));
  const imported = factory.createImportDeclaration(undefined, clause, factory.createStringLiteral(`./${OWN}`));
  return factory.updateSourceFile(file, [imported, ...statements]);
};
