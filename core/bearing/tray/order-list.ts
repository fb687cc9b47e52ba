import type { Half } from '../choice/pairs.ts'
import type { AssignedShell } from './stock.ts'

/** Shells of one kind to order, and where they go. */
export interface OrderLine {
  readonly grade: string
  readonly undersize: string | null
  readonly half: Half | 'either'
  readonly count: number
  /** The halves that wait for it. */
  readonly waiting: readonly { readonly position: string; readonly half: Half }[]
}

/** A bearing with the shells it is to get; those without a label are not in the tray. */
export interface BearingToFill extends Readonly<Record<Half, Omit<AssignedShell, 'wall'>>> {
  readonly position: string
}

/** What has to be ordered before every bearing of an assignment has its shells: one line for each kind, in bearing order. */
export function orderList({ filled }: { readonly filled: readonly BearingToFill[] }): readonly OrderLine[] {
  const lines = new Map<string, OrderLine>()
  for (const bearing of filled)
    for (const at of ['upper', 'lower'] as const) {
      const { grade, undersize, half, label } = bearing[at]
      if (label !== null) continue
      const key = JSON.stringify([grade, undersize, half])
      const waiting = [...(lines.get(key)?.waiting ?? []), { position: bearing.position, half: at }]
      lines.set(key, { grade, undersize, half, count: waiting.length, waiting })
    }
  return [...lines.values()]
}
