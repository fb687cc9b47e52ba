import { existsSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { describe, expect, it } from 'vitest'

const renderer = join(import.meta.dirname, '../../../renderer')

/** The files that a file names in an import, whenever it is loaded. */
function importsOf(file: string): readonly string[] {
  const named = readFileSync(file, 'utf8').matchAll(/(?:from|import\()\s*'(\.[^']+\.svelte)'/g)
  return [...named].map(([, path]) => join(dirname(file), path!)).filter(existsSync)
}

/** Whether a component has the button in it, or one of its components has. */
function hasHelp(file: string, seen = new Set<string>()): boolean {
  if (file.endsWith('/HelpButton.svelte')) return true
  if (seen.has(file)) return false
  seen.add(file)
  return importsOf(file).some((each) => hasHelp(each, seen))
}

const pages = ['pages.ts', 'pages-on-demand.ts'].flatMap((file) => importsOf(join(renderer, file)))
const first = join(renderer, 'engines/Engines.svelte')
const isTheHelp = (file: string) => file.endsWith('/help/HelpPage.svelte')

describe('the help', () => {
  it('is opened by a button and by F1 on each page but its own, which F1 closes', () => {
    expect(pages.length).toBeGreaterThan(18)
    expect([first, ...pages].filter((file) => !isTheHelp(file) && !hasHelp(file))).toEqual([])
    const [button, help] = ['HelpButton', 'HelpPage'].map((name) =>
      readFileSync(join(renderer, `help/${name}.svelte`), 'utf8'),
    )
    for (const text of [button, help]) expect(text).toContain("event.key !== 'F1'")
  })

  it('is missed on a page without the button', () => {
    expect(hasHelp(join(renderer, 'help/HelpPage.svelte'))).toBe(false)
  })
})
