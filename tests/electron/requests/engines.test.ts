import { spawnSync } from 'node:child_process'
import { copyFileSync, mkdirSync, readFileSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { sentenceOf } from '../../../core/problem/index.ts'
import { readEngines } from '../../../electron/requests/index.ts'
import { folder, store } from '../bench.ts'
import { asking } from './asking.ts'
import { engineFile } from '../../engine-files.ts'

const specs = join(import.meta.dirname, '../../../specs')

/** A folder with one good spec and one more file. */
function folderWith(file: string, text: string): string {
  const inFolder = folder()
  copyFileSync(join(specs, 'skerry-3.json'), join(inFolder, 'skerry-3.json'))
  writeFileSync(join(inFolder, file), text)
  return inFolder
}

describe('the engines', () => {
  it('that ship are all sound, and are demos', async () => {
    const { get } = asking(await store(folder()))
    const lines = await get('engines.list', {})
    expect(lines.length).toBeGreaterThan(1)
    for (const { id, demo, faults } of lines)
      expect({ id, demo, faults }).toEqual({ id, demo: true, faults: [] })
  })

  it('are read as they stand', async () => {
    const { get, ask } = asking(await store(folder()))
    const { specText } = await get('engines.read', { id: 'skerry-3' })
    expect(specText).toBe(readFileSync(engineFile('skerry-3'), 'utf8'))
    expect(await ask('engines.read', { id: '../package' })).toMatchObject({
      problem: { code: 'engine-unknown' },
    })
  })

  it('are listed with their faults where they have some, and nothing is built from them', async () => {
    const engines = readEngines(folderWith('pump.json', '{ "name": '))
    const { get, ask } = asking(await store(folder()), { engines })
    const [faulty, sound] = await get('engines.list', {})
    expect(faulty).toMatchObject({ id: 'pump', faults: [{ code: expect.any(String) }] })
    expect(sound).toMatchObject({ id: 'skerry-3', faults: [] })
    const refused = await ask('builds.start', {
      engine: 'pump',
      name: 'Pump',
      serial: '',
      person: 'Ana Ruiz',
    })
    expect(refused).toMatchObject({ ok: false, problem: { code: 'engine-faulty' } })
  })

  it('may not share an id: the second is told so by file', () => {
    const engines = readEngines(folderWith('tern.json', readFileSync(join(specs, 'skerry-3.json'), 'utf8')))
    expect(engines.map(({ kind, id }) => [kind, id])).toEqual([
      ['sound', 'skerry-3'],
      ['faulty', 'tern.json'],
    ])
  })
})

describe('what is no spec in the folder of the specs', () => {
  it.each<[string, (file: string) => void, string]>([
    ['a folder', (file) => mkdirSync(file), 'is a folder'],
    [
      'a link to nowhere',
      (file) => symlinkSync('/nowhere/at/all.json', file),
      'leads to a file that is not there',
    ],
    ['a pipe that nobody writes into', (file) => void spawnSync('mkfifo', [file]), 'not a text file'],
    [
      'a text that is not UTF-8',
      (file) => writeFileSync(file, Buffer.from([0x7b, 0xff, 0x7d])),
      'not text in UTF-8',
    ],
    [
      'a file of a gigabyte',
      (file) => {
        writeFileSync(file, '')
        truncateSync(file, 1_000_000_000)
      },
      'larger than any engine spec',
    ],
  ])('is reported in the list, and the others are there: %s', (_, make, words) => {
    const inFolder = folder()
    copyFileSync(join(specs, 'skerry-3.json'), join(inFolder, 'skerry-3.json'))
    make(join(inFolder, 'other.json'))
    const [bad, good] = readEngines(inFolder)
    expect(good).toMatchObject({ kind: 'sound', id: 'skerry-3' })
    expect(bad?.kind === 'faulty' ? bad.faults.map(sentenceOf).join() : '').toContain(words)
  })

  it('is reported when the whole folder is not there', () => {
    const [only] = readEngines(join(folder(), 'none'))
    expect(only?.kind === 'faulty' ? only.faults.map(sentenceOf).join() : '').toContain('cannot be read')
  })
})
