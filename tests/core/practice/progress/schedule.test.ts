import fc from 'fast-check'
import { createEmptyCard, FSRS, Rating } from 'ts-fsrs'
import { describe, expect, it } from 'vitest'
import {
  dailySet,
  gradeOf,
  missingPractice,
  progressOf,
  scheduleOf,
  type Grade,
  type Round,
} from '../../../../core/practice/index.ts'
import { checkProperty } from '../../../property.ts'

const begin = Date.parse('2026-03-02T07:30:00.000Z')
const day = 24 * 3600 * 1000

const grades = fc.constantFrom<Grade>('again', 'hard', 'good')
const history = fc.array(fc.record({ grade: grades, after: fc.integer({ min: 0, max: 40 * day }) }), {
  minLength: 1,
  maxLength: 30,
})

describe('when a drill is done again', () => {
  it('is what ts-fsrs says when it is called directly', () => {
    let long = 0
    checkProperty(
      fc.property(history, (steps) => {
        let at = begin
        const rounds = steps.map(({ grade, after }) => ({ grade, at: new Date((at += after)).toISOString() }))
        const direct = new FSRS({ enable_fuzz: false, enable_short_term: false, maximum_interval: 179 })
        const byGrade = { again: Rating.Again, hard: Rating.Hard, good: Rating.Good } as const
        let card = createEmptyCard(new Date(rounds[0]!.at))
        for (const round of rounds) card = direct.repeat(card, new Date(round.at))[byGrade[round.grade]].card
        expect(scheduleOf(rounds)?.dueAt).toBe(card.due.toISOString())
        if (rounds.length > 5) long += 1
      }),
      { leastShare: 0.95 },
    )
    expect(long).toBeGreaterThan(20)
  })

  it('comes at least a day later, and half a year later at most', () => {
    checkProperty(
      fc.property(history, (steps) => {
        let at = begin
        const rounds = steps.map(({ grade, after }) => ({ grade, at: new Date((at += after)).toISOString() }))
        const days = (Date.parse(scheduleOf(rounds)!.dueAt) - at) / day
        expect(days).toBeGreaterThanOrEqual(1)
        expect(days).toBeLessThanOrEqual(180)
      }),
      { leastShare: 0.95 },
    )
  })

  it('comes sooner after errors than without any', () => {
    const at = new Date(begin).toISOString()
    const [forgotten, effort, known] = (['again', 'hard', 'good'] as const).map((grade) =>
      Date.parse(scheduleOf([{ grade, at }])!.dueAt),
    )
    expect(forgotten!).toBeLessThanOrEqual(effort!)
    expect(effort!).toBeLessThan(known!)
  })

  it('stands a clock that was set back: such a round counts as done when the one before it was', () => {
    const rounds = (second: string) => [
      { grade: 'good' as const, at: '2026-03-02T07:30:00.000Z' },
      { grade: 'good' as const, at: second },
    ]
    expect(scheduleOf(rounds('2019-01-01T00:00:00.000Z'))).toEqual(
      scheduleOf(rounds('2026-03-02T07:30:00.000Z')),
    )
  })

  it('is not known without a round', () => {
    expect(scheduleOf([])).toBeNull()
  })
})

const roundAt = (at: string, errors: number, change: Partial<Round> = {}): Round => ({
  ...{ engine: 'skerry-3', drill: 'order', at, seconds: 60 },
  tally: [
    { about: 'fastener/C1', errors },
    ...Array.from({ length: 9 }, (_, index) => ({ about: `fastener/C${index + 2}`, errors: 0 })),
  ],
  ...change,
})

describe('how a person stands with a drill', () => {
  it('counts rounds, those without an error, the fastest of these, and errors by place', () => {
    const [standing] = progressOf([
      roundAt('2026-03-02T08:00:00.000Z', 2, { seconds: 20 }),
      roundAt('2026-03-03T08:00:00.000Z', 0, { seconds: 50 }),
      roundAt('2026-03-04T08:00:00.000Z', 0, { seconds: 40 }),
    ])
    expect(standing).toMatchObject({
      rounds: 3,
      faultless: 2,
      fastest: 40,
      lastAt: '2026-03-04T08:00:00.000Z',
    })
    expect(standing?.places[0]).toEqual({ about: 'fastener/C1', asked: 3, errors: 2 })
  })

  it('grades one error in ten as hard, more as forgotten', () => {
    expect(gradeOf(roundAt('', 0).tally)).toBe('good')
    expect(gradeOf(roundAt('', 1).tally)).toBe('hard')
    expect(gradeOf(roundAt('', 2).tally)).toBe('again')
    expect(gradeOf([])).toBe('again')
  })

  it('takes 10,000 rounds of one day', () => {
    const rounds = Array.from({ length: 10_000 }, (_, index) =>
      roundAt(new Date(begin + index * 1000).toISOString(), index % 7 === 0 ? 1 : 0),
    )
    const [standing] = progressOf(rounds)
    expect(standing?.rounds).toBe(10_000)
    expect(Date.parse(standing!.dueAt) - begin).toBeLessThanOrEqual(182 * day)
  })
})

describe('what to do today', () => {
  const kinds = ['order', 'chart', 'values', 'angle'] as const
  const offered = kinds.map((drill) => ({ engine: 'skerry-3', drill }))
  const standing = (drill: (typeof kinds)[number], lastAt: string, dueAt: string) => ({
    ...{
      engine: 'skerry-3',
      drill,
      lastAt,
      dueAt,
      rounds: 1,
      faultless: 1,
      fastest: 60,
      faultlessAt: null,
      places: [],
    },
  })
  const [now, began] = ['2026-03-10T10:00:00.000Z', '2026-03-10T00:00:00.000Z']

  it('is ten minutes of what was never done, for somebody who begins', () => {
    expect(dailySet(offered, [], now, began)).toEqual(offered)
  })

  it('has what is due longest first, before what is new, and nothing that is not due', () => {
    const set = dailySet(
      offered,
      [
        standing('angle', '2026-03-01T00:00:00.000Z', '2026-03-03T00:00:00.000Z'),
        standing('order', '2026-03-01T00:00:00.000Z', '2026-03-02T00:00:00.000Z'),
        standing('chart', '2026-03-01T00:00:00.000Z', '2026-04-02T00:00:00.000Z'),
      ],
      now,
      began,
    )
    expect(set.map(({ drill }) => drill)).toEqual(['order', 'angle', 'values'])
  })

  it('is less by what was done since the day began, and never more than about ten minutes', () => {
    const many = Array.from({ length: 30 }, (_, index) => ({ engine: `e${index}`, drill: 'chart' as const }))
    expect(dailySet(many, [], now, began)).toHaveLength(5)
    const done = many.slice(0, 4).map(({ engine }) => ({
      ...standing('chart', '2026-03-10T09:00:00.000Z', '2026-03-12T00:00:00.000Z'),
      engine,
    }))
    expect(dailySet(many, done, now, began)).toHaveLength(1)
  })
})

describe('a minimum before a person leads a build', () => {
  it('names each drill that has fewer rounds without an error', () => {
    const offered = [
      { engine: 'skerry-3', drill: 'order' },
      { engine: 'skerry-3', drill: 'chart' },
    ] as const
    const progress = progressOf([
      roundAt('2026-03-02T08:00:00.000Z', 0),
      roundAt('2026-03-03T08:00:00.000Z', 0),
    ])
    expect(missingPractice(offered, progress, 2)).toEqual([{ drill: 'chart', faultless: 0 }])
    expect(missingPractice(offered, progress, 3)).toEqual([
      { drill: 'order', faultless: 2 },
      { drill: 'chart', faultless: 0 },
    ])
  })
})
