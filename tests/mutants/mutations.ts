import ts from 'typescript'

interface Span {
  readonly from: number
  readonly to: number
}

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
  /** The smallest expression around it, or a method with its dot: one of two is chosen there while the program runs. */
  readonly around: Span
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
  const spanOf = (node: ts.Node): Span => ({ from: node.getStart(source), to: node.end })
  const change = (node: ts.Node, changed: string, around: Span = spanOf(node)): void => {
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
      around,
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
      if (other !== undefined && !joinsTexts) change(node.operatorToken, other, spanOf(node))
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
      if (other !== undefined) change(node.name, other, { from: node.expression.end, to: node.end })
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

/** The text of a file with changes that do not lie in one another, each made where `is` says so of its number. */
export function switched(text: string, changes: ReadonlyMap<number, Mutation>, is: string): string {
  return [...changes]
    .toSorted(([, a], [, b]) => b.around.from - a.around.from)
    .reduce((whole, [number, mutation]) => {
      const { from, to } = mutation.around
      return whole.slice(0, from) + choice(text, mutation, `${is}(${number})`) + whole.slice(to)
    }, text)
}

function choice(text: string, { from, to, changed, around, original }: Mutation, isChosen: string): string {
  const whole = text.slice(around.from, around.to)
  const link = /^\s*(\??\.)/.exec(whole)?.[1]
  if (link !== undefined && original in methods)
    return `${link === '?.' ? '?.' : ''}[${isChosen} ? '${changed}' : '${original}']`
  const other = text.slice(around.from, from) + changed + text.slice(to, around.to)
  return `(${isChosen} ? (${other}) : (${whole}))`
}

/** In as few lists as it takes, so that in none a change lies within another. */
export function apart(mutations: readonly Mutation[]): readonly (readonly Mutation[])[] {
  const lists: Mutation[][] = []
  for (const mutation of mutations) {
    const free = lists.find((list) => list.every((each) => !overlap(each, mutation)))
    if (free === undefined) lists.push([mutation])
    else free.push(mutation)
  }
  return lists
}

function overlap(a: Mutation, b: Mutation): boolean {
  return a.file === b.file && a.around.from < b.around.to && b.around.from < a.around.to
}
