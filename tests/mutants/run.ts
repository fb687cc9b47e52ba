import { fork, type ChildProcess } from 'node:child_process'
import { globSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { chance } from '../faults/chance.ts'
import { folders, type Folder } from './folders.ts'
import { mutationsOf, type Mutation } from './mutations.ts'
import { reasonFor } from './survivors.ts'

// `npm run mutants -- [FOLDER …] [--sample N] [--seed N] [--at FILE:LINE]`: changes the rules of a folder one at a time and runs the
// tests that must notice. A JSON line for each change that none noticed, then one for the folder; exits 1 below the bar. Without a
// folder all of them; a sample is the same for the same seed.
const bar = 0.9
/** So many times as long as the tests take on the sources as they are: a change that makes a loop endless is noticed. */
const patience = 10

const root = join(import.meta.dirname, '../..')
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { sample: { type: 'string' }, seed: { type: 'string', default: '1' }, at: { type: 'string' } },
})

for (const folder of folders) {
  if (positionals.length > 0 && !positionals.includes(folder.name)) continue
  const all = globSync(folder.sources, { cwd: root })
    .sort()
    .flatMap((file) => mutationsOf(file, readFileSync(join(root, file), 'utf8')))
    .filter(({ file, line }) => values.at === undefined || `${file}:${line}`.endsWith(values.at))
  await carryOut(folder, sampled(all, Number(values.sample ?? all.length), Number(values.seed)), all.length)
}

async function carryOut(folder: Folder, mutations: readonly Mutation[], of: number): Promise<void> {
  let { child, mostMs } = await started(folder)
  let [killed, endless, explained] = [0, 0, 0]
  for (const mutation of mutations) {
    const fate = await tried(child, mutation, mostMs)
    if (fate === 'endless') {
      child.kill('SIGKILL')
      endless += 1
      ;({ child, mostMs } = await started(folder))
    }
    if (fate !== 'survived') {
      killed += 1
      continue
    }
    const { file, line, original, changed } = mutation
    const reason = reasonFor(mutation)
    if (reason !== null) explained += 1
    console.log(JSON.stringify({ survived: `${file}:${line}`, original, changed, reason }))
  }
  child.send('end')
  // What no test can notice is named with its reason, and not counted against the tests.
  const countable = mutations.length - explained
  const share = countable === 0 ? 1 : killed / countable
  const holds = share >= bar
  console.log(
    JSON.stringify({
      folder: folder.name,
      changes: of,
      tried: mutations.length,
      killed,
      endless,
      explained,
      percent: Math.round(1000 * share) / 10,
      bar: 100 * bar,
      holds,
    }),
  )
  if (!holds) process.exitCode = 1
}

async function started({ name, tests }: Folder): Promise<{ child: ChildProcess; mostMs: number }> {
  const from = performance.now()
  const child = fork(join(import.meta.dirname, 'child.ts'), [JSON.stringify(tests)], { silent: false })
  const said = await new Promise((answer) => {
    child.once('message', answer)
    child.once('exit', answer)
  })
  if (said !== 'sound') {
    child.kill()
    throw new Error(`${name}: the tests fail on the sources as they are`)
  }
  return { child, mostMs: patience * (performance.now() - from) }
}

async function tried(
  child: ChildProcess,
  mutation: Mutation,
  mostMs: number,
): Promise<'killed' | 'survived' | 'endless'> {
  return new Promise((answer) => {
    const end = (fate: 'killed' | 'survived' | 'endless'): void => {
      clearTimeout(timer)
      child.off('exit', ended)
      answer(fate)
    }
    const ended = (): void => end('endless')
    const timer = setTimeout(ended, mostMs)
    child.once('exit', ended)
    child.once('message', (fate) => end(fate as 'killed' | 'survived'))
    child.send(mutation)
  })
}

/** Some of a list, chosen by a seed and in the list's order. */
function sampled<Entry>(list: readonly Entry[], count: number, seed: number): readonly Entry[] {
  const next = chance(seed)
  const drawn = new Set(
    list
      .map((_, index) => ({ index, draw: next() }))
      .sort((a, b) => a.draw - b.draw)
      .slice(0, count)
      .map(({ index }) => index),
  )
  return list.filter((_, index) => drawn.has(index))
}
