import { readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { en } from '../../../core/words/index.ts'
import { usedTexts, type Source } from './used-texts.ts'

const root = join(import.meta.dirname, '../../..')

const sources: readonly Source[] = ['core', 'electron', 'renderer']
  .flatMap((folder) => readdirSync(join(root, folder), { recursive: true, withFileTypes: true }))
  .filter((entry) => entry.isFile() && /\.(ts|mjs|svelte)$/.test(entry.name))
  .map((entry) => join(entry.parentPath, entry.name))
  // The other languages use the same texts again.
  .filter((path) => !/core\/words\/[a-z]{2}\//.test(path) || path.includes('core/words/en/'))
  .map((path) => ({
    text: readFileSync(path, 'utf8'),
    isTable: path.startsWith(join(root, 'core/words/en')),
  }))

describe('the table of texts', () => {
  const { problems, ...subjects } = en
  const texts = usedTexts(subjects, sources)

  it('has no text that the window never shows', () => {
    expect(texts.names.length).toBeGreaterThan(1000)
    expect(texts.names.filter((name) => !texts.isUsed(name))).toEqual([])
  })

  it('has no sentence for a problem that is never found', () => {
    const codes = Object.keys(problems)
    expect(codes.length).toBeGreaterThan(100)
    const source = sources.flatMap(({ text, isTable }) => (isTable ? [] : [text])).join('\n')
    expect(codes.filter((code) => !source.includes(`'${code}'`))).toEqual([])
  })
})

describe('a text that nobody shows', () => {
  const message = () => ''
  const table = {
    run: { next: message, wait: { left: message, over: message } },
    shells: { wait: { left: message }, kinds: { seat: message, turn: message } },
  }
  const unused = (text: string, isTable = false) => {
    const texts = usedTexts(table, [{ text, isTable }])
    return texts.names.filter((name) => !texts.isUsed(name))
  }
  const allBut = (...used: readonly string[]) =>
    [
      'run.next',
      'run.wait.left',
      'run.wait.over',
      'shells.wait.left',
      'shells.kinds.seat',
      'shells.kinds.turn',
    ] //
      .filter((name) => !used.includes(name))

  it.each([
    ['words.run.next', ['run.next']],
    ['this.#drawing.words\n  .run.next()', ['run.next']],
    ['// words.run.next', []],
    ['const { wait } = words.run\n wait.left', ['run.wait.left']],
    ['const { shells: { wait } } = words\n wait.left', ['shells.wait.left']],
    ['const texts = $derived(words.shells.wait)\n texts.left()', ['shells.wait.left']],
    ['function textOf({ run }: Words) { return run.wait.over }', ['run.wait.over']],
    ["function textOf(wait: Words['run']['wait']) { return wait.over }", ['run.wait.over']],
    ["words.shells.kinds[kind]; const kind = 'turn'", ['shells.kinds.turn']],
    ["textIn(words, words.shells.kinds, { code: 'seat' })", ['shells.kinds.seat']],
    ["const kind = 'turn'", []],
  ])('is found out by its whole path: %s', (text, used) => {
    expect(unused(text)).toEqual(allBut(...used))
  })

  it('is found out where another table could be made from it', () => {
    expect(unused('title: () => run.wait.left', true)).toEqual(allBut('run.wait.left'))
    expect(unused('title: () => run.wait.left')).toEqual(allBut())
  })
})
