import { createHash } from 'node:crypto'
import canonicalize from 'canonicalize'

export const sha256 = (text: string) => createHash('sha256').update(text, 'utf8').digest('hex')

/** A file of a whole new chain around what `change` makes of the entries; only a head code on paper tells it. */
export function forged(
  text: string,
  change: (entries: Record<string, unknown>[], spec: string) => string | void,
): string {
  const [, specLine = '', ...bodies] = text.trimEnd().split('\n')
  const entries = bodies.map((body) => JSON.parse(body) as Record<string, unknown>)
  const spec = change(entries, JSON.parse(specLine).spec) ?? JSON.parse(specLine).spec
  let previous: string | null = null
  const lines = entries.map((entry) => {
    const body: string = canonicalize({ ...entry, previous }) ?? ''
    previous = sha256(body)
    return body
  })
  return exportOf(spec, lines)
}

/** An export of these very lines, whatever they are. */
export function exportOf(spec: string, bodies: readonly string[]): string {
  const head = {
    bedplateBuild: 1,
    build: JSON.parse(bodies[0] ?? '').build,
    entries: bodies.length,
    head: sha256(bodies.at(-1) ?? ''),
    specSha256: sha256(spec),
  }
  return `${[canonicalize(head), canonicalize({ spec }), ...bodies].join('\n')}\n`
}
