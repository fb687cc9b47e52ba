import { follows, type StoredEntry } from '../store/index.ts'

/** What the archive has of a build, as far as a consignment needs it. */
export interface KnownBuild {
  /** How many entries the build has. */
  readonly count: number
  /** The hash of an entry of the build; null past its end. */
  readonly hashAt: (seq: number) => string | null
  /** The first entry of the fork that the entry with this hash belongs to; null for none. */
  readonly rootOf: (sha256: string) => Root | null
}

export interface Root {
  readonly at: number
  readonly sha256: string
}

export type Placement =
  | { readonly kind: 'refused'; readonly entry: number }
  | { readonly kind: 'behind'; readonly from: number }
  /** `added` goes to the end of the build: none where all are there. */
  | { readonly kind: 'kept'; readonly added: readonly StoredEntry[] }
  /** `beside` belongs to the fork that begins with `root`. */
  | { readonly kind: 'fork'; readonly root: Root; readonly beside: readonly StoredEntry[] }

/** Where the entries of a consignment belong. Nothing is decided between two that claim one place: the first that came has it. */
export function placed(build: string, entries: readonly StoredEntry[], known: KnownBuild): Placement {
  const [first] = entries
  if (first === undefined) return { kind: 'refused', entry: 0 }
  let previous = previousIn(first)
  for (const [index, entry] of entries.entries()) {
    if (!follows(build, first.seq + index, previous ?? null, entry) || first.seq < 1)
      return { kind: 'refused', entry: entry.seq }
    previous = entry.sha256
  }
  const before = previousIn(first) ?? null
  if ((before === null) !== (first.seq === 1)) return { kind: 'refused', entry: first.seq }
  if (before !== known.hashAt(first.seq - 1)) {
    const root = before === null ? null : known.rootOf(before)
    if (root !== null) return { kind: 'fork', root, beside: entries }
    return { kind: 'behind', from: first.seq > known.count + 1 ? known.count + 1 : 1 }
  }
  const parting = entries.findIndex(({ seq, sha256 }) => seq <= known.count && known.hashAt(seq) !== sha256)
  if (parting < 0) return { kind: 'kept', added: entries.filter(({ seq }) => seq > known.count) }
  const beside = entries.slice(parting)
  const [{ seq: at, sha256 } = first] = beside
  return { kind: 'fork', root: known.rootOf(sha256) ?? { at, sha256 }, beside }
}

/** The hash that an entry follows; undefined where it cannot be read. */
export function previousIn({ body }: Pick<StoredEntry, 'body'>): string | null | undefined {
  try {
    const inside = JSON.parse(body) as { readonly previous?: unknown } | null
    return typeof inside?.previous === 'string'
      ? inside.previous
      : inside?.previous === null
        ? null
        : undefined
  } catch {
    return undefined
  }
}
