import { describe, expect, it } from 'vitest'
import { EngineShelf } from '../../../electron/requests/engine-shelf.ts'
import type { LibraryRow, Store } from '../../../electron/store/index.ts'

/** The shelf of a library that has these engines. A text that is no spec is listed under its engine's id. */
function shelfOf(names: readonly string[]): EngineShelf {
  const latest = names.map(
    (name) => ({ engine: name, name, sha256: name, published_at_utc: '' }) as LibraryRow,
  )
  const library = { latest: () => latest } as unknown as Store['library']
  return new EngineShelf([], { library, specText: () => '{' })
}

describe('the shelf of engines', () => {
  it('lists those of the library by name as a dictionary of the language of the window does', () => {
    const shelf = shelfOf(['Zenit', 'Nuthatch', 'Örn', 'Ñandú', 'Ärla', 'Oriole', 'Auk'])
    const inOrder = (language: 'de' | 'es') => shelf.listed(language).map(({ id }) => id)
    expect(inOrder('de')).toEqual(['Ärla', 'Auk', 'Ñandú', 'Nuthatch', 'Oriole', 'Örn', 'Zenit'])
    // In Spanish Ñ is a letter of its own, after N.
    expect(inOrder('es')).toEqual(['Ärla', 'Auk', 'Nuthatch', 'Ñandú', 'Oriole', 'Örn', 'Zenit'])
  })
})
