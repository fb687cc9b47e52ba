import type { StoredEntry } from '../../store/index.ts'

/** The specs by which a build went, by the hashes that its entries name, in order; also where an entry between is of a newer program. */
export function specsNamed(entries: readonly Pick<StoredEntry, 'body'>[]): readonly string[] {
  return entries.flatMap(({ body }, at) => {
    if (at > 0 && !body.includes('"revision-taken-over"')) return []
    const { event } = JSON.parse(body) as { readonly event: unknown }
    return specNamedBy(event) ?? []
  })
}

/** The spec that the build goes by from an entry on; null where the entry says nothing of it. */
export function specNamedBy(event: unknown): string | null {
  if (typeof event !== 'object' || event === null || !('type' in event) || !('specSha256' in event))
    return null
  const names = event.type === 'build-started' || event.type === 'revision-taken-over'
  return names && typeof event.specSha256 === 'string' ? event.specSha256 : null
}
