import { describe, expect, it } from 'vitest'
import { buildSheet, checkRules, type BuildEvent, type RecordedEvent } from '../../../../core/builds/index.ts'
import { textIn } from '../../../../core/problem/index.ts'
import { answerText } from '../../../../core/tightening/index.ts'
import { en } from '../../../../core/words/index.ts'
import { setB } from '../../../published/tightening-sets.ts'
import { Workshop } from '../workshop.ts'

const procedure = 'tighten'

/** Set B with bolt 1 turned 126° where 125° is the most, then replaced and begun again. */
function replaced(why: object = { reason: 'Turned too far' }): Workshop {
  const workshop = new Workshop(setB().spec)
  workshop.does({ type: 'start-run', procedure })
  const pull = (pass: number, fastener: string | null, typed: string | null = null) =>
    workshop.does({
      type: 'pull',
      procedure,
      pass,
      fastener,
      reading: typed === null ? null : { typed, unit: '°' },
      moved: false,
      outOfOrder: null,
    })
  for (let bolt = 1; bolt <= 10; bolt++) pull(0, `bolt-${bolt}`)
  pull(1, null)
  pull(2, 'bolt-1', '126')
  workshop.does({ type: 'loosen-fastener', procedure, fastener: 'bolt-1', reason: '', ...why })
  workshop.does({ type: 'replace-fastener', procedure, fastener: 'bolt-1' })
  pull(0, 'bolt-1')
  pull(2, 'bolt-1', '120')
  return workshop
}

describe('a fastener that was replaced, on the sheet', () => {
  const { spec, entries } = replaced()
  const sheet = buildSheet(spec, entries)

  it('has its earlier pulls printed as void', () => {
    const own = sheet.runs[0]!.pulls.filter(({ fastener }) => fastener === '1')
    expect(own.map(({ pass, setAside }) => [pass, setAside])).toEqual([
      [1, 'loosened'],
      [3, 'loosened'],
      [1, null],
      [3, null],
    ])
  })

  it('has its flag answered by somebody who put the new one in', () => {
    const [flag] = sheet.runs[0]!.flags
    expect(flag).toMatchObject({ about: 'over', answer: { person: 'Ada' } })
    expect(flag?.answer?.text).toEqual({ deed: 'replaced' })
  })

  it('is among the corrections', () => {
    expect(
      sheet.corrections.map(({ kind, about, reason }) => [kind, textIn(en, en.phrases, about), reason]),
    ).toEqual([
      ['fastener-loosened', 'As printed, 1', 'Turned too far'],
      ['fastener-replaced', 'As printed, 1', null],
    ])
  })
})

describe('a run that begins again, in a build', () => {
  it('makes room for the step before it to be undone: nothing counts as pulled any more', () => {
    const workshop = replaced()
    workshop.does({ type: 'restart-run', procedure, pass: 0, reason: 'Sealant open too long' })
    const sheet = buildSheet(workshop.spec, workshop.entries)
    expect(sheet.runs[0]!.pulls.every(({ setAside }) => setAside !== null)).toBe(true)
    expect(sheet.corrections.at(-1)).toMatchObject({
      kind: 'run-restarted',
      about: { code: 'fromPassOf', facts: { procedure: 'As printed', pass: 1 } },
    })
  })
})

describe('a fastener that was loosened as the program asked', () => {
  const outcome = replaced({ cause: 'to-be-replaced' })
  const isLoosened = ({ event }: { readonly event: BuildEvent }) => event.type === 'fastener-loosened'

  it('has the cause in its entry, and none of the program’s sentences', () => {
    const [loosened] = outcome.entries.filter(isLoosened)
    expect(loosened?.event).toEqual({
      type: 'fastener-loosened',
      version: 1,
      procedure,
      fastener: 'bolt-1',
      cause: 'to-be-replaced',
    })
  })

  it('is printed with the cause in words', () => {
    const [correction] = buildSheet(outcome.spec, outcome.entries).corrections
    expect(answerText(en, correction!.reason!)).toBe('Too much: to be replaced')
  })

  it('still wants a reason where the program did not ask for it: no flag is open for it', () => {
    const workshop = replaced()
    expect(() =>
      workshop.does({
        type: 'loosen-fastener',
        procedure,
        fastener: 'bolt-1',
        reason: '',
        cause: 'to-be-replaced',
      }),
    ).toThrow('Say why')
  })

  it('is taken in from an earlier version, which wrote a sentence into the entry, and shown alike', () => {
    const old = outcome.entries.map((entry): RecordedEvent => {
      if (entry.event.type !== 'fastener-loosened') return entry
      const { cause: _, ...event } = entry.event
      return { ...entry, event: { ...event, reason: 'Too much: to be replaced' } }
    })
    expect(old.filter(isLoosened)).toHaveLength(1)
    expect(ruleBrokenIn(outcome, old)).toBeNull()
    expect(ruleBrokenIn(outcome, outcome.entries)).toBeNull()
    expect(buildSheet(outcome.spec, old).corrections).toEqual(
      buildSheet(outcome.spec, outcome.entries).corrections,
    )
    const forged = old.map((entry) => (isLoosened(entry) ? outcome.entries[0]! : entry))
    expect(ruleBrokenIn(outcome, forged)).not.toBeNull()
  })
})

function ruleBrokenIn({ spec, entries: [first] }: Workshop, entries: readonly RecordedEvent[]) {
  if (first?.event.type !== 'build-started') throw new Error('a build begins with its start')
  const checking = checkRules(spec, first.event.specSha256, entries)
  for (let at = checking.next(); ; at = checking.next()) if (at.done === true) return at.value
}
