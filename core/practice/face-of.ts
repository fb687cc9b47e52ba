import type { EngineSpec, Face } from '../engine/index.ts'

/** The joint face on which a thing of the drawing is seen: `fastener/C4`, `half/M2/upper`, `face/joint`. Null for none. */
export function faceOf(spec: EngineSpec, about: string): Face | null {
  const [thing, id] = about.split('/')
  const { faces, saddles, rods, balanceBearings } = spec.case
  if (thing === 'bead') {
    const found = spec.beads.find((bead) => bead.id === id)?.face
    return faces.find((face) => face.id === found) ?? null
  }
  if (thing === 'face') return faces.find((face) => face.id === id) ?? null
  if (thing === 'fastener') {
    const found = spec.fasteners.find((fastener) => fastener.id === id)?.face
    return faces.find((face) => face.id === found) ?? null
  }
  const has = (list: readonly { readonly id: string }[]) => list.some((each) => each.id === id)
  const shows = has(saddles) ? 'saddles' : has(rods) ? 'rods' : has(balanceBearings) ? 'balance' : null
  return faces.find((face) => face.shows === shows) ?? null
}
