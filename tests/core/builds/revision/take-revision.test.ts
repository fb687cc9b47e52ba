import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  buildSheet,
  changedSteps,
  checkRules,
  evolve,
  isStepDone,
  revisionSpans,
  takeRevision,
  effectsOfRevision,
  type BuildState,
  type SpecRevision,
  type TakingRevision,
} from '../../../../core/builds/index.ts'
import { readSpec, type EngineSpec, type SpecDocument } from '../../../../core/engine/index.ts'
import { sentenceOf } from '../../../../core/problem/index.ts'
import { engineFile } from '../../../engine-files.ts'
import { checkProperty } from '../../../property.ts'
import { newBuild, Workshop } from '../workshop.ts'

type Change = (document: Open) => readonly string[]
/** A document that may be changed in place. */
type Open = {
  steps: {
    id: string
    name: unknown
    kind: string
    after?: string[]
    instruction?: unknown
    note?: unknown
  }[]
  procedures: {
    id: string
    orders: { sequence: string[] }[]
    passes: { kind: string; target?: string; least?: string; most?: string }[]
  }[]
  fits: { id: string; clearance: { most: string } }[]
  beads: { id: string; openTimeMinutes: number }[]
  fasteners: { id: string; where: unknown }[]
  cautions: unknown[]
  summary: unknown
  revision: unknown
}

const skerry = JSON.parse(readFileSync(engineFile('skerry-3'), 'utf8')) as Open

function revision(document: Open, sha: string): SpecRevision {
  const read = readSpec(JSON.stringify(document))
  if (!read.ok) throw new Error(read.problems.map(sentenceOf).join('\n'))
  return { spec: read.spec, document: document as unknown as SpecDocument, sha256: sha.repeat(64) }
}

function changed(...changes: readonly Change[]) {
  const document = structuredClone(skerry)
  document.revision = 'next'
  const steps = changes.flatMap((change) => change(document))
  return { to: revision(document, 'b'), steps }
}

const from = revision(skerry, 'a')

/** Changes of a spec, each with the steps of which the spec then says something else: told by whoever wrote the change. */
const changes: { readonly [name: string]: Change } = {
  torque: ({ procedures }) => {
    procedures.find(({ id }) => id === 'case')!.passes[1]!.most = '16 N·m'
    return ['case-run']
  },
  order: ({ procedures }) => {
    procedures.find(({ id }) => id === 'rods')!.orders[0]!.sequence.reverse()
    return ['rods-on']
  },
  clearance: ({ fits }) => {
    fits.find(({ id }) => id === 'mains')!.clearance.most = '51 µm'
    return ['choose-mains', 'fit-mains']
  },
  sealant: ({ beads }) => {
    beads[0]!.openTimeMinutes += 1
    return ['bead-plus']
  },
  instruction: ({ steps }) => {
    steps.find(({ id }) => id === 'sump-on')!.instruction = 'Lay it on with the drain to the drive end.'
    return ['sump-on']
  },
  'new step': ({ steps }) => {
    const at = steps.findIndex(({ id }) => id === 'close-case')
    steps[at]!.after!.push('look-inside')
    const instruction = 'Nothing lies in the case.'
    steps.splice(at, 0, {
      id: 'look-inside',
      name: 'Look inside',
      kind: 'check',
      after: ['rods-free'],
      instruction,
    } as never)
    return ['look-inside']
  },
  'dropped step': ({ steps }) => {
    const at = steps.findIndex(({ id }) => id === 'turn-crank')
    steps.splice(at, 1)
    for (const step of steps)
      step.after = step.after?.map((id) => (id === 'turn-crank' ? 'flange-run' : id)) ?? []
    return ['turn-crank']
  },
  'other name': ({ steps }) => {
    steps.find(({ id }) => id === 'lay-crank')!.name = 'The crank'
    return []
  },
  'where a bolt is': ({ fasteners }) => {
    fasteners[0]!.where = 'near the nose'
    return []
  },
  caution: ({ cautions }) => {
    cautions.push({ signal: 'NOTICE', text: 'Keep it clean.' })
    return []
  },
}

/** On what a step stands at first hand by a plan: written from what the kinds of step ask for. */
function under({ steps }: EngineSpec, id: string): readonly string[] {
  const step = steps.find((each) => each.id === id)
  if (step === undefined) return []
  const used = steps.filter((other) => {
    if (step.kind === 'choose-shells') return other.kind === 'note-marks' && other.fit === step.fit
    return step.kind === 'fit-shells' && other.kind === 'choose-shells' && other.fit === step.fit
  })
  return [...step.after, ...used.map((each) => each.id)]
}

/** Whether a step is one of these or stands on one, near or far, by any of the plans. */
function reaches(
  plans: readonly EngineSpec[],
  id: string,
  ones: ReadonlySet<string>,
  seen = new Set<string>(),
): boolean {
  if (ones.has(id)) return true
  if (seen.has(id)) return false
  seen.add(id)
  return plans.flatMap((plan) => under(plan, id)).some((each) => reaches(plans, each, ones, seen))
}

function seen(state: BuildState, to: SpecRevision): TakingRevision {
  const { opened, undo } = effectsOfRevision(from, to, state)
  return {
    reason: 'The maker has a newer bulletin',
    opens: opened.map(({ id }) => id),
    ...(undo.length > 0 && { takenApart: true as const }),
  }
}

/** The build as it goes on by the other revision. */
function goneOnBy(shop: Workshop, to: SpecRevision): Workshop {
  const taken = takeRevision(from, to, shop.state, seen(shop.state, to))
  if (!taken.ok) throw new Error(sentenceOf(taken.problem))
  const next = new Workshop(to.spec)
  next.entries.splice(0, 1, ...shop.entries)
  next.state = shop.state
  for (const event of taken.value) {
    const seq = next.entries.length + 1
    const at = new Date(Date.UTC(2026, 2, 9, 7, seq)).toISOString()
    const entry = { seq, at, person: 'Ada', event, hash: seq.toString(16).padStart(64, '0') }
    next.entries.push(entry)
    next.state = evolve(next.state, entry)
  }
  return next
}

function upTo(id: string): Workshop {
  const shop = new Workshop(from.spec)
  shop.worksThrough(id)
  return shop
}

function allDone(shop: Workshop): Workshop {
  while (!shop.spec.steps.every((step) => isStepDone(shop.spec, shop.state, step))) shop.goesOn()
  return shop
}

function against(shop: Workshop, to: SpecRevision) {
  const checking = checkRules(
    from.spec,
    newBuild.specSha256,
    shop.entries,
    (sha) => [from, to].find(({ sha256 }) => sha256 === sha) ?? null,
  )
  let now = checking.next()
  while (now.done !== true) now = checking.next()
  return now.value
}

function inTheEngine({ state, spec }: Workshop) {
  return {
    ...{ marks: state.marks, shells: state.shells, fitted: [...state.fitted].toSorted() },
    partsFitted: [...state.partsFitted].toSorted(),
    beads: Object.keys(state.beads).toSorted(),
    checks: Object.entries(state.checks)
      .filter(([id]) => spec.steps.some((step) => step.id === id))
      .map(([id, { verdict }]) => [id, verdict])
      .toSorted(),
    steps: spec.steps.map((step) => [step.id, isStepDone(spec, state, step)]),
  }
}

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
