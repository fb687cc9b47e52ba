import { describe, expect, it } from 'vitest'
import { apart, mutationsOf, switched } from './mutations.ts'

const source = `
const most = 30
function judge(reading, limits) {
  if (reading > limits.most && !limits.open) return -1
  const near = [1, 2, 3]
    .some((each) => each * 2 === reading)
  return near ? Math.max(reading, limits.least ?? 7) : limits?.list?.every((each) => each <= most) === true
}`

interface Limits {
  readonly most: number
  readonly least?: number
  readonly open?: boolean
  readonly list?: readonly number[]
}

const questions: readonly (readonly [number, Limits])[] = [
  [4, { most: 5, least: 9 }],
  [4, { most: 4 }],
  [8, { most: 5 }],
  [8, { most: 5, open: true }],
  [7, { most: 9, list: [30] }],
  [7, { most: 9, list: [31, 1] }],
]

/** What the source answers, or that it fails. */
function answers(text: string, tried: number): string {
  // eslint-disable-next-line @typescript-eslint/no-implied-eval -- a text that this test makes
  const made = new Function('isTried', `${text}\nreturn judge`) as (
    isTried: (number: number) => boolean,
  ) => (reading: number, limits: Limits) => unknown
  const judge = made((number) => number === tried)
  return JSON.stringify(questions.map(([reading, limits]) => judge(reading, limits)))
}

describe('changes that are chosen while the program runs', () => {
  const mutations = mutationsOf('judge.ts', source)

  it('are those of the text, one by one', () => {
    expect(mutations.length).toBeGreaterThan(20)
    for (const mutation of mutations) {
      const { from, to, changed } = mutation
      const both = switched(source, new Map([[3, mutation]]), 'isTried')
      expect(answers(both, 3), changed).toBe(answers(source.slice(0, from) + changed + source.slice(to), 0))
      expect(answers(both, 0), changed).toBe(answers(source, 0))
    }
  })

  it('stand in one text where none lies in another, and answer there as alone', () => {
    const lists = apart(mutations)
    expect(lists.flat()).toHaveLength(mutations.length)
    for (const list of lists) {
      const text = switched(source, new Map(list.entries()), 'isTried')
      for (const [number, mutation] of list.entries()) {
        const alone = switched(source, new Map([[number, mutation]]), 'isTried')
        expect(answers(text, number)).toBe(answers(alone, number))
      }
    }
  })

  it('are noticed by what is asked here, most of them, so that the same answers mean something', () => {
    const noticed = mutations.filter(
      (mutation) => answers(switched(source, new Map([[0, mutation]]), 'isTried'), 0) !== answers(source, 0),
    )
    expect(noticed.length / mutations.length).toBeGreaterThan(0.7)
  })
})
