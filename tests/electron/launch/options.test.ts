import { describe, expect, it } from 'vitest'
import { parseOptions } from '../../../electron/launch/options.mjs'

describe('options of npm start', () => {
  it('are a window and the better host when nothing is said', () => {
    expect(parseOptions([])).toEqual({
      kind: 'options',
      options: { local: false, window: true, doctor: false },
    })
  })

  it('are taken in any order', () => {
    const options = { local: true, window: false, doctor: false, data: 'bench 2' }
    expect(parseOptions(['--no-window', '--data', 'bench 2', '--local'])).toEqual({
      kind: 'options',
      options,
    })
    expect(parseOptions(['--local', '--data=bench 2', '--no-window'])).toEqual({ kind: 'options', options })
  })

  it('ask for help before anything else is looked at', () => {
    expect(parseOptions(['--help'])).toEqual({ kind: 'help' })
    expect(parseOptions(['-h', '--nonsense'])).toEqual({ kind: 'help' })
  })

  it('are refused by name when unknown, with those that exist', () => {
    const answer = parseOptions(['--locale'])
    expect(answer).toMatchObject({ kind: 'refused' })
    expect(answer).toHaveProperty('why', expect.stringContaining('“--locale” is not an option'))
    expect(answer).toHaveProperty('why', expect.stringContaining('--no-window'))
  })

  it.each([[['--data']], [['--data=']], [['--data', '--local']]])(
    'refuse %j: a folder is missing',
    (words) => {
      expect(parseOptions(words)).toHaveProperty(
        'why',
        expect.stringContaining('After --data comes a folder'),
      )
    },
  )
})
