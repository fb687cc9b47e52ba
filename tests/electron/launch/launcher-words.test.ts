import { readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { languages } from '../../../core/words/index.ts'
import { launcherWords, languageAsked } from '../../../electron/launch/words/index.mjs'

const launch = join(import.meta.dirname, '../../../electron/launch')
const { en } = launcherWords

/** That each has the same messages with the same facts is shown by the type check: `LauncherWords`. */
describe('what the launcher says before TypeScript runs', () => {
  it('is in every language of the program', () => {
    expect(Object.keys(launcherWords)).toEqual(languages)
  })

  it('has no message that nothing says', () => {
    const files = readdirSync(launch).filter((file) => file.endsWith('.mjs'))
    const source = files.map((file) => readFileSync(join(launch, file), 'utf8')).join('\n')
    expect(Object.keys(en).filter((key) => !source.includes(`words.${key}`))).toEqual([])
  })

  it.each(['de', 'es'] as const)('is another text in %s, with all its facts', (language) => {
    const facts = { option: '--o', value: 'w77', language: 'xx', least: '22.12', version: '9.8.7' }
    const all = { ...facts, message: 'm55', seconds: 41 }
    let compared = 0
    for (const key of Object.keys(en) as (keyof typeof en)[]) {
      const [said, theirs] = [en, launcherWords[language]].map(({ [key]: message }) =>
        typeof message === 'string' ? message : message(all),
      )
      const factsIn = (text = '') => Object.values(all).filter((fact) => text.includes(String(fact)))
      expect(factsIn(theirs), key).toEqual(factsIn(said))
      if (key === 'stillInstalling') continue
      expect(theirs, key).not.toBe(said)
      compared += 1
    }
    expect(compared).toBeGreaterThan(10)
  })

  it.each(languages)('names the same options in %s, none wider than a terminal', (language) => {
    const optionsIn = (usage: string) => usage.match(/ -- (--[a-z-]+)?/g)
    const { usage } = launcherWords[language]
    expect(optionsIn(usage)).toEqual(optionsIn(en.usage))
    expect(usage.split('\n').filter((line) => line.length > 120)).toEqual([])
  })

  it.each([
    [['--local', '--language', 'es'], 'es'],
    [['--language=de', '--language', 'es', 'a.bedplate'], 'es'],
    [['--language', 'es', '--language=de'], 'de'],
    [['--language', 'xx'], undefined],
    [['--language'], undefined],
    [['de'], undefined],
  ])('is asked for by %j: %s', (typed, language) => {
    expect(languageAsked(typed)).toBe(language)
  })
})
