import { readFileSync } from 'node:fs';
import { transformSync } from 'esbuild';
import ts from 'typescript';
import { shortWords } from './short-words.js';

/** Where the polygon library stands, the files of it that are in use, and the one file that calls them. */
const LIBRARY = 'node_modules/clipper2-ts/dist';
const FILES = ['Core.js', 'Engine.js', 'Offset.js'];
export const CALLER = 'src/core/geometry/regions.ts';

/** What always holds since the caller hands over closed rings without heights, and asks for rings, not for a tree of them. */
const ALWAYS = {
  isOpen: false,
  isOpenEnd: false,
  isOpenEndVertex: false,
  hasOpenPaths: false,
  usingPolytree: false,
  isArray: true,
  deltaCallback: null,
  solutionTree: null,
};
/** What is called or set for heights alone. */
const HEIGHTS = ['setZ', 'zCallback'];
/** Corners that the caller never asks for, and the two places of a corner, which are one only where a line ends. */
const NO_CORNER = 'JoinType.Bevel';
const ONE_PLACE = 'j === k';
/** Ends of rings are all of one kind. */
const END = { of: 'endType', kind: 'EndType.Polygon', kinds: /^EndType\.\w+$/ };

/** Names of properties that JavaScript itself has, of whatever the library uses, and by which points come and go. */
const GIVEN = [Object, Array, Set, Map, Math, Number, BigInt, String, Function, Error].flatMap((one) => [
  ...Object.getOwnPropertyNames(one),
  ...Object.getOwnPropertyNames(one.prototype ?? {}),
]);
const POINT = ['x', 'y', 'z'];

const { factory, SyntaxKind: kind } = ts;
const parsed = (text) => ts.createSourceFile('library.js', text, ts.ScriptTarget.ES2022, true);
const printed = (file) => ts.createPrinter({ removeComments: true }).printFile(file);

/** A text of which every node has been put as `change` says, from within outwards. */
function changed(text, change) {
  const { transformed } = ts.transform(parsed(text), [
    (context) => (file) => {
      const visit = (node) => change(node, (inner) => ts.visitEachChild(inner, visit, context));
      return ts.visitEachChild(file, visit, context);
    },
  ]);
  return printed(transformed[0]);
}

/** The name by which an expression calls or reads something. */
const nameOf = (node) =>
  ts.isPropertyAccessExpression(node) ? node.name.text : ts.isIdentifier(node) ? node.text : '';
const isSet = (node) => ts.isBinaryExpression(node) && node.operatorToken.kind === kind.EqualsToken;
const isRead = (node) => !(isSet(node.parent) && node.parent.left === node) && node.parent.name !== node;

const literal = (value) =>
  value === null ? factory.createNull() : value ? factory.createTrue() : factory.createFalse();
const LITERALS = new Map([
  [kind.TrueKeyword, true],
  [kind.FalseKeyword, false],
  [kind.NullKeyword, null],
]);

/** Puts what always holds in its place, and leaves out what then never comes to work. */
const withFacts = (text) =>
  changed(text, (node, within) => {
    if (ts.isExpressionStatement(node)) {
      const { expression } = node;
      const of = ts.isCallExpression(expression) ? expression.expression : isSet(expression) ? expression.left : node;
      if (HEIGHTS.includes(nameOf(of))) return factory.createEmptyStatement();
    }
    const read = ts.isCallExpression(node) ? node.expression : node;
    if (Object.hasOwn(ALWAYS, nameOf(read)) && isRead(node)) return literal(ALWAYS[nameOf(read)]);
    if (ts.isBinaryExpression(node) && nameOf(node.left) === END.of && END.kinds.test(node.right.getText())) {
      if (node.operatorToken.kind === kind.EqualsEqualsEqualsToken) return literal(node.right.getText() === END.kind);
    }
    if (ts.isBinaryExpression(node) && node.getText() === ONE_PLACE) return factory.createFalse();
    if (ts.isCaseClause(node) && node.expression.getText() === NO_CORNER) return undefined;
    if (ts.isSwitchStatement(node) && nameOf(node.expression) === END.of) {
      const [one] = node.caseBlock.clauses.filter((each) => each.expression?.getText() === END.kind);
      return factory.createBlock(one?.statements.filter((each) => !ts.isBreakStatement(each)).map(within) ?? []);
    }
    return folded(within(node));
  });

/** A node without what its known parts decide. */
function folded(node) {
  const known = (one) => LITERALS.get(one.kind);
  if (ts.isParenthesizedExpression(node)) return known(node.expression) === undefined ? node : node.expression;
  if (ts.isPrefixUnaryExpression(node) && node.operator === kind.ExclamationToken) {
    return known(node.operand) === undefined ? node : literal(!known(node.operand));
  }
  if (ts.isConditionalExpression(node)) {
    const is = known(node.condition);
    return is === undefined ? node : is ? node.whenTrue : node.whenFalse;
  }
  if (ts.isIfStatement(node)) {
    const is = known(node.expression);
    return is === undefined ? node : ((is ? node.thenStatement : node.elseStatement) ?? factory.createEmptyStatement());
  }
  return ts.isBinaryExpression(node) ? foldedOf(node, known(node.left), known(node.right)) : node;
}

function foldedOf(node, left, right) {
  switch (node.operatorToken.kind) {
    case kind.AmpersandAmpersandToken:
      if (left !== undefined) return left ? node.right : node.left;
      return right === false && nameOf(node.left) ? node.right : node;
    case kind.BarBarToken:
      return left !== undefined ? (left ? node.left : node.right) : right === false ? node.left : node;
    case kind.ExclamationEqualsEqualsToken:
      return left === undefined || right === undefined ? node : literal(left !== right);
    default:
      return node;
  }
}

/** Numbers of enumerations: each with its name and that of the enumeration. */
const numbersIn = (text) => [...text.matchAll(/\b(\w+)\[\1\["(\w+)"\] = (\d+)\]/g)].map(([, ...found]) => found);

/** Of enumerations, once their numbers stand in the place of their names, leaves what the caller names. */
function withoutEnumerations(texts, asked) {
  const found = texts.flatMap(numbersIn);
  const known = (name) => found.some(([of]) => of === name);
  return texts.map((text) =>
    changed(text, (node, within) => {
      if (ts.isImportSpecifier(node) && known(node.name.text) && !asked.others.has(node.name.text)) return undefined;
      if (ts.isVariableStatement(node)) {
        const of = node.declarationList.declarations[0].name.text;
        return known(of) ? (asked.others.has(of) ? enumeration(of, found, asked.properties) : undefined) : within(node);
      }
      const filler =
        ts.isExpressionStatement(node) && ts.isCallExpression(node.expression) && node.expression.expression;
      const fills = filler && ts.isParenthesizedExpression(filler) && filler.expression.parameters?.[0];
      return fills && known(fills.name.text) ? undefined : within(node);
    }),
  );
}

function enumeration(of, found, asked) {
  const numbers = found.filter(([own, name]) => own === of && asked.has(name));
  const properties = numbers.map(([, name, number]) =>
    factory.createPropertyAssignment(name, factory.createNumericLiteral(number)),
  );
  const object = factory.createVariableDeclaration(
    of,
    undefined,
    undefined,
    factory.createObjectLiteralExpression(properties),
  );
  const exported = [factory.createModifier(kind.ExportKeyword)];
  return factory.createVariableStatement(exported, factory.createVariableDeclarationList([object], ts.NodeFlags.Const));
}

/** Puts the numbers of enumerations in the place of their names. */
function withNumbers(texts) {
  const numbers = new Map();
  for (const [of, name, number] of texts.flatMap(numbersIn)) numbers.set(`${of}.${name}`, number);
  return texts.map((text) =>
    changed(text, (node, within) => {
      const number = ts.isPropertyAccessExpression(node) ? numbers.get(node.getText()) : undefined;
      return number === undefined ? within(node) : factory.createNumericLiteral(number);
    }),
  );
}

/** The namespace that a statement fills, with what it has: functions by their names, and plain values. */
function filledBy(statement) {
  const call = ts.isExpressionStatement(statement) && statement.expression;
  if (!call || !ts.isCallExpression(call) || !ts.isParenthesizedExpression(call.expression)) return undefined;
  const { parameters, body } = call.expression.expression;
  const members = body.statements.map((one) => {
    if (ts.isFunctionDeclaration(one)) return { name: one.name.text, called: one };
    const { left, right } = ts.isExpressionStatement(one) && isSet(one.expression) ? one.expression : {};
    // NAMESPACE.member = member hands out a function; an enumeration names by [ ].
    return left && ts.isPropertyAccessExpression(left) && { name: left.name.text, value: right };
  });
  return members.every(Boolean) ? { of: parameters[0].name.text, members } : undefined;
}

/** Puts functions of their own in the place of namespaces that hold them, so that those nobody calls can go, and names are short. */
function withoutNamespaces(texts) {
  const spaces = texts.flatMap((text) => parsed(text).statements.flatMap((one) => filledBy(one) ?? []));
  const names = new Map(spaces.map(({ of, members }) => [of, new Set(members.map(({ name }) => name))]));
  const own = (of, name) => `${of}_${name}`;
  /** @param within the namespace whose functions call each other by their names alone */
  const named = (node, within, into) => {
    if (ts.isPropertyAccessExpression(node) && ts.isIdentifier(node.expression)) {
      const of = node.expression.text;
      if (names.get(of)?.has(node.name.text)) return factory.createIdentifier(own(of, node.name.text));
    }
    const calls = ts.isIdentifier(node) && ts.isCallExpression(node.parent) && node.parent.expression === node;
    if (calls && names.get(within)?.has(node.text)) return factory.createIdentifier(own(within, node.text));
    return into(node);
  };
  const exported = [factory.createModifier(kind.ExportKeyword)];
  const flat = (statement) => {
    if (ts.isImportDeclaration(statement)) {
      const { elements } = statement.importClause.namedBindings;
      const all = elements.flatMap(({ name: { text } }) => [...(names.get(text) ?? [])].map((name) => own(text, name)));
      const kept = elements.filter(({ name }) => !names.has(name.text)).map(({ name }) => name.text);
      const specifiers = [...kept, ...all].map((name) =>
        factory.createImportSpecifier(false, undefined, factory.createIdentifier(name)),
      );
      const clause = factory.createImportClause(undefined, undefined, factory.createNamedImports(specifiers));
      return [factory.createImportDeclaration(undefined, clause, statement.moduleSpecifier)];
    }
    const declared = ts.isVariableStatement(statement) && statement.declarationList.declarations[0].name.text;
    if (names.has(declared)) return [];
    const filled = filledBy(statement);
    if (!filled) return [renamed(statement)];
    return filled.members.flatMap(({ name, called: work, value }) => {
      if (work) {
        const { parameters, body } = renamed(work, filled.of);
        const called = factory.createIdentifier(own(filled.of, name));
        return [factory.createFunctionDeclaration(exported, undefined, called, undefined, parameters, undefined, body)];
      }
      if (ts.isIdentifier(value) && value.text === name) return [];
      const made = renamed(value, filled.of);
      const constant = factory.createVariableDeclaration(own(filled.of, name), undefined, undefined, made);
      return [
        factory.createVariableStatement(
          exported,
          factory.createVariableDeclarationList([constant], ts.NodeFlags.Const),
        ),
      ];
    });
  };
  const renamed = (node, within) => {
    const { transformed } = ts.transform(node, [
      (context) => (root) => {
        const visit = (one) => named(one, within, (inner) => ts.visitEachChild(inner, visit, context));
        return visit(root);
      },
    ]);
    return transformed[0];
  };
  return texts.map((text) => {
    const file = parsed(text);
    return printed(factory.updateSourceFile(file, file.statements.flatMap(flat)));
  });
}

/** All names that are read in some texts: those of properties, and all others but where they stand in what they name. */
function namesRead(texts) {
  const read = { properties: new Set(), others: new Set() };
  const look = (node, within) => {
    if (ts.isPropertyAccessExpression(node) && isRead(node)) read.properties.add(node.name.text);
    else if (ts.isBindingElement(node)) read.properties.add((node.propertyName ?? node.name).getText());
    else if (ts.isIdentifier(node) && isRead(node) && !within.includes(node.text)) read.others.add(node.text);
    const names = declares(node) ? [...within, node.name.text] : within;
    ts.forEachChild(node, (child) => look(child, names));
  };
  for (const text of texts) look(parsed(text), []);
  return read;
}
const declares = (node) => ts.isClassDeclaration(node) || ts.isFunctionDeclaration(node);

/** Leaves out members, functions, classes and imports that nothing reads, and what sets such members. */
const withoutUnread = (text, { properties, others }) =>
  changed(text, (node, within) => {
    if ((ts.isMethodDeclaration(node) || ts.isGetAccessor(node)) && !properties.has(node.name.text)) return undefined;
    if ((declares(node) || ts.isImportSpecifier(node)) && !others.has(node.name.text)) return undefined;
    if (ts.isPropertyDeclaration(node) && !properties.has(node.name.text)) return undefined;
    if (ts.isExpressionStatement(node) && isSet(node.expression)) {
      const { left, right } = node.expression;
      const unread = ts.isPropertyAccessExpression(left) && !properties.has(left.name.text);
      const plain = ts.isIdentifier(right) || LITERALS.has(right.kind) || ts.isPropertyAccessExpression(right);
      if (unread && plain && left.expression.kind === kind.ThisKeyword) return undefined;
    }
    return within(node);
  });

/** Short names in the place of those that only the library's own properties have. */
function withShortNames(texts, asked) {
  const kept = [...GIVEN, ...POINT, ...asked].filter((name) => /^\w+$/.test(name));
  let mangleCache = {};
  return texts.map((text) => {
    const done = transformSync(text, {
      mangleProps: /./,
      reserveProps: new RegExp(`^(${kept.join('|')})$`),
      mangleQuoted: true,
      mangleCache,
      target: 'es2022',
    });
    mangleCache = done.mangleCache;
    return done.code;
  });
}

/**
 * The polygon library without what the project never comes to: lines, heights, trees, and whatever nothing names.
 * @param {string} root folder of the project, with a separator at its end
 * @returns {ReadonlyMap<string, string>} texts of its files, by their names
 */
export function clipperInUse(root) {
  const caller = readFileSync(root + CALLER, 'utf8');
  const whole = FILES.map((name) => readFileSync(`${root}${LIBRARY}/${name}`, 'utf8'));
  let texts = withoutNamespaces(withoutEnumerations(withNumbers(whole.map(withFacts)), namesRead([caller])));
  for (let before = ''; before !== texts.join();) {
    before = texts.join();
    const read = namesRead([caller, ...texts]);
    texts = texts.map((text) => withoutUnread(text, read));
  }
  const asked = namesRead([caller]).properties;
  const short = withShortNames(texts, asked).map((text) =>
    printed(ts.transform(parsed(text), [shortWords]).transformed[0]),
  );
  return new Map(short.map((text, at) => [FILES[at], text]));
}
