import { readFileSync, readdirSync } from 'node:fs'
import { join, relative } from 'node:path'
import { describe, expect, it } from 'vitest'
import { exemptions } from './no-texts.ts'
import { textsIn, type FoundText } from './texts.ts'

const root = join(import.meta.dirname, '../../..')

/** The tables themselves, and what is said before TypeScript runs. */
const tables = ['core/words/', 'electron/launch/words/']
/** The gallery is for developers, and has its own names for what it shows. */
const forDevelopers = 'renderer/gallery/'

function filesOf(layer: string): readonly string[] {
  return readdirSync(join(root, layer), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(ts|mjs|svelte)$/.test(entry.name))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)))
    .filter((path) => ![...tables, forDevelopers].some((start) => path.startsWith(start)))
}

/** Each file is parsed once. */
const parsed = new Map<string, readonly FoundText[]>()

function textsOf(path: string): readonly FoundText[] {
  const known = parsed.get(path)
  if (known !== undefined) return known
  const texts = textsIn(readFileSync(join(root, path), 'utf8'), path.endsWith('.svelte'))
  parsed.set(path, texts)
  return texts
}

const isExempt = (path: string, { text }: FoundText) =>
  exemptions.some((each) => covers(each.path, path) && each.texts.test(text))
const covers = (place: string, path: string) => path === place || path.startsWith(`${place}/`)

describe('the texts that people read', () => {
  it.each([
    ['core', 150],
    ['electron', 80],
    ['renderer', 100],
  ])('stand in the tables of words, and nowhere in %s', (layer, least) => {
    const files = filesOf(layer)
    expect(files.length).toBeGreaterThan(least)
    const elsewhere = files.flatMap((path) =>
      textsOf(path)
        .filter((found) => !isExempt(path, found))
        .map(({ line, text }) => `${path}:${line}: ${text}`),
    )
    expect(elsewhere).toEqual([])
  })

  it('have no exemption that nothing needs any more', () => {
    const found = ['core', 'electron'].flatMap(filesOf).map((path) => [path, textsOf(path)] as const)
    const unneeded = exemptions.filter(
      (each) =>
        !found.some(
          ([path, texts]) => covers(each.path, path) && texts.some(({ text }) => each.texts.test(text)),
        ),
    )
    expect(unneeded).toEqual([])
  })

  it('are found in the places where a component or a module shows them', () => {
    const component = `
      <script lang="ts">
        const kinds = { seat: 'By hand', 'loosen-all': 'loosen it' }
        const options = [{ value: 'left', text: 'left' }]
        const said = isDone ? \`All \${count} are in\` : words.order.given
      </script>
      <button class="open wide" aria-label="Close" onclick={(event) => event.key === 'Enter'}>
        {saving ? 'saving' : words.build.save} now {formatLength(gap, 'mm')} mm
      </button>`
    expect(textsIn(component, true).map(({ text }) => text)).toEqual([
      ...['By hand', 'loosen it', 'left', 'All', 'are in', 'saving', 'now', 'Close'],
    ])
    const module = `export const title = (name: string) => refuse('no-name') ?? 'Not done: ' + name`
    expect(textsIn(module, false)).toEqual([{ line: 1, text: 'Not done:' }])
  })

  it('are found in what core refuses and what a host says', () => {
    const refusal = `
      const advice = z.string().min(1, 'write a name')
      export const late = (name: string) => problem('late', { what: \`end of pass \${name}\` })
      throw new Error('nobody reads this')`
    expect(textsIn(refusal, false).map(({ text }) => text)).toEqual(['write a name', 'end of pass'])
    const launcher = `#!/usr/bin/env node\nconsole.error('Building failed.')\nconst door = '</script>'`
    expect(textsIn(launcher, false)).toContainEqual({ line: 2, text: 'Building failed.' })
    expect(isExempt('electron/store/builds.ts', { line: 1, text: 'SELECT id FROM build' })).toBe(true)
    expect(isExempt('electron/store/builds.ts', { line: 1, text: 'The build is gone.' })).toBe(false)
  })
})
