import { build, check, endToEndTests, staticChecks, unitTests, waiting, working } from './checks.ts'
import { chromiumToTest } from './chromium.ts'
import { folderInMemory } from './folder-in-memory.ts'
import { closingLines, partLines, type Part } from './report.ts'

const parts: Readonly<Record<string, () => Promise<readonly Part[]>>> = {
  all: everything,
  published: publishedChecks,
  e2e: async () => [
    await check(build),
    await endToEndTests(await chromiumToTest(), [...waiting, ...working]),
  ],
}

const part = parts[process.argv[2] ?? 'all']
if (part === undefined) {
  console.error(`“${process.argv[2]}” is none of ${Object.keys(parts).join(', ')}.`)
  process.exitCode = 2
} else {
  const start = Date.now()
  const inMemory = folderInMemory()
  if (inMemory !== null) process.env.TMPDIR = inMemory
  const ran = await part()
  const ended = ran.flatMap((one) => one.ended)
  for (const line of partLines(ran, (Date.now() - start) / 1000)) console.log(line)
  for (const line of closingLines(ended)) console.log(line)
  if (ended.some(({ outcome }) => outcome === 'failed')) process.exitCode = 1
}

/**
 * The unit tests take a worker for each core, and the browser has both cores once they are through: side by side each of them
 * took twice as long. What mostly waits for a program goes on beside them, and the other checks fill the gaps and give way.
 */
async function everything(): Promise<readonly Part[]> {
  const chromium = chromiumToTest()
  const built = check(build)
  const waited = built.then(async () => endToEndTests(await chromium, waiting))
  const read = built.then(readersInTurn)
  const units = await unitTests('unit tests')
  const shown = built.then(async () => endToEndTests(await chromium, working))
  return [await built, ...(await read), units, await waited, await shown]
}

async function readersInTurn(): Promise<readonly Part[]> {
  const ran: Part[] = []
  for (const one of staticChecks) ran.push(await check(one))
  return ran
}

async function publishedChecks(): Promise<readonly Part[]> {
  const part = await unitTests('published checks', 'tests/published')
  for (const { name, outcome } of part.ended) console.log(`${outcome === 'passed' ? 'ok' : outcome}  ${name}`)
  return [part]
}
