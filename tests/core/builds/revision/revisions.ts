import { readFileSync } from 'node:fs'
import {
  checkRules,
  evolve,
  isStepDone,
  takeRevision,
  effectsOfRevision,
  type BuildState,
  type SpecRevision,
  type TakingRevision,
} from '../../../../core/builds/index.ts'
import { readSpec, type EngineSpec, type SpecDocument } from '../../../../core/engine/index.ts'
import { sentenceOf } from '../../../../core/problem/index.ts'
import { engineFile } from '../../../engine-files.ts'
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

export function changed(...changes: readonly Change[]) {
  const document = structuredClone(skerry)
  document.revision = 'next'
  const steps = changes.flatMap((change) => change(document))
  return { to: revision(document, 'b'), steps }
}

export const from = revision(skerry, 'a')

/** Changes of a spec, each with the steps of which the spec then says something else: told by whoever wrote the change. */
export const changes: { readonly [name: string]: Change } = {
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
export function reaches(
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

export function seen(state: BuildState, to: SpecRevision): TakingRevision {
  const { opened, undo } = effectsOfRevision(from, to, state)
  return {
    reason: 'The maker has a newer bulletin',
    opens: opened.map(({ id }) => id),
    ...(undo.length > 0 && { takenApart: true as const }),
  }
}

/** The build as it goes on by the other revision. */
export function goneOnBy(shop: Workshop, to: SpecRevision): Workshop {
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

export function upTo(id: string): Workshop {
  const shop = new Workshop(from.spec)
  shop.worksThrough(id)
  return shop
}

export function allDone(shop: Workshop): Workshop {
  while (!shop.spec.steps.every((step) => isStepDone(shop.spec, shop.state, step))) shop.goesOn()
  return shop
}

export function against(shop: Workshop, to: SpecRevision) {
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

export function inTheEngine({ state, spec }: Workshop) {
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
