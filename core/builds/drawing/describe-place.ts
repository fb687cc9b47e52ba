import { formatShort, inMillimetres, type Length } from '../../quantity/index.ts'
import type { Bead, EngineSpec } from '../../engine/index.ts'
import { flagInShort, openFlags } from '../../tightening/index.ts'
import { faceOfStep } from '../steps/face-of-step.ts'
import { stampOf } from '../events/stamp.ts'
import { plain, type Description, type DescriptionLine, type DescribedBuild } from './description.ts'

/** The thrust washers: the end float that they leave, and what was measured of it. */
export function describeThrust(build: DescribedBuild, saddle: string): Description {
  const { endFloat } = build.spec
  const limits = endFloat?.saddle === saddle ? [plain(`End float of the crank: ${between(endFloat)}`)] : []
  const checks = build.spec.steps.filter((step) => step.kind === 'check' && step.gap === 'end-float')
  return {
    title: `Thrust washers at saddle ${saddle}`,
    lines: [...limits, ...checks.flatMap(({ id }) => checkLines(build, id))],
  }
}

export function describeDowel({ spec }: DescribedBuild, id: string): Description | null {
  const dowel = spec.case.dowels.find((each) => each.id === id)
  return dowel === undefined
    ? null
    : { title: 'Dowel', lines: [plain(`${mm(dowel.diameter)} across, ${faceName(spec, dowel.face)}`)] }
}

export function describePassage({ spec }: DescribedBuild, id: string): Description | null {
  const passage = spec.case.oilPassages.find((each) => each.id === id)
  if (passage === undefined) return null
  const [along, across] = passage.size
  return {
    title: `Oil passage: ${passage.name}`,
    lines: [plain(`${mm(along)} along, ${mm(across)} across`), plain('Sealant must stay out of it')],
  }
}

export function describeBead(build: DescribedBuild, id: string): Description | null {
  const bead = build.spec.beads.find((each) => each.id === id)
  if (bead === undefined) return null
  return {
    title: bead.name,
    lines: [
      plain(`Sealant: ${bead.sealant}, ${mm(bead.width)} wide`),
      plain(`Close the joint within ${bead.openTimeMinutes} minutes of laying it`),
      laidLine(build, bead),
      ...bead.keepOut.map(({ name }) => plain(`Keeps out of: ${name}`)),
    ],
  }
}

/** A zone of a bead that no sealant may touch; zones count from 1. */
export function describeKeepOut({ spec }: DescribedBuild, beadId: string, zone: number): Description | null {
  const bead = spec.beads.find((each) => each.id === beadId)
  const keepOut = bead?.keepOut[zone - 1]
  return bead === undefined || keepOut === undefined
    ? null
    : { title: keepOut.name, lines: [plain(`No sealant here: “${bead.name}” passes beside it`)] }
}

export function describeBore({ spec }: DescribedBuild, number: number): Description {
  const { bore, rods } = spec.case
  const own = rods.filter(({ cylinder }) => cylinder === number).map(({ id }) => id)
  return {
    title: `Bore ${number}`,
    lines: [
      plain(`${mm(bore)}, behind this face`),
      ...(own.length === 0 ? [] : [plain(`Its rod’s big end: ${own.join(', ')}`)]),
    ],
  }
}

/** The face itself: what is on it, what is open on the build there, and its checks. */
export function describeFace(build: DescribedBuild, id: string): Description | null {
  const { spec, state } = build
  const face = spec.case.faces.find((each) => each.id === id)
  if (face === undefined) return null
  const count = (parts: readonly { readonly face: string }[], one: string, many: string): string => {
    const number = parts.filter((part) => part.face === id).length
    return `${number} ${number === 1 ? one : many}`
  }
  const flags = spec.procedures.flatMap((procedure) => {
    const run = state.runs[procedure.id]
    return procedure.face !== id || run === undefined
      ? []
      : openFlags(run)
          .filter(({ fastener }) => fastener === null)
          .map((flag): DescriptionLine => ({ text: flagInShort(procedure, run, flag), state: 'flagged' }))
  })
  const checks = spec.steps.filter((step) => step.kind === 'check' && faceOfStep(spec, step) === id)
  return {
    title: face.name,
    lines: [
      plain(
        [
          count(spec.fasteners, 'fastener', 'fasteners'),
          count(spec.case.dowels, 'dowel', 'dowels'),
          count(spec.beads, 'bead', 'beads'),
        ].join(', '),
      ),
      plain(`Worked on from ${face.workedFrom}`),
      ...flags,
      ...checks.flatMap((step) => checkLines(build, step.id)),
    ],
  }
}

/** The last answer to a check, with what was read. */
function checkLines({ spec, state, entries }: DescribedBuild, step: string): readonly DescriptionLine[] {
  const answer = state.checks[step]
  if (answer === undefined) return []
  const name = spec.steps.find(({ id }) => id === step)?.name ?? step
  const entry = entries.findLast(({ event }) => event.type === 'check-answered' && event.step === step)
  const said = [
    answer.verdict === 'good' ? 'good' : 'not good',
    ...(answer.reading === null ? [] : [`read ${readText(answer.reading)}`]),
    ...(answer.note === '' ? [] : [answer.note]),
  ]
  return [
    {
      text: `${name}: ${said.join(', ')}`,
      state: answer.verdict === 'good' ? 'done' : 'flagged',
      ...(entry !== undefined && { by: stampOf(entry) }),
    },
  ]
}

function laidLine({ state, entries }: DescribedBuild, { id }: Bead): DescriptionLine {
  const entry = entries.find(({ seq }) => seq === state.beads[id])
  return entry === undefined
    ? { text: 'Not laid yet', state: 'open' }
    : { text: 'Laid', state: 'done', by: stampOf(entry) }
}

function faceName(spec: EngineSpec, id: string): string {
  return spec.case.faces.find((each) => each.id === id)?.name ?? id
}

/** As it was typed; a bare number was mm. */
function readText({ typed }: { readonly typed: string }): string {
  return /[^\d.,\s]/.test(typed) ? typed : `${typed} mm`
}

function between({ least, most }: { readonly least: Length; readonly most: Length }): string {
  return `${mm(least)} to ${mm(most)}`
}

function mm(length: Length): string {
  return `${formatShort(inMillimetres(length), 3)} mm`
}
