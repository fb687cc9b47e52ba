import ts from 'typescript'

/** One change of a source file that a test should notice. */
export interface Mutation {
  /** Of the file, from the root of the project. */
  readonly file: string
  readonly line: number
  /** All of that line. */
  readonly text: string
  readonly from: number
  readonly to: number
  readonly original: string
  readonly changed: string
}

const operators: Readonly<Partial<Record<ts.SyntaxKind, string>>> = {
  [ts.SyntaxKind.LessThanToken]: '<=',
  [ts.SyntaxKind.LessThanEqualsToken]: '<',
  [ts.SyntaxKind.GreaterThanToken]: '>=',
  [ts.SyntaxKind.GreaterThanEqualsToken]: '>',
  [ts.SyntaxKind.EqualsEqualsEqualsToken]: '!==',
  [ts.SyntaxKind.ExclamationEqualsEqualsToken]: '===',
  [ts.SyntaxKind.AmpersandAmpersandToken]: '||',
  [ts.SyntaxKind.BarBarToken]: '&&',
  [ts.SyntaxKind.PlusToken]: '-',
  [ts.SyntaxKind.MinusToken]: '+',
  [ts.SyntaxKind.AsteriskToken]: '/',
  [ts.SyntaxKind.SlashToken]: '*',
  [ts.SyntaxKind.AsteriskAsteriskToken]: '*',
}

const methods: Readonly<Record<string, string>> = {
  some: 'every',
  every: 'some',
  min: 'max',
  max: 'min',
  ceil: 'floor',
  floor: 'ceil',
  find: 'findLast',
  findLast: 'find',
}

/** A whole number is one off, any other a twentieth larger: as much as a slip of the pen, and more than a rounding. */
function otherNumber(text: string): string {
  const value = Number(text.replaceAll('_', ''))
  return Number.isInteger(value) && Math.abs(value) <= 20 ? String(value + 1) : String(value * 1.05)
}

/** All changes of a file, one at a time: operators, numbers, conditions turned round, methods for their opposites. */
export function mutationsOf(file: string, text: string): readonly Mutation[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true)
  const lines = text.split('\n')
  const found: Mutation[] = []
  const change = (node: ts.Node, changed: string): void => {
    const from = node.getStart(source)
    const line = source.getLineAndCharacterOfPosition(from).line
    found.push({
      file,
      line: line + 1,
      text: lines[line] ?? '',
      from,
      to: node.end,
      original: text.slice(from, node.end),
      changed,
    })
  }
  const visit = (node: ts.Node): void => {
    if (ts.isTypeNode(node) || ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return
    if (ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node)) return
    // What cannot happen, for the compiler alone.
    if (ts.isDefaultClause(node)) return
    if (ts.isBinaryExpression(node)) {
      const other = operators[node.operatorToken.kind]
      const joinsTexts = [node.left, node.right].some(isText)
      if (other !== undefined && !joinsTexts) change(node.operatorToken, other)
    }
    if (ts.isNumericLiteral(node) && !isKey(node)) change(node, otherNumber(node.text))
    if (ts.isPrefixUnaryExpression(node)) {
      if (node.operator === ts.SyntaxKind.MinusToken) change(node, node.operand.getText(source))
      if (node.operator === ts.SyntaxKind.ExclamationToken) change(node, node.operand.getText(source))
    }
    if (ts.isIfStatement(node)) change(node.expression, `!(${node.expression.getText(source)})`)
    if (ts.isConditionalExpression(node)) change(node.condition, `!(${node.condition.getText(source)})`)
    if (node.kind === ts.SyntaxKind.TrueKeyword) change(node, 'false')
    if (node.kind === ts.SyntaxKind.FalseKeyword) change(node, 'true')
    if (ts.isPropertyAccessExpression(node) && ts.isCallExpression(node.parent)) {
      const other = methods[node.name.text]
      if (other !== undefined) change(node.name, other)
    }
    ts.forEachChild(node, visit)
  }
  visit(source)
  return found
}

function isText(node: ts.Expression): boolean {
  return ts.isStringLiteralLike(node) || ts.isTemplateExpression(node)
}

function isKey(node: ts.NumericLiteral): boolean {
  return ts.isPropertyAssignment(node.parent) && node.parent.name === node
}

/** The text of a file with one change. */
export function mutated(text: string, { from, to, changed }: Mutation): string {
  return text.slice(0, from) + changed + text.slice(to)
}
