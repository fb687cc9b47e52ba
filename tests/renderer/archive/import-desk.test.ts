import { describe, expect, it } from 'vitest'
import { mostExportCharacters } from '../../../core/contract/index.ts'
import { done, refused } from '../../../core/problem/index.ts'
import { ImportDesk } from '../../../renderer/archive/import-desk.svelte.ts'
import { en } from '../../../core/words/index.ts'
import { importText } from '../../../renderer/archive/import-text.ts'
import { lineOf, twin } from '../twin.ts'

const line = lineOf(4)
const taking = () => twin({ 'builds.import': () => done({ kind: 'added', line }) })

describe('taking in an exported build', () => {
  it('hands over every byte, a mark of byte order too', async () => {
    const { client, requests } = taking()
    const desk = new ImportDesk(client)
    await desk.take(new File(['\u{FEFF}{"bedplateBuild":1}\n'], 'ferry.bedplate'))
    expect(requests).toEqual([{ name: 'builds.import', input: { text: '\u{FEFF}{"bedplateBuild":1}\n' } }])
    expect(desk.fileName).toBe('ferry.bedplate')
    expect(desk.outcome).toMatchObject({ kind: 'added', line: { number: '2026-004' } })
  })

  it('says what was wrong with a file, and forgets the outcome of the one before', async () => {
    let calls = 0
    const { client } = twin({
      'builds.import': () =>
        (calls += 1) === 1 ? done({ kind: 'added', line }) : refused('import-altered', { line: 7 }),
    })
    const desk = new ImportDesk(client)
    await desk.take(new File(['a'], 'a.bedplate'))
    await desk.take(new File(['b'], 'b.bedplate'))
    expect(desk.outcome).toBeNull()
    expect(desk.problem).toMatchObject({ code: 'import-altered', facts: { line: 7 } })
  })

  it('does not even read a file that is too large', async () => {
    const { client, requests } = taking()
    const desk = new ImportDesk(client)
    const large = new File([], 'film.bedplate')
    Object.defineProperty(large, 'size', { value: mostExportCharacters + 1 })
    await desk.take(large)
    expect(requests).toEqual([])
    expect(desk.problem?.code).toBe('import-too-large')
  })

  it('takes one file at a time: a second one let go of meanwhile is left', async () => {
    const { client, requests, hold } = taking()
    const desk = new ImportDesk(client)
    const release = hold()
    const first = desk.take(new File(['a'], 'a.bedplate'))
    expect(desk.reading).toBe(true)
    await desk.take(new File(['b'], 'b.bedplate'))
    release()
    await first
    expect(requests).toHaveLength(1)
    expect([desk.reading, desk.fileName]).toEqual([false, 'a.bedplate'])
  })
})

describe('what became of a file', () => {
  it.each([
    [{ kind: 'added', line: lineOf(4, { entries: 1 }) }, 'Imported as 2026-004 “Ferry 4”: 1 entry, each'],
    [{ kind: 'known', line }, 'is here already, entry for entry. Nothing was changed.'],
    [{ kind: 'continued', line, added: 1 }, 'was continued elsewhere: 1 more entry is here now, 61 in all.'],
    [{ kind: 'older', line, behind: 3 }, 'has 3 more entries here than in the file. Nothing was changed.'],
  ] as const)('is said in a sentence: %s', (outcome, words) => {
    expect(importText(en, outcome)).toContain(words)
  })
})
