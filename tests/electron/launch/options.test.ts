import { describe, expect, it } from 'vitest'
import { parseOptions } from '../../../electron/launch/options.mjs'
import { launcherWords } from '../../../electron/launch/words/index.mjs'

const parse = (typed: readonly string[]) => parseOptions(launcherWords.en, typed)

const usual = { local: false, window: true, doctor: false, fetchElectron: false, files: [] }

describe('options of npm start', () => {
  it('are a window and the better host when nothing is said', () => {
    expect(parse([])).toEqual({ kind: 'options', options: usual })
  })

  it('are taken in any order', () => {
    const options = { ...usual, local: true, window: false, data: 'bench 2', specs: 'engines' }
    const words = ['--no-window', '--specs=engines', '--data', 'bench 2', '--local']
    expect(parse(words)).toEqual({ kind: 'options', options })
    expect(parse(['--local', '--data=bench 2', '--no-window', '--specs', 'engines'])).toEqual({
      kind: 'options',
      options,
    })
  })

  it('may have files to open among them, and any word for a file after “--”', () => {
    expect(parse(['a.bedplate', '--local', '--', '--b.json'])).toEqual({
      kind: 'options',
      options: { ...usual, local: true, files: ['a.bedplate', '--b.json'] },
    })
  })

  it('ask for Electron once more', () => {
    expect(parse(['--fetch-electron'])).toEqual({
      kind: 'options',
      options: { ...usual, fetchElectron: true },
    })
  })

  it('that are switches take nothing after them', () => {
    expect(parse(['--local=yes'])).toEqual({
      kind: 'refused',
      why: '--local takes nothing after it: leave out “=yes”.',
    })
  })

  it('ask for help before anything else is looked at', () => {
    expect(parse(['--help'])).toEqual({ kind: 'help' })
    expect(parse(['-h', '--nonsense'])).toEqual({ kind: 'help' })
  })

  it('are refused by name when unknown, with those that exist', () => {
    const answer = parse(['--locale'])
    expect(answer).toMatchObject({ kind: 'refused' })
    expect(answer).toHaveProperty('why', expect.stringContaining('“--locale” is not an option'))
    expect(answer).toHaveProperty('why', expect.stringContaining('--no-window'))
  })

  it.each(['--data', '--specs'])('refuse %s without a folder', (option) => {
    for (const words of [[option], [`${option}=`], [option, '--local'], [option, '']])
      expect(parse(words)).toHaveProperty('why', expect.stringContaining(`After ${option} comes a folder`))
  })
})

describe('the language that npm start is asked for', () => {
  it.each(['en', 'de', 'es'])('may be %s', (language) => {
    const answer = parse(['--language', language])
    expect(answer).toEqual({ kind: 'options', options: { ...usual, language } })
  })

  it.each([
    [['--language', 'fr'], 'Bedplate does not speak “fr”: write en for English, de for German (Deutsch) or'],
    [['--language=DE'], 'Bedplate does not speak “DE”'],
    [['--language'], 'After --language comes a language: write en for English'],
    [['--language', '--local'], 'Bedplate does not speak “--local”'],
  ])('is refused with the three there are: %j', (typed, why) => {
    expect(parse(typed)).toHaveProperty('why', expect.stringContaining(why))
  })

  it('has its refusal in the language of the words', () => {
    const refused = parseOptions(launcherWords.de, ['--language', 'xx'])
    expect(refused).toEqual({ kind: 'refused', why: launcherWords.de.languageUnknown({ language: 'xx' }) })
  })
})

describe('the shop that npm start is asked to join', () => {
  it('is an address of PostgreSQL', () => {
    const answer = parse(['--shop', 'postgres://bench@server/bedplate'])
    expect(answer).toEqual({
      kind: 'options',
      options: { ...usual, shop: 'postgres://bench@server/bedplate' },
    })
  })

  it.each([[['--shop']], [['--shop', 'server']], [['--shop=']]])('is refused in %j', (words) => {
    expect(parse(words)).toMatchObject({
      kind: 'refused',
      why: expect.stringContaining('After --shop comes the address') as string,
    })
  })
})

describe('what npm start is asked to call the bench', () => {
  it('is any name', () => {
    const answer = parse(['--bench', 'Bench 2, by the door'])
    expect(answer).toEqual({ kind: 'options', options: { ...usual, bench: 'Bench 2, by the door' } })
  })

  it.each([[['--bench']], [['--bench', '--local']], [['--bench= ']]])('is refused in %j', (words) => {
    expect(parse(words)).toMatchObject({
      kind: 'refused',
      why: expect.stringContaining('After --bench comes what this bench is called') as string,
    })
  })
})
