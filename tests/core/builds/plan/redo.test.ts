import { readdirSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  checkRules,
  halfKey,
  hasWork,
  isStepDone,
  openedAgain,
  stepStates,
  undoneAtBench,
  type BuildCommand,
  type BuildState,
} from '../../../../core/builds/index.ts'
import type { EngineSpec } from '../../../../core/engine/index.ts'
import { isRunDone } from '../../../../core/tightening/index.ts'
import { checkProperty } from '../../../property.ts'
import { nextCommand } from '../next-command.ts'
import { demoEngine, newBuild, shippedEngine, Workshop } from '../workshop.ts'

const demos = readdirSync(new URL('../../../../specs/', import.meta.url))
  .filter((name) => name.endsWith('.json'))
  .map((name) => name.replace('.json', ''))

/** On what each step stands at first hand: written from what the kinds of step ask for, not from the code. */
function under({ steps, parts }: EngineSpec): ReadonlyMap<string, ReadonlySet<string>> {
  return new Map(
    steps.map((step) => {
      const used = steps.filter((other) => {
        if (step.kind === 'choose-shells') return other.kind === 'note-marks' && other.fit === step.fit
        if (step.kind === 'fit-shells') return other.kind === 'choose-shells' && other.fit === step.fit
        if (step.kind === 'fit-rings') return other.kind === 'measure-rings' && other.rings === step.rings
        if (step.kind === 'count')
          return parts.some(({ usedIn }) => usedIn.some((use) => use.step === other.id))
        return false
      })
      return [step.id, new Set([...step.after, ...used.map(({ id }) => id)])]
    }),
  )
}

/** For each step, all that stands on it. */
function closures(spec: EngineSpec): ReadonlyMap<string, ReadonlySet<string>> {
  const on = under(spec)
  return new Map(spec.steps.map(({ id }) => [id, closure(spec, on, id)]))
}

/** All that stands on a step: joined with what stands on that until nothing more comes. */
function closure(spec: EngineSpec, on: ReturnType<typeof under>, id: string): ReadonlySet<string> {
  let all = new Set<string>()
  for (;;) {
    const more = spec.steps.filter(({ id: each }) =>
      [...on.get(each)!].some((one) => one === id || all.has(one)),
    )
    const joined = new Set([...all, ...more.map((step) => step.id)])
    if (joined.size === all.size) return all
    all = joined
  }
}

const allDone = (shop: Workshop) => shop.spec.steps.every((step) => isStepDone(shop.spec, shop.state, step))

/** A build whose steps are all done, and which is not finished. */
function done(spec: EngineSpec): Workshop {
  const shop = new Workshop(spec)
  while (!allDone(shop)) shop.goesOn()
  return shop
}

function redo(shop: Workshop, id: string, reason = 'It was pinched'): BuildCommand {
  const step = shop.step(id)
  const opened = step.kind === 'note-marks' ? [] : openedAgain(shop.spec, shop.state, step)
  const isBuiltOver = undoneAtBench(shop.spec, shop.state, step, opened).length > 0
  return {
    type: 'redo-step',
    step: id,
    reason,
    opens: opened.map((each) => each.id),
    ...(isBuiltOver && { takenApart: true as const }),
  }
}

/** What is in the engine and what was found, without when and by which entry. */
function inTheEngine(spec: EngineSpec, state: BuildState) {
  return {
    marks: state.marks,
    shells: state.shells,
    fitted: [...state.fitted].toSorted(),
    partsFitted: [...state.partsFitted].toSorted(),
    beads: Object.keys(state.beads).toSorted(),
    placed: Object.keys(state.placed).toSorted(),
    rings: Object.keys(state.rings).toSorted(),
    limits: Object.entries(state.limits)
      .map(([key, { verdict }]) => [key, verdict])
      .toSorted(),
    checks: Object.entries(state.checks)
      .map(([id, { verdict }]) => [id, verdict])
      .toSorted(),
    turnings: Object.entries(state.turnings)
      .map(([id, { verdict }]) => [id, verdict])
      .toSorted(),
    ticked: Object.entries(state.parts.ticks)
      .map(([part, ticks]) => [part, ticks.reduce((sum, { count }) => sum + count, 0)])
      .toSorted(),
    tight: spec.procedures
      .filter((procedure) => isRunDone(procedure, state.runs[procedure.id]))
      .map(({ id }) => id),
    steps: stepStates(spec, state).map(({ step, state: stands }) => [step.id, stands]),
  }
}

describe.each(demos)('a finished step of %s that is done again', (engine) => {
  const spec = shippedEngine(engine)
  const over = closures(spec)
  const shop = done(spec)

  it('opens exactly what stood on it, and nothing else', () => {
    for (const { id, kind } of spec.steps) {
      const again = new Workshop(spec)
      again.state = shop.state
      again.does(redo(again, id))
      const open = spec.steps.filter((step) => !isStepDone(spec, again.state, step)).map((step) => step.id)
      const expected = kind === 'note-marks' ? [id] : [id, ...over.get(id)!]
      expect(open.toSorted(), id).toEqual(expected.toSorted())
    }
  })

  it('says what is undone at the bench so that nothing is undone under what is still on top', () => {
    for (const step of spec.steps) {
      const deeds = undoneAtBench(spec, shop.state, step, openedAgain(spec, shop.state, step))
      deeds.forEach(({ step: each }, index) => {
        const later = deeds.slice(index + 1).map((deed) => deed.step.id)
        expect(
          later.filter((id) => over.get(each.id)!.has(id)),
          each.id,
        ).toEqual([])
      })
    }
  })
})

describe.each(['skerry-3', 'moor-flat-4', 'strath-6'])('%s, taken apart and built again', (engine) => {
  const spec = demoEngine(engine)

  it('is in the end as if it had been built in order', () => {
    const straight = new Workshop(spec)
    const states = [straight.state]
    while (!allDone(straight)) {
      straight.goesOn()
      states.push(straight.state)
    }
    const same = fc.property(
      fc.nat(states.length - 1),
      fc.array(fc.nat(1000), { minLength: 1, maxLength: 3 }),
      (from, picks) => {
        const shop = new Workshop(spec)
        shop.state = states[states.length - 1 - Math.floor(from / 3)]!
        for (const pick of picks) {
          const finished = spec.steps.filter((step) => isStepDone(spec, shop.state, step))
          shop.does(redo(shop, finished[pick % finished.length]!.id))
          for (let left = pick % 30; left > 0 && !allDone(shop); left--) shop.goesOn()
        }
        while (!allDone(shop)) shop.goesOn()
        expect(inTheEngine(spec, shop.state)).toEqual(inTheEngine(spec, straight.state))
      },
    )
    checkProperty(same, { numRuns: 3 })
  }, 60_000)

  it('comes to its end in any order that the plan allows, whatever else is made to wait', () => {
    const any = fc.property(
      fc.infiniteStream(fc.nat(1000)),
      fc.array(fc.tuple(fc.nat(spec.steps.length - 1), fc.nat(spec.steps.length - 1)), { maxLength: 6 }),
      (picks, extra) => {
        const steps = spec.steps.map((step, index) => ({
          ...step,
          after: [
            ...step.after,
            ...extra.flatMap(([a, b]) =>
              index === Math.max(a, b) && a !== b ? [spec.steps[Math.min(a, b)]!.id] : [],
            ),
          ],
        }))
        const shop = new Workshop({ ...spec, steps })
        const order: string[] = []
        while (!allDone(shop)) {
          const open = stepStates(shop.spec, shop.state).filter(
            ({ state }) => state === 'open' || state === 'unconfirmed',
          )
          expect(open.length).toBeGreaterThan(0)
          const { step } = open[picks.next().value % open.length]!
          if (order.at(-1) !== step.id) order.push(step.id)
          shop.does(nextCommand(shop.spec, { ...shop.state, workedOn: { step: step.id } }))
        }
        // More than that where steps were left half done and taken up again.
        expect(order.length).toBeGreaterThanOrEqual(spec.steps.length)
      },
    )
    checkProperty(any, { numRuns: 2 })
  }, 60_000)
})

describe('a step that is done again', () => {
  const skerry = demoEngine('skerry-3')

  it('opens nothing before a person has seen what it opens, and undone it at the bench', () => {
    const shop = done(skerry)
    const command = { type: 'redo-step', step: 'fit-mains', reason: 'M2 was pinched' } as const
    expect(shop.refuses({ ...command, opens: [] })).toContain('opens “Last check”')
    const opens = openedAgain(skerry, shop.state, shop.step('fit-mains')).map(({ id }) => id)
    expect(opens[0]).toBe('last-look')
    expect(shop.refuses({ ...command, opens })).toContain('undo at the bench')
    expect(shop.refusal({ ...command, opens, takenApart: true, reason: '' })).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'step-redone', step: 'Main shells' } },
    })
    const before = shop.entries.length
    shop.does({ ...command, opens, takenApart: true })
    expect(shop.entries.length).toBeGreaterThan(before)
    expect(shop.state.fitted.has(halfKey('M1', 'upper'))).toBe(false)
    expect(stepStates(skerry, shop.state).find(({ step }) => step.id === 'fit-mains')).toMatchObject({
      state: 'open',
      again: true,
    })
  })

  it('has to be done first', () => {
    const shop = new Workshop(skerry)
    expect(
      shop.refusal({ type: 'redo-step', step: 'lay-crank', reason: 'It was dry', opens: [] }),
    ).toMatchObject({ code: 'redo-not-done', facts: { step: 'Lay crank', isRead: false } })
  })

  it('of marks opens nothing where they read the same', () => {
    const shop = done(skerry)
    shop.does(redo(shop, 'case-marks', 'Looked doubtful'))
    expect(
      stepStates(skerry, shop.state)
        .filter(({ state }) => state !== 'done')
        .map(({ step }) => step.id),
    ).toEqual(['case-marks'])
    const { typed } = shop.entries.map(({ event }) => event).find((event) => event.type === 'marks-noted')!
    shop.does({ type: 'note-marks', step: 'case-marks', typed })
    expect(allDone(shop)).toBe(true)
  })

  it('of marks opens all that stood on them where they read otherwise, once that was seen', () => {
    const shop = done(skerry)
    shop.does(redo(shop, 'case-marks', 'Looked doubtful'))
    const other = { type: 'note-marks', step: 'case-marks', typed: '1 1 1 1' } as const
    expect(shop.refuses(other)).toContain('opens “Last check”')
    const opens = openedAgain(skerry, shop.state, shop.step('case-marks')).map(({ id }) => id)
    expect(shop.refuses({ ...other, opens })).toContain('undo at the bench')
    shop.does({ ...other, opens, takenApart: true })
    const open = skerry.steps.filter((step) => !isStepDone(skerry, shop.state, step)).map(({ id }) => id)
    expect(open.toSorted()).toEqual([...closures(skerry).get('case-marks')!].toSorted())
    expect(hasWork(skerry, shop.state, shop.step('fit-mains'))).toBe(false)
  })

  it('is held against the rules with all that followed from it', () => {
    const shop = done(skerry)
    shop.does(redo(shop, 'rods-on'))
    shop.worksThrough('rods-on')
    shop.does(redo(shop, 'case-marks', 'Looked doubtful'))
    const opens = openedAgain(skerry, shop.state, shop.step('case-marks')).map(({ id }) => id)
    shop.does({ type: 'note-marks', step: 'case-marks', typed: '1 1 1 1', opens, takenApart: true })
    expect(shop.entries.filter(({ event }) => event.type === 'step-reopened').length).toBeGreaterThan(10)
    const checked = checkRules(skerry, newBuild.specSha256, shop.entries)
    let now = checked.next()
    while (now.done !== true) now = checked.next()
    expect(now.value).toBeNull()
    const dropped = shop.entries.findLastIndex(({ event }) => event.type === 'step-reopened')
    const altered = checkRules(
      skerry,
      newBuild.specSha256,
      shop.entries.filter((_, index) => index !== dropped),
    )
    now = altered.next()
    while (now.done !== true) now = altered.next()
    expect(now.value).not.toBeNull()
  })

  it('is not in a finished build', () => {
    const shop = done(skerry)
    shop.goesOn()
    expect(shop.refuses(redo(shop, 'lay-crank'))).toContain('finished')
  })
})
