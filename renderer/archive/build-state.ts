import type { BuildLine } from '../../core/contract/index.ts'

/** How a build stands, as the lists show it. */
export function buildStateOf({ finished, voided }: BuildLine): 'open' | 'finished' | 'voided' {
  if (voided) return 'voided'
  return finished ? 'finished' : 'open'
}
