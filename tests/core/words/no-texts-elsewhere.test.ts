import { readFileSync, readdirSync } from 'node:fs'
import { join, relative } from 'node:path'
import { describe, expect, it } from 'vitest'
import { textsIn } from './texts.ts'

const root = join(import.meta.dirname, '../../..')

/** The gallery is for developers, and has its own names for what it shows. */
const files = readdirSync(join(root, 'renderer'), { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && /\.(ts|svelte)$/.test(entry.name))
  .map((entry) => relative(root, join(entry.parentPath, entry.name)))
  .filter((path) => !path.startsWith('renderer/gallery/'))

function textsOf(path: string): readonly string[] {
  const texts = textsIn(readFileSync(join(root, path), 'utf8'), path.endsWith('.svelte'))
  return texts.map(({ line, text }) => `${path}:${line}: ${text}`)
}

describe('the texts that people read', () => {
  it('stand in core/words, and nowhere in the window', () => {
    expect(files.length).toBeGreaterThan(100)
    expect(files.flatMap(textsOf)).toEqual([])
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
})
