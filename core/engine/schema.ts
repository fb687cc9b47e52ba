import { z } from 'zod'
import { advise } from './advice.ts'
import { capsOf } from './caps.ts'
import { engineCase } from './case.ts'
import { crank } from './crank.ts'
import { signals } from './danger.ts'
import { bead, fastener, fastenerGroup, procedure } from './fastening.ts'
import { endFloat, fit, sideClearance } from './fit.ts'
import { parts } from './part.ts'
import { remembered } from './remembered.ts'
import { ringSet } from './rings.ts'
import { step } from './step.ts'
import { idText, nameText, sentenceText, shownName } from './text.ts'

/** Where the numbers come from. A demo spec says so on every screen and sheet. */
export const source = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('demo'), note: sentenceText }),
  z.strictObject({
    kind: z.literal('entered'),
    from: sentenceText,
    enteredBy: nameText,
    checkedBy: nameText.optional(),
    on: z.iso.date(),
    /** The demo that it was begun as a copy of: numbers that were not replaced are invented. */
    copiedFromDemo: idText.optional(),
  }),
])

/** What can hurt, in the words of this spec, which are the maker's where it has any. */
export const caution = z.strictObject({
  signal: z.enum(signals),
  text: sentenceText,
  /** The steps beside which it stands; all of them when absent. */
  steps: z.array(idText).max(100).optional(),
})

/** Where in the spec, as findings have it: `procedures[0].passes[2].target`. */
const placeInSpec = z.string().min(1).max(300)

/** A doubt of the audit that somebody looked into and accepted. */
const acceptedDoubt = z.strictObject({
  /** The doubt's code. */
  code: z.string().min(1).max(60),
  path: placeInSpec,
  /** What it said in numbers when it was accepted: with others it is another doubt. */
  numbers: z.array(z.number()).max(1000).optional(),
  reason: sentenceText,
  by: nameText,
  on: z.iso.date(),
})

/** A value that a second person compared with its source: the same, the same as it was typed unseen, or something else. */
const valueCheck = z.discriminatedUnion('how', [
  z.strictObject({ path: placeInSpec, by: nameText, on: z.iso.date(), how: z.enum(['same', 'typed']) }),
  z.strictObject({
    ...{ path: placeInSpec, by: nameText, on: z.iso.date(), how: z.literal('other') },
    /** What stands in the source, as the second person reads it. */
    found: z.string().trim().min(1).max(600),
  }),
])

/** Where a part of the spec is printed, and who entered it. */
const partPage = z.strictObject({
  path: placeInSpec,
  page: nameText,
  /** Where it is another one than the manual that the whole spec comes from. */
  document: nameText.optional(),
  by: nameText,
  on: z.iso.date(),
})

/** Who typed a value, where that is somebody else than who entered the spec. */
export const valueTypist = z.strictObject({ path: placeInSpec, by: nameText })

/** One engine's bottom end as a data file, version 1. */
export const engineSpec = z
  .strictObject({
    bedplateSpec: z.literal(1, { error: advise('version-of-spec', { version: 1 }) }),
    id: idText,
    name: shownName,
    summary: sentenceText,
    revision: shownName,
    source,
    case: remembered(engineCase),
    crank: remembered(crank).optional(),
    fits: remembered(z.array(remembered(fit)).max(20)),
    endFloat: endFloat.optional(),
    rodSideClearance: sideClearance.optional(),
    fastenerGroups: remembered(z.array(fastenerGroup).max(60)),
    fasteners: remembered(z.array(remembered(fastener)).max(2000)),
    procedures: remembered(z.array(remembered(procedure)).max(40)),
    beads: remembered(z.array(remembered(bead)).max(20)).default([]),
    parts: remembered(parts).default([]),
    /** The rings of the pistons, each set for pistons that are alike. */
    ringSets: remembered(z.array(remembered(ringSet)).max(8)).default([]),
    steps: remembered(z.array(remembered(step)).min(1, advise('steps-none')).max(100)),
    cautions: remembered(z.array(caution).max(60)),
    accepted: z.array(acceptedDoubt).max(200).optional(),
    checks: remembered(z.array(remembered(valueCheck)).max(10_000)).optional(),
    pages: remembered(z.array(remembered(partPage)).max(1000)).optional(),
    typedBy: remembered(z.array(remembered(valueTypist)).max(10_000)).optional(),
  })
  .overwrite((spec): typeof spec => withCaps(spec))

/** Finds the caps of the procedures that go cap by cap: which fasteners hold which is in the case. */
function withCaps<Spec extends Pick<EngineSpec, 'case' | 'fasteners' | 'procedures'>>(spec: Spec): Spec {
  if (spec.procedures.every(({ capByCap }) => capByCap !== true)) return spec
  const procedures = spec.procedures.map((each) =>
    each.capByCap === true ? { ...each, caps: capsOf(spec, each) } : each,
  )
  return { ...spec, procedures }
}

export type EngineSpec = z.output<typeof engineSpec>
/** A spec as it is written, before its texts become quantities. */
export type SpecDocument = z.input<typeof engineSpec>
export type AcceptedDoubt = z.output<typeof acceptedDoubt>
export type ValueCheck = z.output<typeof valueCheck>
export type Source = z.output<typeof source>
export type Caution = z.output<typeof caution>
