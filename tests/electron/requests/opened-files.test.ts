import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { done, refused } from '../../../core/problem/index.ts'
import { OpenedFiles } from '../../../electron/requests/index.ts'
import { answersOn, countedIds, engines } from '../answers.ts'
import { clock, folder, store } from '../bench.ts'
import { engineFile } from '../../engine-files.ts'

const noSpec = () => refused('engine-named-twice', { engine: 'x', file: 'x.json' })

function fileOf(name: string, text: string): string {
  const path = join(folder(), name)
  writeFileSync(path, text)
  return path
}

describe('files that the program was asked to open', () => {
  it('come one after the other, in their order, with their text as it is', async () => {
    const files = new OpenedFiles({ more: false })
    files.open([fileOf('one.bedplate', '\u{FEFF}first'), fileOf('TWO.BEDPLATE', 'second')])
    const build = (number: number, fileName: string, text: string) => ({
      file: { number, fileName, content: { kind: 'build', text } },
      more: false,
    })
    expect(await files.next(0, noSpec)).toEqual(build(1, 'one.bedplate', '\u{FEFF}first'))
    expect(await files.next(1, noSpec)).toEqual(build(2, 'TWO.BEDPLATE', 'second'))
    expect(await files.next(2, noSpec)).toEqual({ file: null, more: false })
  })

  it('have their text as it is where they are files of specs, for the library to take in', async () => {
    const files = new OpenedFiles({ more: false })
    files.open([fileOf('heron-4.bedplate-spec', '{"bedplateSpecFile":1}')])
    expect(await files.next(0, noSpec)).toMatchObject({
      file: { fileName: 'heron-4.bedplate-spec', content: { kind: 'spec', text: '{"bedplateSpecFile":1}' } },
    })
  })

  it('stay until the window has dealt with them, and go to the window that asks next', async () => {
    const files = new OpenedFiles({ more: true })
    files.open([fileOf('one.bedplate', 'text')])
    expect(await files.next(0, noSpec)).toMatchObject({ file: { number: 1 } })
    expect(await files.next(0, noSpec)).toMatchObject({ file: { number: 1 } })
    const crashed = files.next(1, noSpec)
    const reloaded = files.next(0, noSpec)
    expect(await crashed).toEqual({ file: null, more: true })
    files.open([fileOf('two.bedplate', 'text')])
    expect(await reloaded).toMatchObject({ file: { number: 2 } })
  })

  it.each([
    [
      'a spec that is larger than any',
      () => fileOf('a.bedplate-spec', ' '.repeat(10_000_001)),
      'import-too-large',
    ],
    ['a text', () => fileOf('notes.txt', 'x'), 'file-not-ours'],
    ['a name without an ending', () => fileOf('bedplate', 'x'), 'file-not-ours'],
    ['a file that is gone', () => '/nowhere/one.bedplate', 'file-unreadable'],
    ['a spec that has no place', () => fileOf('a.json', '{}'), 'engine-named-twice'],
  ])('are refused in words: %s', async (_, path, code) => {
    const files = new OpenedFiles({ more: false })
    files.open([path(), fileOf('good.bedplate', 'text')])
    expect(await files.next(0, noSpec)).toMatchObject({
      file: { content: { kind: 'refused', problem: { code } } },
    })
    expect(await files.next(1, noSpec)).toMatchObject({ file: { content: { kind: 'build' } } })
  })

  it('are refused in words: a folder that is called like one', async () => {
    const path = join(folder(), 'one.bedplate')
    mkdirSync(path)
    const files = new OpenedFiles({ more: false })
    files.open([path])
    expect(await files.next(0, () => done({ id: '', name: '' }))).toMatchObject({
      file: { content: { problem: { code: 'file-unreadable' } } },
    })
  })

  it('are added to the engines where they are specs, once; another one with a known id is not', async () => {
    const text = readFileSync(engineFile('skerry-3'), 'utf8')
    const files = new OpenedFiles({ more: false })
    files.open([
      engineFile('skerry-3'),
      fileOf('own.json', text.replace('"skerry-3"', '"skerry-3-own"')),
      fileOf('other.json', `${text} `),
    ])
    const { answer } = answersOn(await store(folder()), {
      now: clock(),
      newId: countedIds(),
      engines,
      openedFiles: files,
    })
    const content = async (after: number) => {
      const reply = await answer('files.opened', { after })
      return reply.ok ? (reply.value as { file: { content: unknown } }).file.content : reply
    }
    expect(await content(0)).toMatchObject({ kind: 'engine', id: 'skerry-3' })
    expect(await content(1)).toMatchObject({ kind: 'engine', id: 'skerry-3-own' })
    expect(await content(2)).toMatchObject({ kind: 'refused', problem: { code: 'engine-named-twice' } })
    const listed = await answer('engines.list', {})
    const ids = listed.ok ? (listed.value as { id: string }[]).map(({ id }) => id) : []
    expect(ids.filter((id) => id.startsWith('skerry-3'))).toEqual(['skerry-3', 'skerry-3-own'])
    expect(
      await answer('builds.start', { engine: 'skerry-3-own', name: 'Own', serial: '', person: 'Ana Ruiz' }),
    ).toMatchObject({ ok: true })
  })
})
