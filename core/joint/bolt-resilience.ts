import { inMillimetres, millimetres, type Length } from '../quantity/index.ts'
import type { FastenerGroup } from '../engine/index.ts'
import type { Thread } from './thread.ts'

/** Young's modulus in MPa; cast iron is grey iron (Shigley's Mechanical Engineering Design, table 8-8). */
export const elasticModuliMpa = { steel: 207_000, aluminium: 71_000, 'cast-iron': 100_000 } as const

/** What the thread goes into: a nut below the joint, or the last of the parts, tapped. */
export type Anchor = FastenerGroup['into']

/** A length of a bolt that has one section. */
export type Section = { readonly length: Length; readonly areaMm2: number; readonly modulusMpa: number }

/** A bolt from head to anchor: plain shank first, then the thread that is in nothing. */
export type Bolt = {
  readonly thread: Thread
  /** What it is turned by: a hexagon, which it is when absent, or a socket in a round head. */
  readonly head?: FastenerGroup['head']
  readonly shank: Length
  /** Of the shank, where it is waisted; as thick as the thread when absent. */
  readonly shankDiameter?: Length | undefined
  readonly freeThread: Length
  readonly anchor: Anchor
  readonly modulusMpa: number
  /** Of the nut, or of the tapped part. */
  readonly anchorModulusMpa: number
}

/** How far each newton stretches a row of sections, in mm/N: Σ l/(E·A). */
export function seriesResilience(sections: readonly Section[]): number {
  return sections.reduce(
    (total, { length, areaMm2, modulusMpa }) => total + inMillimetres(length) / (modulusMpa * areaMm2),
    0,
  )
}

/**
 * How far each newton stretches a bolt, in mm/N (δ_S). Head, engaged thread and anchor give way as well, and count as
 * lengths of their own: 0.5·d of nominal section for a hexagon head and 0.4·d for a socket head, 0.5·d of root section
 * for the engaged thread, and for the anchor 0.4·d (nut) or 0.33·d (tapped hole) of nominal section (VDI 2230 part 1,
 * 5.1.1).
 */
export function boltResilience(bolt: Bolt): number {
  const { thread, head = 'hexagon', shank, freeThread, anchor, modulusMpa, anchorModulusMpa } = bolt
  const nominalMm2 = discMm2(thread.diameter)
  const rootMm2 = discMm2(thread.rootDiameter)
  const diameters = (count: number) => millimetres(count * inMillimetres(thread.diameter))
  return seriesResilience([
    { length: diameters(head === 'hexagon' ? 0.5 : 0.4), areaMm2: nominalMm2, modulusMpa },
    { length: shank, areaMm2: discMm2(bolt.shankDiameter ?? thread.diameter), modulusMpa },
    { length: freeThread, areaMm2: rootMm2, modulusMpa },
    { length: diameters(0.5), areaMm2: rootMm2, modulusMpa },
    {
      length: diameters(anchor === 'nut' ? 0.4 : 0.33),
      areaMm2: nominalMm2,
      modulusMpa: anchorModulusMpa,
    },
  ])
}

function discMm2(diameter: Length): number {
  return (Math.PI / 4) * inMillimetres(diameter) ** 2
}
