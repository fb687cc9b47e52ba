import ts from 'typescript'

export type Import = { readonly specifier: string; readonly line: number }

/**
 * Every module that a file names: imports and exports, with or without types only, `import()` as call and as type, and
 * `require()`. Of a `.svelte` file, those in its script blocks.
 */
export function importsOf(path: string, text: string): readonly Import[] {
  const source = ts.createSourceFile(
    path.replace(/\.svelte$/, '.ts'),
    path.endsWith('.svelte') ? scriptsOnly(text) : text,
    ts.ScriptTarget.ESNext,
    false,
  )
  const found: Import[] = []
  const visit = (node: ts.Node): void => {
    const name = moduleNamedBy(node)
    if (name !== undefined && ts.isStringLiteralLike(name))
      found.push({
        specifier: name.text,
        line: source.getLineAndCharacterOfPosition(name.getStart(source)).line + 1,
      })
    ts.forEachChild(node, visit)
  }
  visit(source)
  return found
}

function moduleNamedBy(node: ts.Node): ts.Node | undefined {
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return node.moduleSpecifier
  if (ts.isExternalModuleReference(node)) return node.expression
  if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) return node.argument.literal
  if (!ts.isCallExpression(node)) return undefined
  const isImport = node.expression.kind === ts.SyntaxKind.ImportKeyword
  const isRequire = ts.isIdentifier(node.expression) && node.expression.text === 'require'
  return isImport || isRequire ? node.arguments[0] : undefined
}

/** The markup blanked out, its line ends kept, so that line numbers stay those of the file. */
function scriptsOnly(text: string): string {
  const blank = (markup: string): string => markup.replace(/[^\n]/g, ' ')
  let result = ''
  let end = 0
  for (const block of text.matchAll(/(<script\b[^>]*>)([\s\S]*?)<\/script\s*>/g)) {
    const start = block.index + (block[1] ?? '').length
    result += blank(text.slice(end, start)) + (block[2] ?? '')
    end = start + (block[2] ?? '').length
  }
  return result + blank(text.slice(end))
}
