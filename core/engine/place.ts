/** A path as programs write it: `procedures[0].passes[2].target`. */
export function pathText(path: readonly PropertyKey[]): string {
  return path.reduce<string>((text, part) => {
    if (typeof part === 'number') return `${text}[${part}]`
    return text === '' ? String(part) : `${text}.${String(part)}`
  }, '')
}

/** What one entry of a list is called. */
const entries: Readonly<Record<string, string>> = {
  balanceBearings: 'balance bearing',
  beads: 'bead',
  cautions: 'caution',
  chart: 'chart cell',
  dowels: 'dowel',
  faces: 'face',
  fastenerGroups: 'fastener group',
  fasteners: 'fastener',
  fits: 'fit',
  grades: 'grade',
  keepOut: 'keep-out zone',
  marks: 'mark',
  oilPassages: 'oil passage',
  orders: 'order',
  outline: 'corner',
  passes: 'pass',
  path: 'point',
  procedures: 'procedure',
  rods: 'rod',
  saddles: 'saddle',
  steps: 'step',
  undersizes: 'undersize',
  washers: 'washer',
}

/** The same path as people say it, by the ids in the file: `procedure “case”, pass 3, “target”`. */
export function placeText(input: unknown, path: readonly PropertyKey[]): string {
  const parts: string[] = []
  let value = input
  path.forEach((part, depth) => {
    value = inside(value, part)
    if (typeof part !== 'number') {
      const isList = typeof path[depth + 1] === 'number'
      if (!isList) parts.push(`“${String(part)}”`)
      return
    }
    const list = String(path[depth - 1])
    parts.push(`${entries[list] ?? `${list} entry`} ${nameOf(value) ?? part + 1}`)
  })
  return parts.join(', ')
}

/** The value at a path; undefined where there is none. */
export function valueAt(input: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce(inside, input)
}

function inside(value: unknown, part: PropertyKey): unknown {
  if (typeof value !== 'object' || value === null || !Object.hasOwn(value, part)) return undefined
  return (value as Record<PropertyKey, unknown>)[part]
}

function nameOf(entry: unknown): string | null {
  for (const key of ['id', 'mark', 'grade', 'name']) {
    const name = inside(entry, key)
    if (typeof name === 'string' && name !== '' && name.length <= 40) return `“${name}”`
  }
  return null
}
