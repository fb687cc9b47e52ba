import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'

const renderer = join(import.meta.dirname, '../../../renderer')

/** The statements of a component's scripts, each with the lines that belong to it. */
function statementsOf(component: string): readonly string[] {
  const scripts = [...component.matchAll(/<script[^>]*>(.*?)<\/script>/gs)].map(([, script]) => script!)
  return scripts.flatMap((script) =>
    script
      .split(/\n(?= {2}[^\s\])}])/)
      .map((statement) => statement.trim())
      .filter((statement) => statement !== ''),
  )
}

/** The constants that took a text when the component was made. */
function frozenIn(component: string): readonly string[] {
  const statements = statementsOf(component)
  const tables = statements.flatMap(
    (each) => /^const (\w+) = (?:useWords\(\)|words)[.\w]*$/.exec(each)?.[1] ?? [],
  )
  const taken = new RegExp(`(?<![.\\w])(?:${tables.join('|')})\\.\\w`)
  return statements.flatMap((statement) => {
    const [, name, value] = /^const (\w+)[^=]*(?:=>[^=]*)?= (.*)$/s.exec(statement) ?? []
    if (name === undefined || tables.length === 0 || tables.includes(name)) return []
    const isFollowed =
      value!.startsWith('$derived') ||
      (/^(async )?(\(|\w+ =>)[^=]*=> ?/.test(value!) && !/^\(\[|^\(\w+\./.test(value!))
    return !isFollowed && taken.test(value!) ? [name] : []
  })
}

describe('a text on the screen', () => {
  const components = readdirSync(renderer, { recursive: true, encoding: 'utf8' }).filter(
    (path) => path.endsWith('.svelte') && !path.startsWith('gallery'),
  )

  it('follows the language: no component takes one once when it is made', () => {
    expect(components.length).toBeGreaterThan(150)
    const frozen = components.flatMap((path) =>
      frozenIn(readFileSync(join(renderer, path), 'utf8')).map((name) => `${path}: ${name}`),
    )
    expect(frozen).toEqual([])
  })

  it('is found where a constant has it', () => {
    const component = (value: string) =>
      `<script lang="ts">\n  const words = useWords()\n  const t = words.view\n  const sides = ${value}\n</script>`
    expect(frozenIn(component("[{ value: 'left', text: t.left }]"))).toEqual(['sides'])
    expect(
      frozenIn(
        component("(['a', 'b'] as const).map((value) => ({\n    text: words.view.sides[value],\n  }))"),
      ),
    ).toEqual(['sides'])
    expect(frozenIn(component('$derived([{ text: t.left }])'))).toEqual([])
    expect(frozenIn(component('(value: string) => t.sides[value]'))).toEqual([])
  })
})
