import { readFileSync } from 'node:fs'
import { flushCompileCache } from 'node:module'
import { join } from 'node:path'
import { sentenceOf } from '../../../core/problem/index.ts'
import { startLocalHost } from '../../../electron/local/server.ts'
import { newToken } from '../../../electron/local/token.ts'
import type { Answer, RequestName } from '../../../core/contract/index.ts'
import { readPages } from '../../../electron/pages/index.ts'
import { openRequests } from '../../../electron/requests/index.ts'

/** What a worker of the tests asks of its host: a record to serve, what a page would ask of that, or to close it. */
export type HostOrder =
  | { readonly open: { readonly dataFolder: string; readonly specs: string } }
  | { readonly ask: { readonly name: RequestName; readonly input: unknown } }
  | 'close'

/** The address under which the record is served, why it cannot be opened, the answer to a request, or that it is closed. */
export type HostReply =
  | { readonly address: string }
  | { readonly refused: string }
  | { readonly answer: Answer<RequestName> }
  | 'closed'

// The local host's parts, put together once for many tests: what a person starts for each record is started here once, and
// stays at one address, so that the browser keeps the compiled scripts of the page. Everything of a record is made again.
process.umask(0o077)
const root = join(import.meta.dirname, '../../..')
const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string }
type Opened = Extract<Awaited<ReturnType<typeof openRequests>>, { ok: true }>['value']
let record: Opened | null = null
const host = await startLocalHost({
  pages: readPages(join(root, 'dist/renderer')),
  answer,
  token: newToken(),
})

flushCompileCache() // a host that is killed leaves it to the next one all the same

process.on('message', (order: HostOrder) => {
  void carryOut(order).then((reply) => process.send?.(reply))
})
process.on('disconnect', () => process.exit())

function answer(name: string, input: unknown): Promise<Answer<RequestName>> {
  if (record === null) throw new Error(`${name} was asked while no record is open`)
  return record.answer(name, input)
}

async function carryOut(order: HostOrder): Promise<HostReply> {
  if (order !== 'close' && 'ask' in order) return { answer: await answer(order.ask.name, order.ask.input) }
  await record?.close()
  record = null
  if (order === 'close') return 'closed'
  const { dataFolder, specs } = order.open
  const opened = await openRequests(
    { host: 'local', why: { code: 'hostByItself', facts: {} }, version, dataFolder },
    specs,
    (line) => console.error(line),
  )
  if (!opened.ok) return { refused: sentenceOf(opened.problem) }
  record = opened.value
  return { address: host.address }
}
