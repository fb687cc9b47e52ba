import { angleAmount, shortLengthAmount, type Length } from '../../quantity/index.ts'
import type { FacePart } from '../../engine/index.ts'
import type { Words } from '../../words/index.ts'
import { plain, type Description, type DescribedBuild } from './description.ts'

/** A pin of the crank: its rods, and where it stands as the crank is laid. */
export function describeThrow({ spec, words }: DescribedBuild, id: string): Description | null {
  const { crank } = spec
  const one = crank?.throws.find((each) => each.id === id)
  if (crank === undefined || one === undefined) return null
  const { described, amounts } = words
  return {
    title: described.pin(one),
    lines: [
      plain(described.pinAngle({ angle: amounts.amount(angleAmount(one.angle)) })),
      plain(described.throwRadius({ radius: mm(words, crank.throwRadius) })),
    ],
  }
}

export function describeWheel({ spec, words }: DescribedBuild, id: string): Description | null {
  const wheel = spec.crank?.wheels.find((each) => each.id === id)
  if (wheel === undefined) return null
  const size = { diameter: mm(words, wheel.diameter), width: mm(words, wheel.width) }
  return { title: words.drawing.list.wheels[wheel.kind], lines: [plain(words.described.wheelSize(size))] }
}

/** A part in a face: its size, how deep it stands, which way its lip points or the oil flows. */
export function describeFacePart({ spec, words }: DescribedBuild, id: string): Description | null {
  const part = spec.case.faceParts.find((each) => each.id === id)
  if (part === undefined) return null
  return { title: words.drawing.list.facePart(part), lines: linesOf(words, part).map(plain) }
}

function linesOf(words: Words, part: FacePart): readonly string[] {
  const { described } = words
  const size =
    'diameter' in part
      ? described.partSize({ diameter: mm(words, part.diameter) })
      : described.passageSize({ along: mm(words, part.size[0]), across: mm(words, part.size[1]) })
  const depth = 'depth' in part ? part.depth : undefined
  return [
    size,
    ...('lip' in part ? [described.lips[part.lip]] : []),
    ...('flow' in part ? [described.flows[part.flow]] : []),
    ...(depth === undefined ? [] : [described.stands({ depth: depth > 0 ? mm(words, depth) : null })]),
    ...(part.kind === 'two-piece-seal' ? [described.sealedEnds] : []),
  ]
}

export function describeGasket({ spec, words }: DescribedBuild, face: string): Description | null {
  const gasket = spec.case.faces.find(({ id }) => id === face)?.gasket
  if (gasket === undefined) return null
  const part = spec.parts.find(({ id }) => id === gasket.part)
  const { described } = words
  const width = plain(described.gasketWidth({ width: mm(words, gasket.width) }))
  const isNew = part?.reuse === 'new-each-time' ? [plain(described.newEachTime)] : []
  return { title: part?.name ?? words.drawing.list.gasket, lines: [width, ...isNew] }
}

function mm({ amounts }: Words, length: Length): string {
  return amounts.amount(shortLengthAmount(length, 'mm', 2))
}
