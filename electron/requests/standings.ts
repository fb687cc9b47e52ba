import { whereItStands, type Standing } from '../../core/builds/index.ts'
import { readStanding, type BuildRow, type KeptStanding, type Store } from '../store/index.ts'
import type { OpenBuildCache } from './open-build-cache.ts'
import { openBuild } from './open-build.ts'

/**
 * Rows of a list with where each open build stands. It is found once after each change, when a list asks for it, and kept
 * beside the build; where it cannot be kept, the list is shown all the same.
 */
export function withStandings(
  store: Store,
  openBuilds: OpenBuildCache,
  rows: readonly BuildRow[],
): readonly { readonly row: BuildRow; readonly standing: Standing | null }[] {
  const found: KeptStanding[] = []
  const listed = rows.map((row) => {
    if (row.finished === 1 || row.voided === 1) return { row, standing: null }
    const kept = readStanding(row)
    if (kept !== 'stale') return { row, standing: kept }
    const standing = standingOf(store, openBuilds, row)
    found.push({ build: row.id, head: row.head_sha256, standing })
    return { row, standing }
  })
  if (found.length > 0) store.keepStandings(found)
  return listed
}

function standingOf(store: Store, openBuilds: OpenBuildCache, row: BuildRow): Standing | null {
  const cached = openBuilds.known(row.id)
  if (cached !== null && cached.state.seq === row.entries) return whereItStands(cached.spec, cached.state)
  const opened = openBuild(store, row.id)
  if (!opened.ok) return null
  const { spec, state, readOnly } = opened.value
  const isWhole = readOnly === null || readOnly.code === 'build-of-earlier-rules'
  return isWhole ? whereItStands(spec, state) : null
}
