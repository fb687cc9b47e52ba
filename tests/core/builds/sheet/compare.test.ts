import { describe, expect, it } from 'vitest'
import { textIn } from '../../../../core/problem/index.ts'
import { en } from '../../../../core/words/index.ts'
import { buildSheet, compareBuilds } from '../../../../core/builds/index.ts'
import { demoEngine, Workshop } from '../workshop.ts'

const skerry = demoEngine('skerry-3')

function finished(caseMarks?: string): Workshop {
  const shop = new Workshop(skerry)
  if (caseMarks !== undefined) shop.does({ type: 'note-marks', step: 'case-marks', typed: caseMarks })
  while (!shop.state.finished) shop.goesOn()
  return shop
}

const sheet = (shop: Workshop) => buildSheet(skerry, shop.entries)

describe('two builds of an engine side by side', () => {
  it('are the same throughout when the same was done', () => {
    const { sameSpec, ...rest } = compareBuilds(sheet(finished()), sheet(finished()))
    expect(sameSpec).toBe(true)
    for (const rows of Object.values(rest)) {
      expect(rows.length).toBeGreaterThan(0)
      expect(rows.every(({ same }) => same)).toBe(true)
    }
  })

  it('differ where other marks asked for other shells, and there alone', () => {
    const { bearings, pulls } = compareBuilds(sheet(finished('1 1 1 1')), sheet(finished('1 1 3 1')))
    const differing = bearings.filter(({ same }) => !same)
    expect(differing.map(({ about }) => textIn(en, en.phrases, about))).toEqual([
      expect.stringMatching(/M3$/),
    ])
    expect(differing[0]?.first?.housing).toBe('1')
    expect(differing[0]?.second?.housing).toBe('3')
    expect(pulls.every(({ same }) => same)).toBe(true)
  })

  it('have a gap where one has not come so far', () => {
    const { pulls, steps } = compareBuilds(sheet(finished()), sheet(new Workshop(skerry)))
    expect(pulls.every(({ second, same }) => second === null && !same)).toBe(true)
    expect(steps.every(({ same }) => !same)).toBe(true)
  })

  it('count a pull that was taken back, and compare the one that was made in its place', () => {
    const again = new Workshop(skerry)
    while (!Object.values(again.state.runs).some((run) => run.pulls.length > 2)) again.goesOn()
    const procedure = Object.keys(again.state.runs)[0] ?? ''
    again.does({ type: 'take-back', procedure, pull: 3, reason: 'Handle slipped' })
    while (!again.state.finished) again.goesOn()
    const { pulls, runs } = compareBuilds(sheet(finished()), sheet(again))
    expect(pulls.every(({ same }) => same)).toBe(true)
    const differing = runs.filter(({ same }) => !same)
    expect(differing).toHaveLength(1)
    expect(differing[0]).toMatchObject({ first: { takenBack: 0 }, second: { takenBack: 1 } })
  })
})
