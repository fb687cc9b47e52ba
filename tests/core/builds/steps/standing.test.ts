import { describe, expect, it } from 'vitest'
import { standing, whereItStands } from '../../../../core/builds/index.ts'
import { demoEngine, Workshop } from '../workshop.ts'

const skerry = demoEngine('skerry-3')

/** The Skerry, up to its case bolts: all seated, and four of eight pulled in the first torque pass. */
function atTheCaseBolts(): Workshop {
  const build = new Workshop(skerry)
  build.worksUpTo('case-run')
  const twelve = 8 + 4
  while ((build.state.runs['case']?.pulls.length ?? 0) < twelve) build.goesOn()
  return build
}

function standsAt({ spec, state }: Workshop) {
  return whereItStands(spec, state)
}

describe('where a build stands', () => {
  it('is the first step, at its beginning', () => {
    expect(standsAt(new Workshop(skerry))).toEqual({
      step: { place: 1, of: 21, name: 'Case marks' },
      awaitsSecond: false,
      next: null,
      paused: null,
      openProblems: 0,
    })
  })

  it('names the next fastener and its pass in a run that was begun', () => {
    expect(standsAt(atTheCaseBolts())).toMatchObject({
      step: { place: 16, of: 21, name: 'Case bolts' },
      next: { fastener: '5', pass: 2, passes: 5 },
    })
  })

  it('names no fastener where an action stands between two passes', () => {
    const build = atTheCaseBolts()
    while (build.state.runs['case']!.pulls.length < 24) build.goesOn()
    expect(standsAt(build).next).toEqual({ fastener: null, pass: 4, passes: 5 })
  })

  it('names no fastener in a run that was not begun', () => {
    const build = new Workshop(skerry)
    build.worksUpTo('case-run')
    expect(standsAt(build).next).toBeNull()
  })

  it('says why the work is paused, and no more once it goes on', () => {
    const build = atTheCaseBolts()
    build.does({ type: 'pause-run', procedure: 'case', reason: 'phone' })
    expect(standsAt(build).paused).toBe('phone')
    build.does({ type: 'resume-run', procedure: 'case' })
    expect(standsAt(build).paused).toBeNull()
  })

  it('tells a pause without a reason from none', () => {
    const build = atTheCaseBolts()
    build.does({ type: 'pause-run', procedure: 'case', reason: '' })
    expect(standsAt(build).paused).toBe('')
  })

  it('counts the problems that want an answer, and not those that have one', () => {
    const build = atTheCaseBolts()
    for (const [fastener, text] of [
      ['case-2', 'Thread feels rough'],
      ['case-3', 'Washer missing'],
    ] as const)
      build.does({ type: 'note-problem', procedure: 'case', fastener, text })
    expect(standsAt(build).openProblems).toBe(2)
    build.does({ type: 'answer-flag', procedure: 'case', flag: 1, answer: 'Chased the thread.' })
    expect(standsAt(build).openProblems).toBe(1)
  })

  it('has no step once all are done', () => {
    const build = new Workshop(skerry)
    build.worksThrough('last-look')
    expect(standsAt(build)).toMatchObject({ step: null, next: null, openProblems: 0 })
  })

  it('is read back as it was written, at every entry of a build', () => {
    const build = new Workshop(skerry)
    for (let entries = 0; !build.state.finished; entries += 1) {
      const stands = standsAt(build)
      expect(standing.parse(JSON.parse(JSON.stringify(stands)))).toEqual(stands)
      build.goesOn()
    }
    expect(build.entries.length).toBeGreaterThan(150)
  })
})
