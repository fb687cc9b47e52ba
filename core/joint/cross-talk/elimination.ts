/** One node taken out of a network: what it hung on at that moment, and so what takes over its share. */
export interface Elimination {
  readonly node: number
  /** The nodes that it hung on, all taken out later; the first of them to go comes first. */
  readonly border: readonly number[]
}

/**
 * The order in which the nodes of a network are best taken out of a system of equations, one front for each.
 *
 * It goes in rounds; each takes out as many nodes as it can that hang on two others at most (or on the fewest
 * there are), no two of them neighbours. A chain loses every other node a round, so that what lies between a
 * node and the last front is as short as the logarithm of the chain: few fronts change when one node does.
 */
export function eliminationOf(
  count: number,
  links: readonly (readonly [number, number])[],
): readonly Elimination[] {
  const neighbours = Array.from({ length: count }, () => new Set<number>())
  for (const [one, other] of links) {
    neighbours[one]!.add(other)
    neighbours[other]!.add(one)
  }
  const fronts: Elimination[] = []
  let left = Array.from({ length: count }, (_, node) => node)
  while (left.length > 0) {
    const fewest = left.reduce((least, node) => Math.min(least, neighbours[node]!.size), Infinity)
    const kept = new Set<number>()
    const chosen: number[] = []
    for (const node of left) {
      if (kept.has(node) || neighbours[node]!.size > Math.max(2, fewest)) continue
      chosen.push(node)
      for (const neighbour of neighbours[node]!) kept.add(neighbour)
    }
    for (const node of chosen) {
      const border = [...neighbours[node]!]
      fronts.push({ node, border })
      for (const one of border) {
        neighbours[one]!.delete(node)
        for (const other of border) if (one !== other) neighbours[one]!.add(other)
      }
    }
    const eliminated = new Set(chosen)
    left = left.filter((node) => !eliminated.has(node))
  }
  return inOrderOfLeaving(fronts)
}

function inOrderOfLeaving(fronts: readonly Elimination[]): readonly Elimination[] {
  const leaves = new Map(fronts.map(({ node }, place) => [node, place]))
  return fronts.map(({ node, border }) => ({
    node,
    border: border.toSorted((one, other) => leaves.get(one)! - leaves.get(other)!),
  }))
}
