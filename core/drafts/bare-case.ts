import { z } from 'zod'
import { families, type SpecDocument } from '../engine/index.ts'
import { done, refused, type Outcome, type Problem } from '../problem/index.ts'
import { lengthIn, nanometres, parseAngle, parseLength, type Length } from '../quantity/index.ts'
import { languages, type Language, type Words } from '../words/index.ts'
import type { DraftBeginning } from './begin.ts'

const typed = z.string().max(40)

/** What a bare case is grown from; lengths and angles as they are typed, with their unit. */
export const bareParameters = z.strictObject({
  family: z.enum(families),
  cylinders: z.int().min(1).max(24),
  bankAngle: typed,
  bore: typed,
  /** Between neighbouring bores of one bank. */
  pitch: typed,
  mains: z.int().min(0).max(40),
  /** Of the housing, without shells; not asked for where there are no mains yet. */
  mainDiameter: typed,
  mainWidth: typed,
  /** Which main has the thrust washers, from the nose on; null where none is said. */
  thrustMain: z.int().min(1).max(40).nullable(),
  /** Null where the rods are left out. */
  rods: z.strictObject({ diameter: typed, width: typed }).nullable(),
})
export type BareParameters = z.output<typeof bareParameters>

/** The words of all languages, for the texts that a grown spec has. */
export type AllWords = { readonly [Each in Language]: Words }

/**
 * A case with its saddles and rods, nothing else: no torque, no limit, no fastener is made up, and the audit says what is missing.
 * The saddles are spread evenly along the bores, the first one half a bore's pitch from the nose; of two banks the second lies
 * a rod's width behind the first (common practice, no source). All of it is for the person to correct by the manual.
 *
 * Refuses what `parseLength` and `parseAngle` refuse and `bare-size-not-above-zero`, with the name of the parameter as path, and
 * `bare-thrust-main` where there is no such main.
 */
export function bareCase(
  words: AllWords,
  { id, name, person, from, on }: DraftBeginning,
  parameters: BareParameters,
): Outcome<SpecDocument> {
  const sizes = sizesOf(parameters)
  if (!sizes.ok) return sizes
  const { family, cylinders, mains, thrustMain, rods } = parameters
  if (thrustMain !== null && thrustMain > mains)
    return refused('bare-thrust-main', { main: thrustMain, mains }, 'thrustMain')
  const { angle, pitch, rodWidth } = sizes.value
  const hasBanks = angle > 0
  const inBank = hasBanks ? Math.ceil(cylinders / 2) : cylinders
  const behind = hasBanks ? rodWidth : 0
  const nose = pitch / 2
  const text = (of: (grown: Words['drafts']['grown']) => string) =>
    Object.fromEntries(languages.map((each) => [each, of(words[each].drafts.grown)]))
  const boreAt = (index: number) =>
    index < inBank
      ? nose + pitch / 2 - behind / 2 + index * pitch
      : nose + pitch / 2 + behind / 2 + (index - inBank) * pitch
  const mainAt = (index: number) => nose + (mains === 1 ? 0 : (index * inBank * pitch) / (mains - 1))
  return done({
    bedplateSpec: 1,
    ...{ id, name, revision: '1' },
    summary: text((grown) => grown.summary({ family, cylinders })),
    source: { kind: 'entered', from, enteredBy: person, on },
    case: {
      ...{
        family,
        cylinders,
        bankAngle: parameters.bankAngle,
        bore: parameters.bore,
        pitch: parameters.pitch,
      },
      firstBoreAt: inMm(boreAt(0)),
      ...(behind > 0 && { bankOffset: inMm(behind) }),
      sides: { plus: text((grown) => grown.sides.plus), minus: text((grown) => grown.sides.minus) },
      saddles: Array.from({ length: mains }, (_, index) => ({
        id: `M${index + 1}`,
        at: inMm(mainAt(index)),
        width: parameters.mainWidth,
        diameter: parameters.mainDiameter,
        ...(thrustMain === index + 1 && { thrust: true }),
      })),
      ...(rods !== null && {
        rods: Array.from({ length: cylinders }, (_, index) => ({
          id: `B${index + 1}`,
          at: inMm(boreAt(index)),
          width: rods.width,
          diameter: rods.diameter,
          cylinder: index + 1,
        })),
      }),
      faces: [
        {
          id: 'joint',
          name: text((grown) => grown.joints[family]),
          shows: 'saddles',
          workedFrom: family === 'split-vertical' || family === 'tunnel' ? 'above' : 'below',
        },
        ...(rods === null
          ? []
          : [
              {
                id: 'rods',
                name: text((grown) => grown.rodFace),
                shows: 'rods' as const,
                workedFrom: family === 'split-vertical' ? ('above' as const) : ('below' as const),
              },
            ]),
      ],
    },
    ...{ fits: [], fastenerGroups: [], fasteners: [], procedures: [] },
    steps: [
      {
        id: 'look-over',
        kind: 'check',
        name: text((grown) => grown.firstStep.name),
        instruction: text((grown) => grown.firstStep.instruction),
      },
    ],
    cautions: [{ signal: 'NOTICE', text: text((grown) => grown.standingCaution) }],
  })
}

interface Sizes {
  readonly angle: number
  readonly pitch: Length
  /** 0 without rods. */
  readonly rodWidth: number
}

function sizesOf(parameters: BareParameters): Outcome<Sizes> {
  const angle = parseAngle(parameters.bankAngle)
  if (!angle.ok) return at('bankAngle', angle.problem)
  const sizes: Record<string, string> = {
    bore: parameters.bore,
    pitch: parameters.pitch,
    ...(parameters.mains > 0 && {
      mainDiameter: parameters.mainDiameter,
      mainWidth: parameters.mainWidth,
    }),
    ...(parameters.rods && { rodDiameter: parameters.rods.diameter, rodWidth: parameters.rods.width }),
  }
  const read: Record<string, Length> = {}
  for (const [name, text] of Object.entries(sizes)) {
    const length = parseLength(text)
    if (!length.ok) return at(name, length.problem)
    if (length.value <= 0) return refused('bare-size-not-above-zero', {}, name)
    read[name] = length.value
  }
  return done({ angle: angle.value, pitch: read.pitch!, rodWidth: read.rodWidth ?? 0 })
}

function at(path: string, problem: Problem): Outcome<never> {
  return { ok: false, problem: { ...problem, path } }
}

/** To the micrometre: a grown place is for the eye. */
function inMm(length: number): string {
  return `${Number(lengthIn(nanometres(Math.round(length / 1000) * 1000), 'mm').toFixed(3))} mm`
}
