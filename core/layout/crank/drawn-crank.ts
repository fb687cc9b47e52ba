import { showsCrank, type EngineSpec } from '../../engine/index.ts'
import type { DrawingFacts } from '../facts.ts'
import type { Content } from '../content.ts'
import type { OnFace } from '../case/on-face.ts'
import type { Boss } from '../case/outline.ts'
import type { Point } from '../../plane/index.ts'
import { acrossAnEnd } from '../view.ts'
import { acrossOf, piecesOf, type Piece } from './pieces.ts'

/** The pieces of the crank that are drawn on a face; none where it does not lie open there, or the spec has none. */
export function drawnPieces(
  { crank, ...spec }: EngineSpec,
  { face }: Pick<OnFace, 'face'>,
  facts: Pick<DrawingFacts, 'crank'>,
  content: Pick<Content, 'crank'>,
  outline: readonly Point[],
): readonly Piece[] {
  if (crank === undefined || facts.crank !== true || !content.crank || !showsCrank(face)) return []
  // Looked at along it, its ends are nowhere.
  const xs = acrossAnEnd(face) ? [0] : outline.map(({ x }) => x)
  return piecesOf({ ...spec, crank }, crank, { from: Math.min(...xs), to: Math.max(...xs) })
}

/** What the crank covers on its face, as corners of its pieces: the sheet has room for them as for the face itself. */
export function coveredBy(pieces: readonly Piece[], { face }: Pick<OnFace, 'face'>): readonly Boss[] {
  const corner = (x: number, y: number): Boss => ({ x, y, radius: 0 })
  if (acrossAnEnd(face))
    return pieces.flatMap(({ rounds }) =>
      rounds.flatMap(({ y, z, radius }) => [corner(y - radius, z - radius), corner(y + radius, z + radius)]),
    )
  return pieces.flatMap((piece) => {
    const { least, most } = acrossOf(piece)
    return [corner(piece.from, least), corner(piece.to, most)]
  })
}
