import type { FlangeBeam } from './flange.ts'

export type Section = Omit<FlangeBeam, 'from' | 'to'>

/** What lies between the faces: nothing but a film of sealant at most, or a gasket. */
export type BetweenFaces = 'metal' | 'gasket'

/**
 * A flat gasket of vegetable fibre: Young's modulus of 120 MPa (Shigley's Mechanical Engineering Design,
 * table of gasket materials, from memory), 0.5 mm thick (common practice, no source).
 */
const gasket = { modulusMpa: 120, thicknessMm: 0.5 }

/** Poisson's ratio of metals, near enough for twisting. */
const poisson = 0.3

/** A solid bar of one material, squeezed over its depth. */
export interface Bar {
  readonly widthMm: number
  readonly depthMm: number
  readonly modulusMpa: number
}

/**
 * A bar as a beam on a bed: the bed gives way as the bar itself does over its depth, and as what lies between
 * the faces. The torsion constant is that of a rectangle (Roark's Formulas for Stress and Strain, table of
 * torsion, within 4 %).
 */
export function barSection(bar: Bar, between: BetweenFaces): Section {
  const { widthMm, depthMm, modulusMpa } = bar
  const [short, long] = widthMm < depthMm ? [widthMm, depthMm] : [depthMm, widthMm]
  const ratio = short / long
  const softness = between === 'gasket' ? gasket.thicknessMm / gasket.modulusMpa : 0
  const torsion = long * short ** 3 * (1 / 3 - 0.21 * ratio * (1 - ratio ** 4 / 12))
  return {
    bendingNmm2: (modulusMpa * widthMm * depthMm ** 3) / 12,
    twistingNmm2: (modulusMpa / (2 * (1 + poisson))) * torsion,
    bedMpa: widthMm / (depthMm / modulusMpa + softness),
    widthMm,
  }
}
