import type { Verification } from '../../core/contract/index.ts'
import { counted } from '../parts/counted.ts'

/** What a verification found, in one sentence. */
export function verifiedText(seen: Extract<Verification, { readonly state: 'done' }>): string {
  const { build, builds, entries, witnesses, breaks } = seen
  const scope = build === null ? `${counted(builds, 'build', 'builds')} with ` : ''
  if (breaks.length === 0)
    return `✓ ${scope}${counted(entries, 'entry', 'entries')}: each is as it was confirmed.${given(witnesses)}`
  if (build !== null) return '! This build is not as it was confirmed.'
  const broken = new Set(breaks.map(({ build }) => build).filter(Boolean)).size
  if (broken === 0) return '! The record as a whole is not as it was confirmed.'
  return `! ${broken} of ${builds} builds ${broken === 1 ? 'is' : 'are'} not as confirmed.`
}

function given(witnesses: number): string {
  if (witnesses === 0) return ''
  return witnesses === 1
    ? ' 1 head code that was given out is theirs still.'
    : ` ${witnesses} head codes that were given out are theirs still.`
}
