import { describe, expect, it } from 'vitest'
import { textIn, type Phrase } from '../../../../core/problem/index.ts'
import { en } from '../../../../core/words/index.ts'
import { buildSheet } from '../../../../core/builds/index.ts'
import { demoEngine, Workshop } from '../workshop.ts'

const skerry = demoEngine('skerry-3')

/** A build with every kind of trouble in it, finished by two people. */
function troubledBuild(): Workshop {
  const shop = new Workshop(skerry)
  shop.worksUpTo('choose-mains')
  shop.does({ type: 'choose-shells', step: 'choose-mains', others: [] })
  shop.does({ type: 'note-marks', step: 'case-marks', typed: '2 2 3 1' })
  shop.worksUpTo('fit-mains')
  shop.does({ type: 'fit-half', step: 'fit-mains', position: 'M1', half: 'upper' })
  shop.does({
    type: 'take-out-half',
    step: 'fit-mains',
    position: 'M1',
    half: 'upper',
    reason: 'Dirt behind it.',
  })
  shop.worksUpTo('end-float')
  shop.does({ type: 'answer-check', step: 'end-float', good: true, reading: '0.35', note: 'Washer missing.' })
  shop.person = 'Bram'
  shop.worksUpTo('case-run')
  for (let entry = 0; entry < 2 + 8; entry++) shop.goesOn()
  const torque = (fastener: string, typed: string, outOfOrder: string | null = null) =>
    shop.does({
      type: 'pull',
      procedure: 'case',
      pass: 1,
      fastener,
      reading: { typed, unit: 'N·m' },
      moved: false,
      outOfOrder,
    })
  torque('case-1', '12,0')
  shop.does({ type: 'answer-flag', procedure: 'case', flag: 1, answer: 'Pulled on to 15.' })
  torque('case-3', '15', 'Bolt 2 is under the hose.')
  torque('case-2', '11')
  shop.does({ type: 'take-back', procedure: 'case', pull: 11, reason: 'Let go too early.' })
  shop.does({ type: 'pause-run', procedure: 'case', reason: 'Lunch.' })
  shop.goesOn()
  shop.does({ type: 'pause-run', procedure: 'case', reason: 'The phone.' })
  while (!shop.state.finished) shop.goesOn()
  return shop
}

describe('the build sheet', () => {
  const shop = troubledBuild()
  const sheet = buildSheet(shop.spec, shop.entries)
  const caseRun = sheet.runs.find(({ name }) => name === 'Case bolts')!

  it('says which engine, that it is a demo, which build, and who worked on it', () => {
    expect(sheet.engine).toMatchObject({ name: skerry.name, source: { kind: 'demo' } })
    expect(sheet.build).toEqual({
      name: 'Pump at the lower lock',
      serial: 'A 117',
      specSha256: 'a'.repeat(64),
    })
    expect(sheet.people).toEqual(['Ada', 'Bram'])
    expect(sheet.started).toMatchObject({ seq: 1, person: 'Ada' })
    expect(sheet.finished).toMatchObject({ seq: shop.entries.length, person: 'Bram' })
  })

  it('has the head code: how many entries, and the first 16 digits of the last hash', () => {
    const { hash } = shop.entries.at(-1)!
    expect(sheet.head).toEqual({ entries: shop.entries.length, code: hash.slice(0, 16) })
  })

  it('has the marks as they count now, as typed, and the shells with their clearance', () => {
    const mains = sheet.fits[0]!
    expect(mains.housing).toMatchObject({ typed: '2 2 3 1', noted: { person: 'Ada' } })
    expect(mains.rows.map(({ position, housing, journal }) => [position, housing, journal])).toEqual([
      ['M1', '2', 'F'],
      ['M2', '2', 'G'],
      ['M3', '3', 'H'],
      ['M4', '1', 'F'],
    ])
    // Chart: 2 with F gives S for both halves.
    expect(mains.rows[0]).toMatchObject({
      upper: { grade: 'S', by: 'chart', fitted: { person: 'Ada' } },
      lower: { grade: 'S' },
      withinLimits: true,
    })
    expect(mains.rows[0]?.clearance?.nominal).toBe(35_000)
  })

  it('has every pull, in the order made, with time, person, pass, number, limits and reading as typed', () => {
    // Eight by hand, 1 short, 3 before its turn, 2 short and again, then 4 to 8, 8 more, the action, 8 turned.
    expect(caseRun.pulls).toHaveLength(8 + 1 + 1 + 2 + 5 + 8 + 1 + 8)
    expect(caseRun.pulls[8]).toMatchObject({
      number: 9,
      pass: 2,
      kind: 'torque',
      fastener: '1',
      window: { target: 15, least: 13.5, most: 16.5 },
      reading: { typed: '12,0', value: 12, unit: 'N·m' },
      verdict: 'under',
      person: 'Bram',
    })
    expect(caseRun.pulls[8]?.at).toMatch(/^2026-03-09T/)
    expect(caseRun.pulls[9]).toMatchObject({ fastener: '3', outOfOrder: 'Bolt 2 is under the hose.' })
    expect(caseRun.pulls[10]).toMatchObject({ fastener: '2', takenBack: { reason: 'Let go too early.' } })
    expect(caseRun.pulls[11]).toMatchObject({ fastener: '2', takenBack: null, verdict: 'within' })
    expect(caseRun.pulls.find(({ kind }) => kind === 'action')).toMatchObject({
      fastener: null,
      instruction: 'Turn the crank once by hand. It must turn without a tight place.',
      window: null,
    })
  })

  it('has every flag with its answer, also where taking the pull back was the answer', () => {
    expect(
      caseRun.flags.map(({ about, fastener, pull, answer }) => [about, fastener, pull, answer?.text]),
    ).toEqual([
      ['under', '1', 9, 'Pulled on to 15.'],
      ['under', '2', 11, 'Let go too early.'],
    ])
  })

  it('has what was declared new, and when the run rested', () => {
    expect(caseRun.declaredNew).toMatchObject([{ group: 'Case bolts', person: 'Bram' }])
    const rests = caseRun.pauses.map(({ reason, paused, resumed }) => [
      reason,
      (resumed?.seq ?? 0) - paused.seq,
    ])
    expect(rests).toEqual([
      ['Lunch.', 1],
      ['The phone.', 1],
    ])
  })

  it('has every answer to a check, and which of them counts', () => {
    const endFloat = sheet.checks.filter(({ step }) => step === 'End float')
    expect(endFloat.map(({ verdict, reading, counts }) => [verdict, reading?.typed, counts])).toEqual([
      ['not-good', '0.35', false],
      ['good', '0.140 mm', true],
    ])
    expect(endFloat[0]?.limits).toEqual({ least: 80_000, most: 200_000 })
  })

  it('lists everything that was put right, in order', () => {
    const about = (phrase: Phrase) => textIn(en, en.phrases, phrase)
    expect(sheet.corrections.map((each) => [each.kind, about(each.about), each.reason])).toEqual([
      ['marks-noted-again', 'Case marks', null],
      ['shells-chosen-again', 'Choose mains', null],
      ['half-taken-out', 'M1 upper', 'Dirt behind it.'],
      ['check-answered-again', 'End float', 'Put right'],
      ['pull-taken-back', 'Case bolts, 2', 'Let go too early.'],
    ])
  })

  it('says by which entry each step was done', () => {
    expect(sheet.steps.map(({ name }) => name)).toEqual(skerry.steps.map(({ name }) => name))
    expect(sheet.steps.every(({ done }) => done !== null)).toBe(true)
    const marks = sheet.steps.find(({ name }) => name === 'Case marks')
    expect(marks?.done?.seq).toBe(2)
  })

  it('carries the cautions of the spec', () => {
    expect(sheet.cautions).toEqual(skerry.cautions)
  })

  it('of an unfinished build has gaps where nothing was done yet', () => {
    const begun = new Workshop(skerry)
    const early = buildSheet(begun.spec, begun.entries)
    expect(early.finished).toBeNull()
    expect(early.fits[0]?.rows[0]).toMatchObject({ housing: null, upper: null, clearance: null })
    expect(early.runs.map(({ started, pulls }) => [started, pulls])).toEqual(early.runs.map(() => [null, []]))
    expect(early.steps.every(({ done }) => done === null)).toBe(true)
  })

  it('of nothing is empty', () => {
    expect(buildSheet(skerry, [])).toMatchObject({ build: null, head: { entries: 0, code: '' }, people: [] })
  })
})
