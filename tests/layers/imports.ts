import { parseSync } from 'vite'

export type Import = { readonly specifier: string; readonly line: number }

/**
 * Every module that a file names: imports and exports, with or without types only, `import()` as call and as type, and
 * `require()`. Of a `.svelte` file, those in its script blocks.
 */
export function importsOf(path: string, text: string): readonly Import[] {
  const isComponent = path.endsWith('.svelte')
  const source = isComponent ? scriptsOnly(text) : text
  const parsed = parseSync(isComponent ? path.replace(/svelte$/, 'ts') : path, source)
  if (parsed.errors.length > 0) throw new Error(`${path}: ${parsed.errors[0]!.message}`)
  const { staticImports, staticExports } = parsed.module
  const stated = [...staticImports, ...staticExports.flatMap(({ entries }) => entries)]
  const named = stated.flatMap(({ moduleRequest }) => moduleRequest ?? [])
  // The whole tree is asked for only where a module may be named in the midst of it: handing it over takes the most time.
  const found = /\b(import|require)\s*\(|\bexport\s*\{\s*\}/.test(source)
    ? [...named, ...namedWithin(parsed.program)]
    : named
  const lineOf = (place: number): number => source.slice(0, place).split('\n').length
  return [...new Map(found.map((each) => [each.start, each])).values()]
    .toSorted((one, other) => one.start - other.start)
    .map(({ value, start }) => ({ specifier: value, line: lineOf(start) }))
}

interface Node {
  readonly type: string
  readonly start: number
  readonly [key: string]: unknown
}

function namedWithin(node: object): readonly { readonly value: string; readonly start: number }[] {
  const name = isNode(node) ? moduleNamedBy(node) : undefined
  const here =
    isNode(name) && typeof name['value'] === 'string' ? [{ value: name['value'], start: name.start }] : []
  const within = Object.values(node).filter(
    (each): each is object => typeof each === 'object' && each !== null,
  )
  return [...here, ...within.flatMap(namedWithin)]
}

function moduleNamedBy(node: Node): unknown {
  switch (node.type) {
    case 'ExportNamedDeclaration':
    case 'ImportExpression':
    case 'TSImportType':
      return node['source']
    case 'CallExpression':
      return isNode(node['callee']) && node['callee']['name'] === 'require'
        ? (node['arguments'] as readonly unknown[])[0]
        : undefined
    default:
      return undefined
  }
}

function isNode(value: unknown): value is Node {
  return typeof value === 'object' && value !== null && 'type' in value
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
