import { flushCompileCache } from 'node:module'
import { sentenceOf } from '../../../core/problem/index.ts'
import { openStore } from '../../../electron/store/index.ts'
import { buildId, fitted, spec, started } from '../sample.ts'

// A process of its own that adds entries until it is killed: `node appender.ts FOLDER`. It prints `open` once it holds
// the record, then the number of each entry when the store says it is on disk; or the refusal, and ends.
const opened = await openStore(process.argv[2] ?? '', () => new Date())
if (!opened.ok) {
  console.log(sentenceOf(opened.problem))
  process.exit(1)
}
const store = opened.value
console.log('open')
// One that is killed leaves nothing to the next start.
flushCompileCache()
const common = { build: buildId, person: 'Ana Ruiz', at: '2026-03-02T07:30:00.000Z', mentions: [] }
let after = store.entries(buildId).length
if (after === 0) {
  store.start({ ...common, after, events: [started] }, spec)
  after = 1
}
for (;;) {
  const added = store.append({ ...common, after, events: [fitted(`part-${after}`)] })
  if (!added.ok) throw new Error(sentenceOf(added.problem))
  after += 1
  process.stdout.write(`${after}\n`)
}
