/** Which files each file imports, with types only or not; all by their paths. */
export type ImportGraph = ReadonlyMap<string, readonly string[]>

/**
 * Groups of files that each lead to every other of their group by imports, a file that imports itself included (strongly
 * connected components: Tarjan, SIAM Journal on Computing 1, 1972). Empty where imports go round nowhere.
 */
export function cyclesIn(graph: ImportGraph): readonly (readonly string[])[] {
  const numbers = new Map<string, number>()
  const lowest = new Map<string, number>()
  const open: string[] = []
  const cycles: string[][] = []

  function visit(file: string): number {
    const number = numbers.size
    numbers.set(file, number)
    let low = number
    open.push(file)
    for (const next of graph.get(file) ?? []) {
      if (!graph.has(next)) continue
      if (!numbers.has(next)) low = Math.min(low, visit(next))
      else if (open.includes(next)) low = Math.min(low, lowest.get(next) ?? numbers.get(next)!)
    }
    lowest.set(file, low)
    if (low === number) {
      const group = open.splice(open.indexOf(file))
      if (group.length > 1 || graph.get(file)?.includes(file)) cycles.push(group.sort())
    }
    return low
  }

  for (const file of graph.keys()) if (!numbers.has(file)) visit(file)
  return cycles
}
