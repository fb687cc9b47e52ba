import { globSync } from 'node:fs'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { pathToFileURL } from 'node:url'
import type { Fault, Found } from './fault.ts'

// `npm run faults [-- --long] [--seed N] [WORD …]`: one JSON line for each fault whose name holds one of the words; all
// without. A long run goes on for an hour, a seed more each time round; `--seed` does what that seed did once again.
const { values, positionals } = parseArgs({
  options: { long: { type: 'boolean' }, seed: { type: 'string' } },
  allowPositionals: true,
})
const hourMs = 3_600_000
const isLong = values.long === true
const rounds = isLong ? 10 : 1
const firstSeed = Number(values.seed ?? 0)
const begun = performance.now()
let done = 0

for (let seed = firstSeed; ; seed += 1) {
  await runAll(seed)
  if (!isLong || values.seed !== undefined || performance.now() - begun > hourMs) break
}

if (done === 0) {
  console.error('No fault was tried.')
  process.exitCode = 1
}

async function runAll(seed: number): Promise<void> {
  for (const file of globSync('*.fault.ts', { cwd: import.meta.dirname }).sort()) {
    const { faults } = (await import(pathToFileURL(join(import.meta.dirname, file)).href)) as {
      faults: readonly Fault[]
    }
    for (const { name, must, run } of faults) {
      if (positionals.length > 0 && !positionals.some((word) => name.includes(word))) continue
      const start = performance.now()
      const outcome = await attempt(run, seed)
      done += 1
      const ms = Math.round(performance.now() - start)
      console.log(JSON.stringify({ fault: name, seed, must, ...outcome, ms }))
      if ('holds' in outcome && !outcome.holds) process.exitCode = 1
    }
  }
}

async function attempt(run: Fault['run'], seed: number): Promise<Found> {
  try {
    return await run(rounds, seed)
  } catch (error) {
    return {
      holds: false,
      counts: {},
      wrong: [error instanceof Error ? (error.stack ?? error.message) : String(error)],
    }
  }
}
