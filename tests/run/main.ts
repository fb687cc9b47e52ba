import { build, check, endToEndTests, staticChecks, unitTests, waiting, working } from './checks.ts'
import { chromiumToTest } from './chromium.ts'
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
  const ran = await part()
  const ended = ran.flatMap((one) => one.ended)
  for (const line of partLines(ran, (Date.now() - start) / 1000)) console.log(line)
  for (const line of closingLines(ended)) console.log(line)
  if (ended.some(({ outcome }) => outcome === 'failed')) process.exitCode = 1
}

/**
 * The unit tests take a worker for each core; what only reads, the build, and then what mostly waits for a program go on beside
 * them and fill the gaps. The browser begins when those are through: the last files of the unit tests need one core alone.
 */
async function everything(): Promise<readonly Part[]> {
  const chromium = chromiumToTest()
  const units = unitTests('unit tests')
  const [read, waited] = await Promise.all([readersInTurn(), buildThenWaiting(chromium)])
  const shown = await endToEndTests(await chromium, working)
  return [...read, ...waited, await units, shown]
}

async function readersInTurn(): Promise<readonly Part[]> {
  const ran: Part[] = []
  for (const one of staticChecks) ran.push(await check(one))
  return ran
}

async function buildThenWaiting(chromium: Promise<string | undefined>): Promise<readonly Part[]> {
  return [await check(build), await endToEndTests(await chromium, waiting)]
}

async function publishedChecks(): Promise<readonly Part[]> {
  const part = await unitTests('published checks', 'tests/published')
  for (const { name, outcome } of part.ended) console.log(`${outcome === 'passed' ? 'ok' : outcome}  ${name}`)
  return [part]
}
