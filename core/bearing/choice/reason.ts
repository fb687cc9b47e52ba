import { textIn, type Message } from '../../problem/index.ts'
import type { Words } from '../../words/index.ts'

/** One of the reasons for a shell that the program proposes. */
export type ProposalReason = Message<Words['proposals']>

/** Why a shell is proposed: the program's reasons, or the one that a person typed with a pin. */
export type ShellReason = readonly ProposalReason[] | string

/** A reason as it is read. */
export function whyIn(words: Words, why: ShellReason): string {
  return typeof why === 'string' ? why : why.map((each) => textIn(words, words.proposals, each)).join(' ')
}
