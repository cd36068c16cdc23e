import ts from 'typescript';

/** Whether a function is about a node: what stands outside of all is left alone, since the engine takes its constants as such. */
const isWithinFunction = (node) => ts.findAncestor(node.parent, ts.isFunctionLike) !== undefined;

/**
 * Declares what functions have of their own with the shorter word, which packs better beside what is declared so anyway:
 * the compiler has seen to it that no constant is set again.
 * @type {ts.TransformerFactory<ts.SourceFile>}
 */
export const shortWords = (context) => (file) => {
  const visit = (node) => {
    const seen = ts.visitEachChild(node, visit, context);
    const constant = ts.isVariableDeclarationList(seen) && (node.flags & ts.NodeFlags.Const) !== 0;
    if (!constant || (node.flags & ts.NodeFlags.Using) === ts.NodeFlags.Using || !isWithinFunction(node)) return seen;
    return context.factory.createVariableDeclarationList(seen.declarations, ts.NodeFlags.Let);
  };
  return ts.visitNode(file, visit);
};

/**
 * Leaves out that a class has fields where its constructor sets them first of all from what it is called with: they come to be
 * by that, in the same order.
 * @type {ts.TransformerFactory<ts.SourceFile>}
 */
export const withoutSetFields = (context) => (file) => {
  const set = (node) => {
    const parameters = ts.getOriginalNode(node).members?.find(ts.isConstructorDeclaration)?.parameters ?? [];
    return new Set(
      parameters.filter((one) => ts.isParameterPropertyDeclaration(one, one.parent)).map(({ name }) => name.text),
    );
  };
  const visit = (node) => {
    const seen = ts.visitEachChild(node, visit, context);
    if (!ts.isClassDeclaration(seen)) return seen;
    const names = set(node);
    const members = seen.members.filter(
      (one) =>
        !(ts.isPropertyDeclaration(one) && !one.initializer && ts.isIdentifier(one.name) && names.has(one.name.text)),
    );
    const { modifiers, name, typeParameters, heritageClauses } = seen;
    return context.factory.updateClassDeclaration(seen, modifiers, name, typeParameters, heritageClauses, members);
  };
  return ts.visitNode(file, visit);
};
