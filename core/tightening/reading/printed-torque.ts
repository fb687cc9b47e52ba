import { writtenAt, type Pass, type SpecDocument } from '../../engine/index.ts'
import { readTorque, type TorqueUnit } from '../../quantity/index.ts'
import type { Words } from '../../words/index.ts'

/** A torque of a pass as the manual prints it: a value, the limits of a range, or both. Each may be in two units. */
export interface PrintedTorque {
  readonly target?: string | undefined
  readonly least?: string | undefined
  readonly most?: string | undefined
}

type PassInDocument = SpecDocument['procedures'][number]['passes'][number]

/**
 * What the manual prints for a fastener in a pass, counted from 0 as the passes are carried out; null where that is no torque, and
 * for a step on the way to it, which no manual prints.
 */
export function printedTorque(
  document: SpecDocument,
  { id, passes }: { readonly id: string; readonly passes: readonly Pass[] },
  pass: number,
  fastener: string | null,
): PrintedTorque | null {
  const { step } = passes[pass]!
  if (step !== undefined && step.number < step.of) return null
  const written = document.procedures.find((each) => each.id === id)?.passes[writtenAt(passes, pass)]
  if (written === undefined) return null
  const { target, least, most } = valueFor(written, fastener) ?? {}
  return target === undefined && least === undefined ? null : { target, least, most }
}

function valueFor(pass: PassInDocument, fastener: string | null): PrintedTorque | null {
  if (pass.kind === 'tighten-to-stretch') return pass.torque
  if (pass.kind !== 'torque' && pass.kind !== 'recheck') return null
  return pass.others?.find(({ fasteners }) => fastener !== null && fasteners.includes(fastener)) ?? pass
}

/** The same of a whole pass: its value, and those that some fasteners have for themselves. */
export function printedTorques(
  document: SpecDocument,
  procedure: { readonly id: string; readonly passes: readonly Pass[] },
  index: number,
): readonly PrintedTorque[] {
  const pass = procedure.passes[index]!
  const others = 'others' in pass ? (pass.others ?? []) : []
  return [null, ...others.map(({ fasteners }) => fasteners[0] ?? null)].flatMap(
    (fastener) => printedTorque(document, procedure, index, fastener) ?? [],
  )
}

/** Whether a part of it is in another unit than the scale, so that people should see it as it is printed. */
export function isInAnotherUnit(printed: PrintedTorque, unit: TorqueUnit): boolean {
  return [printed.target, printed.least, printed.most]
    .flatMap((text) => text?.split(/[()]/) ?? [])
    .filter((text) => text.trim() !== '')
    .some((text) => {
      const read = readTorque(text, unit)
      return read.ok && read.value.unit !== unit
    })
}

/** `In the manual: 75 lbf·ft (102 N·m)`, `In the manual: 75 lbf·ft, 70 lbf·ft to 80 lbf·ft; 60 lbf·ft`. */
export function printedText(words: Words, values: readonly PrintedTorque[]): string {
  const texts = values.map(({ target, least, most }) => {
    const range =
      least === undefined || most === undefined ? [] : [words.passes.printedRange({ least, most })]
    return [...(target === undefined ? [] : [target]), ...range].join(', ')
  })
  return words.passes.printed({ value: texts.join('; ') })
}
