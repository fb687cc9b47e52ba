import { globSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Measure } from './measure.ts'

// `npm run bench [WORD …]`: one JSON line for each measure whose name holds one of the words; all of them without.
const words = process.argv.slice(2)
let runs = 0

for (const file of globSync('*.bench.ts', { cwd: import.meta.dirname }).sort()) {
  const { measures } = (await import(pathToFileURL(join(import.meta.dirname, file)).href)) as {
    measures: readonly Measure[]
  }
  for (const { name, bar, take } of measures) {
    if (words.length > 0 && !words.some((word) => name.includes(word))) continue
    const { values, holds } = await take()
    runs += 1
    console.log(JSON.stringify({ measure: name, ...values, bar, holds }))
    if (holds === false) process.exitCode = 1
  }
}

if (runs === 0) {
  console.error('Nothing was measured.')
  process.exitCode = 1
}
