/** A table of texts: a message is a text, a list or a function, and everything else a table again. */
export type Table = { readonly [name: string]: unknown }

/** What the sources do with a table of texts. */
export interface UsedTexts {
  /** Every message by its whole path, `run.wait.left`. */
  readonly names: readonly string[]
  isUsed(name: string): boolean
}

/** A source that shows texts. One that holds them names its own table without `words.` before it. */
export interface Source {
  readonly text: string
  readonly isTable: boolean
}

const chain = /(?:(?<![\w$.#])|(?<=\.\.\.))(?:this\.)?#?[A-Za-z_$][\w$]*(?:\s*[?!]?\.\s*#?[\w$]+)*/.source
const comments = /^\s*(?:\/\/|\/?\*).*$|\/\*.*?\*\/|<!--.*?-->/gm

/**
 * Which messages are named in full: from `words` or `en`, or from a name that stands for one of their tables in the same file (`const
 * { form } = words.tray`, `({ practice }: Words)`, `texts: Words['sheet']`). Of a table that is looked up, or handed over with a code,
 * each message whose own name stands somewhere as a key or code.
 */
export function usedTexts(table: Table, sources: readonly Source[]): UsedTexts {
  const named = new Set<string>()
  const lookedUp = new Set<string>()
  const keys = new Set<string>()
  for (const { text, isTable } of sources) {
    const plain = text.replace(comments, '')
    // A table's own keys are no use of them.
    const key = isTable ? /['"]([\w-]+(?: \w+)*)['"](?!:)/g : /['"]([\w-]+(?: \w+)*)['"]|\b(\w+):/g
    for (const [, code, name] of plain.matchAll(key)) keys.add(code ?? name ?? '')
    const aliases = new Map<string, Set<string>>()
    if (isTable) for (const subject of Object.keys(table)) addTo(aliases, subject, subject)
    const rest = readAliases(table, plain, aliases)
    for (const found of rest.matchAll(new RegExp(chain, 'g')))
      for (const path of pathsOf(found[0], aliases)) noteUse(path)
    if (isTable) for (const [, own = ''] of plain.matchAll(/\b(\w+)\[/g)) lookedUp.add(`*.${own}`)
  }

  function noteUse(path: string): void {
    let at: unknown = table
    const names: string[] = []
    for (const name of path.split('.')) {
      if (!isTableOf(at) || !Object.hasOwn(at, name)) break
      at = at[name]
      names.push(name)
    }
    if (names.length === 0) return
    if (isTableOf(at)) lookedUp.add(names.join('.'))
    else named.add(names.join('.'))
  }

  return {
    names: namesOf(table),
    isUsed(name) {
      if (named.has(name)) return true
      const [, above = '', own = ''] = /^(?:(.*)\.)?([^.]+)$/.exec(name) ?? []
      const isLookedUp = lookedUp.has(above) || lookedUp.has(`*.${above.split('.').at(-1)}`)
      return isLookedUp && (keys.has(own) || /^\d+$/.test(own))
    },
  }
}

function isTableOf(value: unknown): value is Table {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

function namesOf(table: Table, above = ''): readonly string[] {
  return Object.entries(table).flatMap(([key, value]) =>
    isTableOf(value) ? namesOf(value, `${above}${key}.`) : [above + key],
  )
}

/** The paths that a chain of names leads to; none where it begins with neither the words nor one of their tables. */
function pathsOf(text: string, aliases: ReadonlyMap<string, ReadonlySet<string>>): readonly string[] {
  const names = text.replace(/[\s?!#]/g, '').split('.')
  const root = names.findIndex((name) => name === 'words' || name === 'en')
  if (root !== -1) return root === names.length - 1 ? [] : [names.slice(root + 1).join('.')]
  const [first = '', ...others] = names
  return [...(aliases.get(first) ?? [])].map((path) => [path, ...others].filter(Boolean).join('.'))
}

function addTo(aliases: Map<string, Set<string>>, name: string, path: string): void {
  aliases.set(name, (aliases.get(name) ?? new Set()).add(path))
}

/** Notes what stands for a table, and gives the source without the places that only name it. */
function readAliases(table: Table, text: string, aliases: Map<string, Set<string>>): string {
  const leads = (path: string): boolean =>
    path.split('.').reduce<unknown>((at, name) => (isTableOf(at) ? at[name] : undefined), table) !== undefined
  const take = (inside: string, above: string): void => {
    for (const [, name = '', nested, alias] of inside.matchAll(/(\w+)(?::\s*(?:\{([^{}]*)\}|(\w+)))?/g)) {
      const path = above === '' ? name : `${above}.${name}`
      if (nested === undefined) {
        if (leads(path)) addTo(aliases, alias ?? name, path)
      } else take(nested, path)
    }
  }
  const declared = new RegExp(
    `(?:const|let|@const)\\s+(?:(\\w+)|(\\{(?:[^{}]|\\{[^{}]*\\})*\\}))\\s*=\\s*(?:\\$derived\\()?(${chain})(?=[;)}\\s]|$)`,
    'g',
  )
  const typed = /(?:\{((?:[^{}]|\{[^{}]*\})*)\}|\b(\w+)\??):\s*Words((?:\['\w+'\])*)/g
  const typedPath = (keys: string): string => [...keys.matchAll(/'(\w+)'/g)].map(([, key]) => key).join('.')
  let rest = text.replace(
    typed,
    (whole, inside: string | undefined, name: string | undefined, keys: string) => {
      if (inside !== undefined) take(inside, typedPath(keys))
      else if (keys !== '') addTo(aliases, name ?? '', typedPath(keys))
      return whole.slice(-1)
    },
  )
  // Again where one stands for a part of what another stands for.
  for (const _ of [1, 2])
    rest = rest.replace(
      declared,
      (whole, name: string | undefined, inside: string | undefined, source: string) => {
        const isRoot = /(^|\.)(words|en)$/.test(source)
        const paths = isRoot ? [''] : pathsOf(source, aliases).filter(leads)
        if (paths.length === 0) return whole
        for (const path of paths) {
          if (inside !== undefined) take(inside.slice(1, -1), path)
          else if (!isRoot) addTo(aliases, name ?? '', path)
        }
        return isRoot || paths.every((path) => isTableOf(at(table, path))) ? '' : whole
      },
    )
  return rest
}

function at(table: Table, path: string): unknown {
  return path.split('.').reduce<unknown>((here, name) => (isTableOf(here) ? here[name] : undefined), table)
}
