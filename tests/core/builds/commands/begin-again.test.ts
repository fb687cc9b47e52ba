import { describe, expect, it } from 'vitest'
import { buildSheet } from '../../../../core/builds/index.ts'
import { setB } from '../../../published/tightening-sets.ts'
import { Workshop } from '../workshop.ts'

const procedure = 'tighten'

/** Set B with bolt 1 turned 126° where 125° is the most, then replaced and begun again. */
function replaced(): Workshop {
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
  workshop.does({ type: 'loosen-fastener', procedure, fastener: 'bolt-1', reason: 'Turned too far' })
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

  it('has its flag answered by who put the new one in', () => {
    const [flag] = sheet.runs[0]!.flags
    expect(flag).toMatchObject({ about: 'over', answer: { person: 'Ada' } })
    expect(flag?.answer?.text).toEqual({ deed: 'replaced' })
  })

  it('is among the corrections', () => {
    expect(sheet.corrections.map(({ kind, about, reason }) => [kind, about, reason])).toEqual([
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
      about: 'As printed, from pass 1',
    })
  })
})
