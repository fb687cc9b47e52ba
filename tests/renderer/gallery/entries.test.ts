import { globSync, readFileSync } from 'node:fs'
import { join, posix } from 'node:path'
import { describe, expect, it } from 'vitest'
import { openFlags } from '../../../core/tightening/index.ts'
import { engines } from '../../../renderer/gallery/engines.ts'
import { entries } from '../../../renderer/gallery/entries.ts'
import { importsOf } from '../../layers/imports.ts'
import { momentsOf } from '../../../renderer/gallery/moments.ts'

describe('the entries of the gallery', () => {
  it('each have an address of their own', () => {
    expect(new Set(entries.map(({ id }) => id)).size).toBe(entries.length)
  })

  it('lead to every component, all but the window itself and what opens a draft', () => {
    const root = join(import.meta.dirname, '../../..')
    const found = new Set<string>()
    const follow = (path: string) => {
      if (found.has(path) || !/^renderer\/.*\.(ts|svelte)$/.test(path)) return
      found.add(path)
      for (const { specifier } of importsOf(path, readFileSync(join(root, path), 'utf8')))
        if (specifier.startsWith('.')) follow(posix.join(posix.dirname(path), specifier))
    }
    follow('renderer/gallery/entries.ts')
    // The window, and what only opens a draft on the page that the gallery has.
    const components = globSync('renderer/**/*.svelte', { cwd: root }).filter(
      (path) => !/gallery\/|^renderer\/Window\.svelte|^renderer\/editor\/DraftPage\.svelte/.test(path),
    )
    expect(components.filter((path) => !found.has(path))).toEqual([])
  })

  it('have every joint face of every demo engine', () => {
    const faces = engines.flatMap(({ spec }) => spec.case.faces.map(({ name }) => `${spec.name}: ${name}`))
    const drawn = entries
      .filter(({ kind }) => kind === 'drawing')
      .map(({ group, name }) => `${group.replace('Drawings of ', '')}: ${name}`)
    expect(drawn).toEqual(faces)
  })
})

describe.each(engines)('the moments of a build of $spec.name', (engine) => {
  const moments = momentsOf(engine)

  it('have each procedure at its start, under way, flagged and done', () => {
    for (const { id } of engine.spec.procedures) {
      const here = moments.filter(({ step }) => step.kind === 'run-procedure' && step.procedure === id)
      expect(here.map(({ name }) => name)).toEqual(
        expect.arrayContaining(['run at its start', 'run in mid pass', 'run with a flag', 'run done']),
      )
      const flagged = here.find(({ name }) => name === 'run with a flag')!.build.state.runs[id]!
      expect(openFlags(flagged)).toHaveLength(1)
    }
  })

  it('have the shells of each fit proposed and half in place', () => {
    for (const { id } of engine.spec.fits) {
      const here = moments.filter(({ step }) => 'fit' in step && step.fit === id).map(({ name }) => name)
      expect(here).toEqual(expect.arrayContaining(['shells proposed', 'half of the shells fitted']))
    }
  })

  it('have a bearing outside its limits, and one whose mark and readings differ, where sizes are given and nowhere else', () => {
    const hasSizes = engine.spec.fits.some(({ journal }) => journal.marks.some(({ band }) => band))
    const names = moments.map(({ name }) => name)
    for (const moment of ['out of limits', 'marks and readings differ'])
      expect(names.includes(moment), moment).toBe(hasSizes)
  })
})
