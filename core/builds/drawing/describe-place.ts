import { shortLengthAmount, type Length } from '../../quantity/index.ts'
import type { Words } from '../../words/index.ts'
import type { Bead, EngineSpec } from '../../engine/index.ts'
import { flagInShort, openFlags } from '../../tightening/index.ts'
import { checkNote, washersCalled } from '../steps/check-note.ts'
import { faceOfStep } from '../steps/face-of-step.ts'
import { stampOf } from '../events/stamp.ts'
import { plain, type Description, type DescriptionLine, type DescribedBuild } from './description.ts'

/** The thrust washers: the end float that they leave, and what was measured of it. */
export function describeThrust(build: DescribedBuild, saddle: string): Description {
  const { spec, words } = build
  const { described } = words
  const { endFloat } = spec
  const limits =
    endFloat?.saddle === saddle
      ? [plain(described.endFloat({ least: mm(words, endFloat.least), most: mm(words, endFloat.most) }))]
      : []
  const checks = spec.steps.filter((step) => step.kind === 'check' && step.gap === 'end-float')
  return {
    title: described.thrust({ saddle }),
    lines: [...limits, ...checks.flatMap(({ id }) => checkLines(build, id))],
  }
}

export function describeDowel({ spec, words }: DescribedBuild, id: string): Description | null {
  const dowel = spec.case.dowels.find((each) => each.id === id)
  if (dowel === undefined) return null
  const { dowel: title, dowelSize } = words.described
  const size = { diameter: mm(words, dowel.diameter), face: faceName(spec, dowel.face) }
  return { title, lines: [plain(dowelSize(size))] }
}

export function describePassage({ spec, words }: DescribedBuild, id: string): Description | null {
  const passage = spec.case.oilPassages.find((each) => each.id === id)
  if (passage === undefined) return null
  const [along, across] = passage.size
  const { described } = words
  return {
    title: described.passage(passage),
    lines: [
      plain(described.passageSize({ along: mm(words, along), across: mm(words, across) })),
      plain(described.passageFree),
    ],
  }
}

export function describeBead(build: DescribedBuild, id: string): Description | null {
  const bead = build.spec.beads.find((each) => each.id === id)
  if (bead === undefined) return null
  const { words } = build
  const { described } = words
  return {
    title: bead.name,
    lines: [
      plain(described.sealant({ sealant: bead.sealant, width: mm(words, bead.width) })),
      plain(described.openTime({ minutes: bead.openTimeMinutes })),
      laidLine(build, bead),
      ...bead.keepOut.map(({ name }) => plain(described.keepsOut({ name }))),
    ],
  }
}

/** A zone of a bead that no sealant may touch; zones count from 1. */
export function describeKeepOut(
  { spec, words }: DescribedBuild,
  beadId: string,
  zone: number,
): Description | null {
  const bead = spec.beads.find((each) => each.id === beadId)
  const keepOut = bead?.keepOut[zone - 1]
  return bead === undefined || keepOut === undefined
    ? null
    : { title: keepOut.name, lines: [plain(words.described.noSealant({ bead: bead.name }))] }
}

export function describeBore({ spec, words }: DescribedBuild, number: number): Description {
  const { bore, rods } = spec.case
  const { described } = words
  const own = rods.filter(({ cylinder }) => cylinder === number).map(({ id }) => id)
  return {
    title: described.bore({ number }),
    lines: [
      plain(described.boreSize({ diameter: mm(words, bore) })),
      ...(own.length === 0 ? [] : [plain(described.ofRods({ rods: own }))]),
    ],
  }
}

/** The face itself: what is on it, what is open on the build there, and its checks. */
export function describeFace(build: DescribedBuild, id: string): Description | null {
  const { spec, state, words } = build
  const { described } = words
  const face = spec.case.faces.find((each) => each.id === id)
  if (face === undefined) return null
  const count = (parts: readonly { readonly face: string }[]): number =>
    parts.filter((part) => part.face === id).length
  const flags = spec.procedures.flatMap((procedure) => {
    const run = state.runs[procedure.id]
    return procedure.face !== id || run === undefined
      ? []
      : openFlags(run)
          .filter(({ fastener }) => fastener === null)
          .map((flag): DescriptionLine => ({
            text: flagInShort(words, procedure, run, flag),
            state: 'flagged',
          }))
  })
  const checks = spec.steps.filter((step) => step.kind === 'check' && faceOfStep(spec, step) === id)
  return {
    title: face.name,
    lines: [
      plain(
        described.onFace({
          fasteners: count(spec.fasteners),
          dowels: count(spec.case.dowels),
          beads: count(spec.beads),
        }),
      ),
      plain(described.workedFrom({ from: face.workedFrom })),
      ...flags,
      ...checks.flatMap((step) => checkLines(build, step.id)),
    ],
  }
}

/** The last answer to a check, with what was read. */
function checkLines(
  { spec, state, entries, words }: DescribedBuild,
  step: string,
): readonly DescriptionLine[] {
  const answer = state.checks[step]
  if (answer === undefined) return []
  const name = spec.steps.find(({ id }) => id === step)?.name ?? step
  const entry = entries.findLast(({ event }) => event.type === 'check-answered' && event.step === step)
  const isGood = answer.verdict === 'good'
  const read = answer.reading === null ? null : readText(answer.reading)
  return [
    {
      text: words.described.check({
        name,
        isGood,
        read,
        note: checkNote(words, washersCalled(spec, answer)),
      }),
      state: isGood ? 'done' : 'flagged',
      ...(entry !== undefined && { by: stampOf(entry) }),
    },
  ]
}

function laidLine({ state, entries, words: { described } }: DescribedBuild, { id }: Bead): DescriptionLine {
  const entry = entries.find(({ seq }) => seq === state.beads[id]?.seq)
  return entry === undefined
    ? { text: described.notLaid, state: 'open' }
    : { text: described.laid, state: 'done', by: stampOf(entry) }
}

function faceName(spec: EngineSpec, id: string): string {
  return spec.case.faces.find((each) => each.id === id)?.name ?? id
}

/** As it was typed; a bare number was mm. */
function readText({ typed }: { readonly typed: string }): string {
  return /[^\d.,\s]/.test(typed) ? typed : `${typed} mm`
}

function mm(words: Words, length: Length): string {
  return words.amounts.amount(shortLengthAmount(length, 'mm'))
}
