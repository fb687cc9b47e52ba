import { describe, expect, it } from 'vitest'
import { en, type Language, type Words } from '../../core/words/index.ts'
import { amountsIn, lengthOf } from '../../core/quantity/index.ts'
import { pseudo } from '../core/words/pseudo.ts'
import { ShownLanguage, type LanguageChannel } from '../../renderer/shown-language.svelte.ts'

const load = (language: Language): Promise<Words> => Promise.resolve(language === 'en' ? en : pseudo(en))

describe('the language of the window', () => {
  it.each([
    [['de-AT', 'en'], 'de'],
    [['fr', 'es-MX', 'en'], 'es'],
    [['fr-FR'], 'en'],
    [[], 'en'],
  ] as const)('is at first that of the system: %j gives %s', async (system, language) => {
    expect((await ShownLanguage.first({ system, load })).language).toBe(language)
  })

  it('changes what was taken from its words before, and quantities with it', async () => {
    const shown = await ShownLanguage.first({ load })
    const { steps } = shown.words
    const amounts = amountsIn(shown.words)
    const before = shown.words.engines.program
    await shown.show('de')
    expect(shown.language).toBe('de')
    expect(shown.words.engines.wrenches).toMatch(/^\[/)
    expect(steps.check.reading({ least: '1', most: '2' })).toMatch(/^\[/)
    expect(amounts.length(lengthOf(0.05, 'mm'), 'mm')).toMatch(/^0.050\smm$/)
    await shown.show(null)
    expect(shown.words.engines.program).toBe(before)
  })

  it('stays where the words of another one cannot be loaded', async () => {
    const failing = (language: Language) =>
      language === 'en' ? Promise.resolve(en) : Promise.reject(new Error('gone'))
    const shown = await ShownLanguage.first({ load: failing })
    await shown.show('es')
    expect(shown.language).toBe('en')
  })

  it('is the last one chosen, whichever is loaded first', async () => {
    const come: { [Each in Language]?: () => void } = {}
    const slow = (language: Language) =>
      language === 'en' ? load('en') : new Promise<Words>((done) => (come[language] = () => done(pseudo(en))))
    const shown = await ShownLanguage.first({ load: slow })
    const both = [shown.show('de'), shown.show('es')]
    come.es!()
    come.de!()
    await Promise.all(both)
    expect(shown.language).toBe('es')
  })

  it('is told to the other windows where it is chosen, and followed there', async () => {
    const listeners: ((language: Language | null) => void)[] = []
    const told: (Language | null)[] = []
    const channel: LanguageChannel = {
      announce: (language) => {
        told.push(language)
        for (const each of listeners) each(language)
      },
      hear: (listen) => void listeners.push(listen),
    }
    const one = await ShownLanguage.first({ load })
    const other = await ShownLanguage.first({ load, channel })
    await one.choose('de')
    expect(told).toEqual([])
    const here = await ShownLanguage.first({ load, channel: { ...channel, hear: () => undefined } })
    await here.choose('de')
    await Promise.resolve()
    expect([told, here.language, other.language]).toEqual([['de'], 'de', 'de'])
  })
})
