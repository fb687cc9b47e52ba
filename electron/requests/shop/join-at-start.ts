import type { Answer } from '../../../core/contract/index.ts'
import type { Problem } from '../../../core/problem/index.ts'
import type { AnswerRequest } from '../answer.ts'

/** What the program was asked for when it was started. */
export interface ShopAtStart {
  /** As typed, perhaps with a password. */
  readonly address: string
  /** Called once, as soon as it is known how it ends. */
  readonly onResult: (how: JoinResult) => void
}

export type JoinResult =
  | { readonly kind: 'joined'; readonly address: string }
  /** Nothing was joined: the bench is in the shop it was in, or in none. */
  | { readonly kind: 'refused'; readonly problem: Problem }
  /** The bench belongs to it now, and is not taken, or not heard. */
  | { readonly kind: 'silent'; readonly address: string; readonly problem: Problem }

/** Joins the shop. The program does not wait for what answers there: it goes on, and reports when it knows. */
export async function joinAtStart(
  answer: AnswerRequest,
  { address, onResult }: ShopAtStart,
  { log, isOver }: { readonly log: (line: string) => void; readonly isOver: () => boolean },
): Promise<void> {
  const report = (how: JoinResult) => {
    log(`shop:${how.kind}${how.kind === 'joined' ? '' : `:${how.problem.code}`}`)
    onResult(how)
  }
  const joined = await answer('shop.join', { address, password: '', authority: '' })
  if (joined.ok) void awaitConnection(answer, report, isOver)
  else report({ kind: 'refused', problem: joined.problem })
}

async function awaitConnection(
  answer: AnswerRequest,
  report: (how: JoinResult) => void,
  isOver: () => boolean,
): Promise<void> {
  for (let after = 0; ;) {
    const read = (await answer('shop.read', {})) as Answer<'shop.read'>
    const joined = read.ok ? read.value.joined : null
    if (joined === null) return
    const { address, connection, problem } = joined
    if (problem !== null) return report({ kind: 'silent', address, problem })
    if (connection === 'open') return report({ kind: 'joined', address })
    const news = (await answer('shop.news', { after })) as Answer<'shop.news'>
    if (!news.ok || !news.value.isJoined || (after > 0 && isOver())) return
    after = news.value.number
  }
}
