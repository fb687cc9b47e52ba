import type { Flange, FlangePull } from '../../../../core/joint/index.ts'

/**
 * The same flange solved the long way, to check the short one: the whole stiffness matrix from textbook
 * formulas, every spring taken as acting, a general solver, the springs that would act the wrong way looked
 * out and left off, and again until none changes. Kept from one pull to the next are where the nuts stand and
 * which springs acted.
 */
export type Solver = (
  size: number,
  entries: ReadonlyMap<number, number>,
  forces: readonly number[],
) => readonly number[]

interface Spring {
  readonly node: number
  readonly stiffness: number
  readonly squeeze: readonly [number, number, number]
}

export function solvedFromScratch(flange: Flange, pulls: readonly FlangePull[], solve: Solver) {
  const flangeSize = 3 * flange.nodes.length
  const pads = padsOf(flange)
  const bolts = flange.bolts.map(({ node, stiffnessNPerMm }): Spring => ({
    node,
    stiffness: stiffnessNPerMm,
    squeeze: [-1, 0, 0],
  }))
  const beams = stiffnessEntries(flange)
  let padsAct = pads.map(() => true)
  let boltsAct = bolts.map(() => true)
  const unset = flange.bolts.map(() => null)
  const atRest = rest(unset, null)
  let nuts: readonly (number | null)[] = bolts.map(({ node }) => atRest[3 * node]!)
  return pulls.map((pull) => {
    const place = flange.bolts.findIndex(({ id }) => id === pull.bolt)
    const bolt = bolts[place]!
    let at: readonly number[]
    if (pull.kind === 'turn') {
      nuts = nuts.with(place, nuts[place]! + pull.byMm)
      at = rest(nuts, null)
    } else if (pull.kind === 'set') {
      at = rest(nuts.with(place, null), { node: bolt.node, newtons: pull.to })
      nuts = nuts.with(place, at[3 * bolt.node]! + pull.to / bolt.stiffness)
    } else throw new Error(`not solved: ${pull.kind}`)
    return bolts.map(({ stiffness, node }, index) => stiffness * Math.max(0, nuts[index]! - at[3 * node]!))
  })

  function rest(nuts: readonly (number | null)[], nutBeingTurned: { node: number; newtons: number } | null) {
    boltsAct = boltsAct.map((acts, index) => acts && nuts[index] !== null)
    for (let round = 0; round < 100; round += 1) {
      const entries = new Map(beams)
      const forces: number[] = flange.nodes.flatMap(({ weightN = 0 }) => [weightN, 0, 0])
      if (nutBeingTurned !== null) forces[3 * nutBeingTurned.node]! += nutBeingTurned.newtons
      pads.forEach((pad, index) => padsAct[index] && addSpring(entries, flangeSize, pad))
      bolts.forEach((bolt, index) => {
        if (!boltsAct[index]) return
        addSpring(entries, flangeSize, bolt)
        forces[3 * bolt.node]! += bolt.stiffness * nuts[index]!
      })
      const at = solve(flangeSize, entries, forces)
      const squeezed = ({ node, squeeze }: Spring) =>
        squeeze[0] * at[3 * node]! + squeeze[1] * at[3 * node + 1]! + squeeze[2] * at[3 * node + 2]!
      const padsNow = pads.map((pad, index) => actsNow(padsAct[index]!, squeezed(pad)))
      const boltsNow = bolts.map((bolt, index) => {
        const nut = nuts[index]
        return nut !== null && actsNow(boltsAct[index]!, nut! + squeezed(bolt))
      })
      if (same(padsNow, padsAct) && same(boltsNow, boltsAct)) return at
      padsAct = padsNow
      boltsAct = boltsNow
    }
    throw new Error('the springs that act were not found')
  }
}

/**
 * A spring that touches, give or take a millionth of a nanometre, stays as it is: rounding would switch it to
 * and fro.
 */
function actsNow(acts: boolean, squeezedMm: number): boolean {
  return Math.abs(squeezedMm) < 1e-12 ? acts : squeezedMm > 0
}

function same(one: readonly boolean[], other: readonly boolean[]): boolean {
  return one.every((acts, index) => acts === other[index])
}

/**
 * The bed under half a beam at either end, in two pads that have its stiffness down and against rolling over.
 */
function padsOf({ nodes, beams }: Flange): readonly Spring[] {
  return beams.flatMap(({ from, to, bedMpa, widthMm }) => {
    if (bedMpa === 0) return []
    const dx = nodes[to]!.x - nodes[from]!.x
    const dy = nodes[to]!.y - nodes[from]!.y
    const length = Math.sqrt(dx ** 2 + dy ** 2)
    // Two pads of half the stiffness at ±a roll like width³/12 of an even bed when a² = width²/12.
    const a = Math.sqrt(widthMm ** 2 / 12)
    return [from, to].flatMap((node) =>
      [a, -a].map((out): Spring => ({
        node,
        stiffness: (bedMpa * length) / 4,
        squeeze: [1, (-dy / length) * out, (dx / length) * out],
      })),
    )
  })
}

/**
 * Beam by beam: the 4 × 4 matrix of bending and the 2 × 2 one of twisting, turned into the plane of the face.
 */
/** By row · size + column, the beams alone. */
export function stiffnessEntries({ nodes, beams }: Flange): Map<number, number> {
  const size = 3 * nodes.length
  const entries = new Map<number, number>()
  for (const { from, to, bendingNmm2: ei, twistingNmm2: gj } of beams) {
    const { x, y } = nodes[from]!
    const dx = nodes[to]!.x - x
    const dy = nodes[to]!.y - y
    const l = Math.sqrt(dx ** 2 + dy ** 2)
    const [c, s] = [dx / l, dy / l]
    const local = [
      [(12 * ei) / l ** 3, (6 * ei) / l ** 2, 0, (-12 * ei) / l ** 3, (6 * ei) / l ** 2, 0],
      [(6 * ei) / l ** 2, (4 * ei) / l, 0, (-6 * ei) / l ** 2, (2 * ei) / l, 0],
      [0, 0, gj / l, 0, 0, -gj / l],
      [(-12 * ei) / l ** 3, (-6 * ei) / l ** 2, 0, (12 * ei) / l ** 3, (-6 * ei) / l ** 2, 0],
      [(6 * ei) / l ** 2, (2 * ei) / l, 0, (-6 * ei) / l ** 2, (4 * ei) / l, 0],
      [0, 0, -gj / l, 0, 0, gj / l],
    ]
    const one = [
      [1, 0, 0],
      [0, c, s],
      [0, -s, c],
    ]
    const turn = (row: number, column: number) =>
      Math.floor(row / 3) === Math.floor(column / 3) ? one[row % 3]![column % 3]! : 0
    const place = (freedom: number) => (freedom < 3 ? 3 * from + freedom : 3 * to + freedom - 3)
    for (let i = 0; i < 6; i += 1)
      for (let j = 0; j < 6; j += 1) {
        let value = 0
        for (let p = 0; p < 6; p += 1)
          for (let q = 0; q < 6; q += 1) value += turn(p, i) * local[p]![q]! * turn(q, j)
        if (value !== 0) add(entries, size, place(i), place(j), value)
      }
  }
  return entries
}

function addSpring(entries: Map<number, number>, size: number, { node, stiffness, squeeze }: Spring): void {
  squeeze.forEach((one, i) =>
    squeeze.forEach((other, j) => add(entries, size, 3 * node + i, 3 * node + j, stiffness * one * other)),
  )
}

function add(entries: Map<number, number>, size: number, row: number, column: number, value: number): void {
  const key = row * size + column
  entries.set(key, (entries.get(key) ?? 0) + value)
}
