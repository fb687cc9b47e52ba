import { flushCompileCache } from 'node:module'
import type { Answer, Input, RequestName } from '../../../core/contract/index.ts'
import { sentenceOf } from '../../../core/problem/index.ts'
import { byBrowser, createRequests } from '../../../electron/requests/index.ts'
import { openStore } from '../../../electron/store/index.ts'
import { bareDraft } from './bare-draft.ts'

// A host of its own in which a draft is edited until it is killed, and an outline begun beside it: `node draft-editor.ts FOLDER`. It
// prints the number of each entry once the edit and the outline's first corner are confirmed, which is when a window shows them.
const opened = await openStore(process.argv[2] ?? '', () => new Date())
if (!opened.ok) throw new Error(sentenceOf(opened.problem))
const { answer } = createRequests({
  facts: {
    host: 'local',
    why: { code: 'hostByItself', facts: {} },
    version: '0',
    dataFolder: process.argv[2]!,
  },
  ...{ store: opened.value, engines: [], savePdf: byBrowser },
  ...{ now: () => new Date(), newId: () => crypto.randomUUID(), report: console.error },
})
async function get<Name extends RequestName>(name: Name, input: Input<Name>) {
  const reply = (await answer(name, input)) as Answer<Name>
  if (!reply.ok) throw new Error(sentenceOf(reply.problem))
  return reply.value
}
flushCompileCache()
const [known] = await get('drafts.list', {})
const draft = known ?? (await get('drafts.begin', bareDraft)).line
for (let after = draft.entries; ; after += 1) {
  const what = { code: 'removed', facts: {} } as never
  const patches = [{ op: 'replace' as const, path: '/summary', value: `Edit ${after + 1}` }]
  const edited = {
    draft: draft.id,
    after,
    person: bareDraft.person,
    act: { type: 'edit', edit: { what, patches } },
  }
  const { seq } = await get('drafts.act', edited as Input<'drafts.act'>)
  // The corner says by which edit it was tapped.
  const points = [{ x: seq, y: 0 }]
  await get('preferences.keep', {
    sketch: { draft: draft.id, sketch: { face: 'joint', drawn: { kind: 'outline' }, points } },
  })
  process.stdout.write(`${seq}\n`)
}
