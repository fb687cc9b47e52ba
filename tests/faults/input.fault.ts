import { readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { sentenceOf } from '../../core/problem/index.ts'
import { contract, type Output } from '../../core/contract/index.ts'
import { readSpec } from '../../core/engine/index.ts'
import { audit } from '../../core/audit/index.ts'
import { openStore, type Store } from '../../electron/store/index.ts'
import { answersOn, countedIds } from '../electron/answers.ts'
import { type Fault, found } from './fault.ts'
import { withFolder } from './folder.ts'

const specsFolder = join(import.meta.dirname, '../../specs')
const specTexts = readdirSync(specsFolder)
  .filter((name) => name.endsWith('.json'))
  .map((name) => readFileSync(join(specsFolder, name), 'utf8'))

/** What stands in a text for what was there: nothing, other signs, other kinds, much too much. */
const insteads = [
  '',
  ' ',
  '"',
  '{',
  ']',
  ',',
  '0',
  '-1',
  '1e999',
  'NaN',
  'null',
  'true',
  '""',
  '[]',
  '{}',
  '"__proto__"',
  '"\\ud800"',
  '\u0000',
  '['.repeat(5_000),
  '9'.repeat(400),
]

/** A good text with a few stretches of it replaced. */
function mutated(texts: readonly string[]): fc.Arbitrary<string> {
  const change = fc.record({
    at: fc.double({ min: 0, max: 1, noNaN: true }),
    length: fc.nat(12),
    by: fc.constantFrom(...insteads),
  })
  return fc
    .tuple(fc.constantFrom(...texts), fc.array(change, { minLength: 1, maxLength: 3 }))
    .map(([text, changes]) =>
      changes.reduce((now, { at, length, by }) => {
        const from = Math.floor(at * now.length)
        return now.slice(0, from) + by + now.slice(from + length)
      }, text),
    )
}

/** The first input for which it does not hold, as a sentence; null when it holds for all. */
async function counterexample<Value>(
  input: fc.Arbitrary<Value>,
  how: { readonly numRuns: number; readonly seed: number },
  holds: (value: Value) => Promise<boolean> | boolean,
): Promise<string | null> {
  const outcome = await fc.check(
    fc.asyncProperty(input, async (value) => holds(value)),
    how,
  )
  return outcome.failed ? `${JSON.stringify(outcome.counterexample)?.slice(0, 300)}` : null
}

async function withStore<Result>(use: (store: Store) => Promise<Result>): Promise<Result> {
  return withFolder(async (folder) => {
    const opened = await openStore(folder, () => new Date())
    if (!opened.ok) throw new Error('no record')
    try {
      return await use(opened.value)
    } finally {
      opened.value.close()
    }
  })
}

export const faults: readonly Fault[] = [
  {
    name: 'bad specs',
    must: 'each is read as a spec, or refused with a place and a sentence; never a crash',
    async run(seed) {
      const runs = 1500
      const wrong = await counterexample(mutated(specTexts), { numRuns: runs, seed }, (text) => {
        const read = readSpec(text)
        if (read.ok) audit(read.spec)
        return read.ok || (read.problems.length > 0 && read.problems.every(({ code }) => code !== undefined))
      })
      const large = readSpec(`{"a":${'[1],'.repeat(12_500_000)}`)
      return found({ specs: runs + 1 }, [
        ...(wrong === null ? [] : [wrong]),
        ...(large.ok ? ['50 MB were read'] : []),
      ])
    },
  },
  {
    name: 'bad imports',
    must: 'what is not byte for byte what was exported is refused with a sentence; nothing changes',
    run: (seed) =>
      withStore(async (store) => {
        const bugs: string[] = []
        const report = (line: string): void => void bugs.push(line)
        const { answer } = answersOn(store, { now: () => new Date(), newId: countedIds(), report })
        const start = { engine: 'skerry-3', name: 'Ferry', serial: '', person: 'Ana Ruiz' }
        const begun = await answer('builds.start', start)
        if (!begun.ok) throw new Error(sentenceOf(begun.problem))
        const build = (begun.value as Output<'builds.start'>).line.id
        await answer('builds.act', {
          build,
          after: 1,
          person: 'Ana Ruiz',
          command: { type: 'note-marks', step: 'case-marks', typed: '1 1 1 1' },
        })
        const exported = await answer('builds.export', { build })
        if (!exported.ok) throw new Error(sentenceOf(exported.problem))
        const { text } = exported.value as Output<'builds.export'>
        const runs = 600
        const wrong = await counterexample(mutated([text]), { numRuns: runs, seed }, async (spoilt) => {
          const imported = await answer('builds.import', { text: spoilt })
          const isSame = spoilt === text
          return (
            (imported.ok ? isSame : sentenceOf(imported.problem).length > 20) &&
            store.builds().length === 1 &&
            bugs.length === 0
          )
        })
        return found({ imports: runs }, [...(wrong === null ? [] : [wrong]), ...bugs])
      }),
  },
  {
    name: 'bad requests',
    must: 'each is answered, with a value or a sentence; never a mistake of the program',
    run: (seed) =>
      withStore(async (store) => {
        const bugs: string[] = []
        const report = (line: string): void => void bugs.push(line)
        const { answer, stop } = answersOn(store, { now: () => new Date(), newId: countedIds(), report })
        const anything = fc.oneof(
          fc.jsonValue({ maxDepth: 5 }),
          fc.anything({ withNullPrototype: true, withBigInt: true, withSparseArray: true, withMap: true }),
        )
        const runs = 3000
        const anyRequest = fc.tuple(
          fc.constantFrom(...Object.keys(contract), '__proto__', 'constructor'),
          anything,
        )
        const wrong = await counterexample(anyRequest, { numRuns: runs, seed }, async ([name, input]) => {
          const reply = await answer(name, input)
          return (reply.ok || sentenceOf(reply.problem).length > 20) && bugs.length === 0
        })
        await stop()
        return found({ requests: runs }, [...(wrong === null ? [] : [wrong]), ...bugs])
      }),
  },
]
