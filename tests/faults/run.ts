import { globSync } from 'node:fs'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { pathToFileURL } from 'node:url'
import type { Fault, Found } from './fault.ts'

// `npm run faults [-- --long] [WORD …]`: one JSON line for each fault whose name holds one of the words; all without.
const { values, positionals } = parseArgs({ options: { long: { type: 'boolean' } }, allowPositionals: true })
const rounds = values.long === true ? 10 : 1
let done = 0

for (const file of globSync('*.fault.ts', { cwd: import.meta.dirname }).sort()) {
  const { faults } = (await import(pathToFileURL(join(import.meta.dirname, file)).href)) as {
    faults: readonly Fault[]
  }
  for (const { name, must, run } of faults) {
    if (positionals.length > 0 && !positionals.some((word) => name.includes(word))) continue
    const start = performance.now()
    const outcome = await attempt(run)
    done += 1
    console.log(JSON.stringify({ fault: name, must, ...outcome, ms: Math.round(performance.now() - start) }))
    if ('holds' in outcome && !outcome.holds) process.exitCode = 1
  }
}

if (done === 0) {
  console.error('No fault was tried.')
  process.exitCode = 1
}

async function attempt(run: Fault['run']): Promise<Found> {
  try {
    return await run(rounds)
  } catch (error) {
    return {
      holds: false,
      counts: {},
      wrong: [error instanceof Error ? (error.stack ?? error.message) : String(error)],
    }
  }
}
