import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  buildSheet,
  changedSteps,
  checkRules,
  isStepDone,
  revisionSpans,
  takeRevision,
  effectsOfRevision,
  type TakingRevision,
} from '../../../../core/builds/index.ts'
import { sentenceOf } from '../../../../core/problem/index.ts'
import { checkProperty } from '../../../property.ts'
import { newBuild, Workshop } from '../workshop.ts'
import {
  changed,
  from,
  changes,
  reaches,
  seen,
  goneOnBy,
  upTo,
  allDone,
  against,
  inTheEngine,
} from './revisions.ts'

describe('a newer revision that a build takes over', () => {
  it('opens what it says otherwise and all that stands on that by either plan, and nothing else', () => {
    const names = Object.keys(changes)
    const any = fc.property(
      fc.nat(from.spec.steps.length - 1),
      fc.uniqueArray(fc.constantFrom(...names), { minLength: 1, maxLength: 3 }),
      (far, chosen) => {
        const shop = upTo(from.spec.steps[far]!.id)
        const { to, steps } = changed(...chosen.map((name) => changes[name]!))
        expect([...changedSteps(from, to)].toSorted()).toEqual([...new Set(steps)].toSorted())
        const wereDone = from.spec.steps.filter((step) => isStepDone(from.spec, shop.state, step))
        const expected = wereDone
          .filter(({ id }) => reaches([from.spec, to.spec], id, new Set(steps)))
          .map(({ id }) => id)
        const { opened } = effectsOfRevision(from, to, shop.state)
        expect(opened.map(({ id }) => id).toSorted()).toEqual(expected.toSorted())

        const next = goneOnBy(shop, to)
        const stillDone = wereDone
          .map(({ id }) => id)
          .filter((id) => !expected.includes(id) && to.spec.steps.some((step) => step.id === id))
        const done = to.spec.steps.filter((step) => isStepDone(to.spec, next.state, step)).map(({ id }) => id)
        expect(done.toSorted()).toEqual(stillDone.toSorted())

        allDone(next)
        expect(inTheEngine(next)).toEqual(inTheEngine(allDone(new Workshop(to.spec))))
        expect(against(next, to)).toBeNull()
        const [first] = revisionSpans(next.entries)
        const sheet = buildSheet(to.spec, next.entries, [{ spec: from.spec, until: first!.until }])
        expect(sheet.revisions).toMatchObject([{ after: 'next', opened: expected.map(() => ({})) }])
        expect(sheet.steps.every((step) => step.done !== null)).toBe(true)
        expect(sheet.redone).toEqual([])
      },
    )
    checkProperty(any, { numRuns: 12 })
  }, 60_000)

  it('judges on the sheet no pull by a value that came later', () => {
    const shop = upTo('case-run')
    const { to } = changed(changes['torque']!)
    const next = allDone(goneOnBy(shop, to))
    const { until } = revisionSpans(next.entries)[0]!
    const sheet = buildSheet(to.spec, next.entries, [{ spec: from.spec, until }])
    const run = sheet.runs.find(
      ({ name }) => name === to.spec.procedures.find(({ id }) => id === 'case')!.name,
    )!
    const most = (after: boolean) =>
      new Set(
        run.pulls
          .filter((pull) => pull.pass === 2 && pull.seq > until === after)
          .map(({ window }) => (window?.kind === 'torque' ? window.most : null)),
      )
    expect([...most(false)]).toEqual([16.5])
    expect([...most(true)]).toEqual([16])
    expect(
      run.pulls.filter(({ seq }) => seq <= until).every(({ setAside }) => setAside === 'run-restarted'),
    ).toBe(true)
  })

  it('waits until nothing is half done, and is refused until what it opens was seen and undone', () => {
    const { to } = changed(changes['torque']!)
    const shop = upTo('case-run')
    const all = seen(shop.state, to)
    const refusal = (said: TakingRevision, state = shop.state) => {
      const taken = takeRevision(from, to, state, said)
      return taken.ok ? null : sentenceOf(taken.problem)
    }
    expect(refusal({ ...all, opens: [] })).toContain('opens “')
    expect(refusal({ ...all, takenApart: undefined })).toContain('undo at the bench')
    expect(refusal({ ...all, reason: ' ' })).toContain('why the newer revision is taken over')
    expect(refusal(all)).toBeNull()
    const begun = new Workshop(from.spec)
    begun.worksUpTo('rods-on')
    begun.goesOn()
    begun.goesOn()
    begun.goesOn()
    expect(refusal(seen(begun.state, to), begun.state)).toContain('is half done')
    const finished = allDone(new Workshop(from.spec))
    finished.goesOn()
    expect(refusal(seen(finished.state, to), finished.state)).toContain('finished')
    expect(refusal(all, { ...shop.state, voided: true })).toContain('void')
    const same = takeRevision(from, from, shop.state, all)
    expect(!same.ok && same.problem.code).toBe('revision-same')
  })

  it('opens what stands on a step that is not done, where only the newer plan puts it there', () => {
    const shop = upTo('rods-on')
    const { to } = changed(({ steps }) => {
      steps.find(({ id }) => id === 'fit-mains')!.after!.push('late')
      steps.push({ id: 'late', name: 'Late', kind: 'check', after: [], instruction: 'Look.' })
      return []
    })
    expect(effectsOfRevision(from, to, shop.state).opened.map(({ id }) => id)).toEqual([
      'rods-on',
      'fit-rod-shells',
      'end-float',
      'lay-crank',
      'fit-mains',
    ])
  })

  it('has marks read again where its marks are others, and keeps readings that are said in the same terms', () => {
    const shop = upTo('fit-mains')
    const fitted = changed(({ fits }) => {
      const mains = fits.find(({ id }) => id === 'mains')! as unknown as { housing: { readAt: unknown } }
      mains.housing.readAt = 'On the other flange'
      return []
    })
    const next = goneOnBy(shop, fitted.to)
    expect(next.state.marks['mains']).toMatchObject({ housing: null })
    expect(next.state.marks['mains']!.journal).not.toBeNull()
    expect(buildSheet(next.spec, next.entries, []).fits[0]!.housing.noted).toBeNull()
  })

  it('cannot be put into a record that was not decided so', () => {
    const { to } = changed(changes['torque']!)
    const next = goneOnBy(upTo('case-run'), to)
    const without = next.entries.filter(
      ({ event }) => event.type !== 'step-reopened' || event.step !== 'case-run',
    )
    expect(against({ ...next, entries: without } as Workshop, to)).not.toBeNull()
    const unknown = checkRules(from.spec, newBuild.specSha256, next.entries)
    let now = unknown.next()
    while (now.done !== true) now = unknown.next()
    expect(now.value?.why.code).toBe('entry-out-of-place')
  })
})
