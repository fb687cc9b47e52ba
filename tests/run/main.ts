import { build, check, endToEndTests, staticChecks, unitTests } from './checks.ts'
import { chromiumToTest } from './chromium.ts'
import { closingLines, type Ended } from './report.ts'

const parts: Readonly<Record<string, () => Promise<readonly Ended[]>>> = {
  all: everything,
  published: publishedChecks,
  e2e: async () => [await check(build), ...(await endToEndTests(await chromiumToTest()))],
}

const part = parts[process.argv[2] ?? 'all']
if (part === undefined) {
  console.error(`“${process.argv[2]}” is none of ${Object.keys(parts).join(', ')}.`)
  process.exitCode = 2
} else {
  const ended = await part()
  for (const line of closingLines(ended)) console.log(line)
  if (ended.some(({ outcome }) => outcome === 'failed')) process.exitCode = 1
}

/** Two cores: what only reads runs beside the unit tests; the browser then has the machine for itself. */
async function everything(): Promise<readonly Ended[]> {
  const [statics, units, chromium] = await Promise.all([inTurn(), unitTests('unit tests'), chromiumToTest()])
  return [...statics, ...units, await check(build), ...(await endToEndTests(chromium))]
}

async function inTurn(): Promise<readonly Ended[]> {
  const ended: Ended[] = []
  for (const one of staticChecks) ended.push(await check(one))
  return ended
}

async function publishedChecks(): Promise<readonly Ended[]> {
  const ended = await unitTests('published checks', 'tests/published')
  for (const { name, outcome } of ended) console.log(`${outcome === 'passed' ? 'ok' : outcome}  ${name}`)
  return ended
}
