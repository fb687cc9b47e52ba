import type { BuildLine } from '../../core/contract/index.ts'

/** How a build stands, in the words of the lists. */
export function stateText({ finished, voided }: BuildLine): string {
  if (voided) return '✕ void'
  return finished ? '✓ finished' : 'go on'
}
