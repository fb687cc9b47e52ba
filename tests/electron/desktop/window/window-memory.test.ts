import { mkdirSync, readdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { WindowMemory } from '../../../../electron/desktop/window/window-memory.ts'
import { folder } from '../../bench.ts'

const place = { bounds: { x: 1, y: 2, width: 900, height: 700 }, state: 'maximized' } as const

describe('what the window remembers', () => {
  it('is there at the next start', () => {
    const file = join(folder(), 'not there yet', 'window.json')
    new WindowMemory(file).keep({ place, theme: 'dark' })
    new WindowMemory(file).keep({ saveFolder: '/home/ana/sheets' })
    expect(new WindowMemory(file).now).toEqual({
      place,
      theme: 'dark',
      language: null,
      saveFolder: '/home/ana/sheets',
    })
    expect(readdirSync(join(file, '..'))).toEqual(['window.json'])
  })

  it.each([
    ['nothing', undefined],
    ['half a file', '{"theme":"da'],
    ['another file', '[]'],
    ['null', 'null'],
  ])('is as at first where there is %s', (_, text) => {
    const file = join(folder(), 'window.json')
    if (text !== undefined) writeFileSync(file, text)
    expect(new WindowMemory(file).now).toEqual({
      place: null,
      theme: 'as-the-system',
      language: null,
      saveFolder: null,
    })
  })

  it('loses only the part that makes no sense', () => {
    const file = join(folder(), 'window.json')
    writeFileSync(
      file,
      JSON.stringify({ place: { bounds: 'left' }, theme: 'dark', language: null, saveFolder: 7 }),
    )
    expect(new WindowMemory(file).now).toEqual({
      place: null,
      theme: 'dark',
      language: null,
      saveFolder: null,
    })
  })

  it('lasts until the end where it cannot be written', () => {
    const file = join(folder(), 'window.json')
    mkdirSync(file)
    const memory = new WindowMemory(file)
    memory.keep({ theme: 'light' })
    expect(memory.now.theme).toBe('light')
  })
})
