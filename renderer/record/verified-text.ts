import type { Verification } from '../../core/contract/index.ts'
import { counted } from '../parts/counted.ts'

/** What a verification found, in one sentence. */
export function verifiedText(seen: Extract<Verification, { readonly state: 'done' }>): string {
  const { build, builds, entries, breaks } = seen
  const scope = build === null ? `${counted(builds, 'build', 'builds')} with ` : ''
  if (breaks.length === 0)
    return `✓ ${scope}${counted(entries, 'entry', 'entries')}: each is as it was confirmed.`
  if (build !== null) return '! This build is not as it was confirmed.'
  const broken = new Set(breaks.map(({ build }) => build)).size
  return `! ${broken} of ${builds} builds ${broken === 1 ? 'is' : 'are'} not as confirmed.`
}
