import { globSync } from 'node:fs'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { pathToFileURL } from 'node:url'
import type { Fault, Found } from './fault.ts'

// `npm run faults [-- --seed N] [--long] [--minutes M] [WORD …]`: one JSON line for each fault whose name holds one of the
// words; all without. A long run goes on for an hour, or as many minutes as it is told, with the next seed each time round;
// `--seed N` alone does again what that seed did.
const { values, positionals } = parseArgs({
  options: { long: { type: 'boolean' }, minutes: { type: 'string' }, seed: { type: 'string' } },
  allowPositionals: true,
})
const firstSeed = wholeNumber(values.seed ?? '0', '--seed')
const isLong = values.long === true || values.minutes !== undefined
const endMs = isLong ? wholeNumber(values.minutes ?? '60', '--minutes') * 60_000 : Infinity
const counted = { tried: 0, held: 0, skipped: 0, broken: 0 }
const brokenBy = new Set<number>()

for (let seed = firstSeed; ; seed += 1) {
  const isOver = await runAll(seed)
  if (!isLong || isOver) break
}

const failed = [...brokenBy].map((seed) => `--seed ${seed}`)
console.log(JSON.stringify({ ...counted, ...(failed.length === 0 ? {} : { again: failed }) }))
if (counted.tried === 0) console.error('No fault was tried.')
if (counted.tried === 0 || counted.broken > 0) process.exitCode = 1

/** Whether the time was over before all had their turn. */
async function runAll(seed: number): Promise<boolean> {
  for (const file of globSync('*.fault.ts', { cwd: import.meta.dirname }).sort()) {
    const { faults } = (await import(pathToFileURL(join(import.meta.dirname, file)).href)) as {
      faults: readonly Fault[]
    }
    for (const { name, must, run } of faults) {
      if (positionals.length > 0 && !positionals.some((word) => name.includes(word))) continue
      if (performance.now() > endMs) return true
      const start = performance.now()
      const outcome = await attempt(run, seed)
      counted.tried += 1
      counted['skipped' in outcome ? 'skipped' : outcome.holds ? 'held' : 'broken'] += 1
      const ms = Math.round(performance.now() - start)
      console.log(JSON.stringify({ fault: name, seed, must, ...outcome, ms }))
      if ('holds' in outcome && !outcome.holds) brokenBy.add(seed)
    }
  }
  return counted.tried === 0
}

async function attempt(run: Fault['run'], seed: number): Promise<Found> {
  try {
    return await run(seed)
  } catch (error) {
    return {
      holds: false,
      counts: {},
      wrong: [error instanceof Error ? (error.stack ?? error.message) : String(error)],
    }
  }
}

function wholeNumber(text: string, option: string): number {
  const number = Number(text)
  if (Number.isSafeInteger(number) && number >= 0) return number
  console.error(`${option} wants a whole number, not “${text}”.`)
  process.exit(2)
}
