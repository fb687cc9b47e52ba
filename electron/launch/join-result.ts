import { sentenceIn } from '../../core/problem/index.ts'
import type { JoinResult } from '../requests/index.ts'
import { words } from './spoken.ts'

/** What the terminal prints about the shop that was to be joined at the start, without its password. */
export function joinResultText(how: JoinResult): string {
  switch (how.kind) {
    case 'joined':
      return words.launch.shopJoined(how)
    case 'refused':
      return words.launch.shopNotJoined({ why: sentenceIn(words, how.problem) })
    case 'silent':
      return words.launch.shopSilent({ address: how.address, why: sentenceIn(words, how.problem) })
  }
}
