import { parse } from 'svelte/compiler'
import { parseSync } from 'vite'

/** A text in a source file that looks as if people read it, where it stands. */
export interface FoundText {
  readonly line: number
  readonly text: string
}

interface Node {
  readonly type: string
  readonly start: number
  readonly [key: string]: unknown
}

/** Attributes and properties whose value people see or hear, whatever it looks like. */
const shownNames = new Set([
  ...[
    'alt',
    'aria-description',
    'aria-label',
    'aria-roledescription',
    'aria-valuetext',
    'placeholder',
    'title',
  ],
  ...['action', 'caption', 'heading', 'kicker', 'label', 'question', 'says', 'sentence', 'text'],
  ...['usual', 'words'],
])

/** Values of these mean something to the page, not to people. */
const namesForThePage =
  /^(aria-keyshortcuts|class|d|for|href|id|lang|points|src|style|transform|type|viewBox)$/

const hasLetters = /\p{L}/u
/** Signs and names that are the same in every language. */
const symbols =
  /(?<!\p{L})(Atkinson Hyperlegible Next|BEDPLATE|Bedplate|Letter|mm|µm|kN|MPa|N·m|lbf·ft|lbf·in|kgf·m|°C|px)(?!\p{L})/gu
/** Pieces of SVG, CSS or JSON, as code puts them together. */
const isMarkup = /^\s*<\w|="|[{}]|^"\w+": ?$|\bsans-serif$|\bcounter\(|^;\s*[a-z-]+:\s*$|^\(prefers-/
/** What these are given finds elements of the page. */
const selecting = /^(closest|matches|querySelector|querySelectorAll)$/
/** More than one word, or one with a capital as at the start of a sentence or on a button. */
const looksWritten = /\p{L}\S*\s|\s\S*\p{L}|^\W*\p{Lu}\p{Ll}+/u

/** The texts of a `.svelte` or `.ts` file that look as if people read them. */
export function textsIn(source: string, isComponent: boolean): readonly FoundText[] {
  const found: FoundText[] = []
  const note = (node: Node, text: string) =>
    found.push({
      line: source.slice(0, node.start).split('\n').length,
      text: text.trim().replaceAll(/\s+/g, ' '),
    })
  for (const part of isComponent ? partsOf(source) : [parseModule(source)])
    walk(part, { shown: true, isPage: false }, note)
  return found
}

function partsOf(component: string): readonly Node[] {
  const root = parse(component, { modern: true }) as unknown as Record<string, Node | null>
  return [root['module'], root['instance'], root['fragment']].flatMap((part) => part ?? [])
}

/** Svelte parses modules too, in four times the time. */
function parseModule(source: string): Node {
  const { program, errors } = parseSync('module.ts', source)
  if (errors.length > 0) throw new Error(errors[0]!.message)
  return { ...program, type: 'Script', content: program.body }
}

interface Place {
  /** A value here is shown as it is. */
  readonly shown: boolean
  readonly isPage: boolean
}

function walk(node: Node, place: Place, note: (node: Node, text: string) => void): void {
  const into = (child: unknown, to: Partial<Place> = {}) => {
    const nodes = (Array.isArray(child) ? child : [child]) as unknown[]
    for (const each of nodes) if (isNode(each)) walk(each, { ...place, ...to }, note)
  }
  const { isPage } = place
  switch (node.type) {
    case 'Script':
      return into(node['content'], { shown: false })
    case 'ConstTag':
      return into(node['declaration'], { shown: false })
    case 'Text':
      return noteValue(node, node['data'])
    case 'Component':
    case 'RegularElement':
      into(node['fragment'], { shown: true })
      for (const each of node['attributes'] as Node[]) attribute(each)
      return
    case 'SnippetBlock':
      return into(node['body'])
    case 'StyleDirective':
    case 'ClassDirective':
      return into(node['value'] ?? node['expression'], { isPage: true, shown: false })
    case 'Literal':
      return noteValue(node, node['value'])
    case 'TemplateElement':
      return noteValue(node, (node['value'] as { cooked: string }).cooked)
    case 'Property':
      return property()
    case 'NewExpression':
      // A bug throws: its message is for developers.
      return isError(node) ? undefined : into(node['arguments'], { shown: false })
    case 'CallExpression':
      if (selects(node)) return
      into(node['callee'], { shown: false })
      return into(node['arguments'], { shown: false })
    case 'MemberExpression':
      into(node['object'], { shown: false })
      return node['computed'] === true ? into(node['property'], { shown: false, isPage: true }) : undefined
    case 'BinaryExpression': {
      const isSum = node['operator'] === '+'
      return into([node['left'], node['right']], isSum ? {} : { shown: false, isPage: true })
    }
    case 'ConditionalExpression':
      into(node['test'], { shown: false })
      return into([node['consequent'], node['alternate']])
    case 'SwitchCase':
      return into(node['consequent'])
    case 'ImportDeclaration':
    case 'ExportAllDeclaration':
    case 'TSTypeAliasDeclaration':
    case 'TSInterfaceDeclaration':
    case 'TSTypeAnnotation':
    case 'TSTypeParameterInstantiation':
    case 'RegularExpressionLiteral':
      return
    default:
      for (const [key, child] of Object.entries(node))
        if (key !== 'typeAnnotation' && key !== 'loc' && key !== 'css' && key !== 'source') into(child)
  }

  function noteValue(at: Node, value: unknown) {
    if (typeof value !== 'string' || isPage || isMarkup.test(value)) return
    if (!hasLetters.test(value.replaceAll(symbols, ''))) return
    if (place.shown || looksWritten.test(value)) note(at, value)
  }

  function attribute(each: Node) {
    const name = textOf(each['name'])
    const isShown = shownNames.has(name) || (node.type === 'Component' && name === 'name')
    into(each.type === 'Attribute' ? each['value'] : each, {
      isPage: namesForThePage.test(name),
      shown: isShown,
    })
  }

  function property() {
    const key = node['key'] as Node
    const name = textOf(key['name'] ?? key['value'])
    if (node['computed'] === true) into(key, { isPage: true })
    return into(node['value'], { shown: shownNames.has(name) })
  }
}

const textOf = (value: unknown): string => (typeof value === 'string' ? value : '')

function selects({ callee }: Node): boolean {
  const method = isNode(callee) ? callee['property'] : null
  return isNode(method) && selecting.test(textOf(method['name']))
}

function isError({ callee }: Node): boolean {
  return isNode(callee) && /^\w*Error$/.test(textOf(callee['name']))
}

function isNode(value: unknown): value is Node {
  return typeof value === 'object' && value !== null && 'type' in value
}
