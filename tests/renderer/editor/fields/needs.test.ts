import { describe, expect, it } from 'vitest'
import { en } from '../../../../core/words/index.ts'
import { needsOf, type EntryColumn } from '../../../../renderer/editor/fields/entry-column.ts'

describe('what an entry needs', () => {
  const columns: readonly EntryColumn[] = [
    { key: 'planes', label: 'Planes', kind: 'number' },
    { key: 'directions', label: 'Directions', kind: 'number' },
    { key: 'taper', label: 'Taper', kind: 'size', optional: true },
  ]

  it('is what has no leave to be absent, with what is typed of it', () => {
    expect(needsOf(columns, { planes: '2', taper: '0.005' })).toEqual([
      ['Planes', '2'],
      ['Directions', ''],
    ])
  })

  it('is said by its names', () => {
    expect(en.editor.fields.missing({ names: ['Thread', 'Head'] })).toBe('Still missing: Thread, Head')
  })
})
