import { fork, type ChildProcess } from 'node:child_process'
import { globSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { chance } from '../faults/chance.ts'
import type { Fate, Reached } from './bench.ts'
import type { Task } from './child.ts'
import { folders, type Folder } from './folders.ts'
import { apart, mutationsOf, type Mutation } from './mutations.ts'
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
  const count: Record<Fate | 'endless' | 'explained', number> = {
    killed: 0,
    survived: 0,
    endless: 0,
    explained: 0,
  }
  for (const together of apart(mutations)) {
    let running = await started(folder, together)
    for (const [number, mutation] of together.entries()) {
      const fate = await tried(running, number)
      count[fate] += 1
      if (fate === 'endless') {
        running.child.kill('SIGKILL')
        running = await started(folder, together, running)
      }
      if (fate !== 'survived') continue
      const { file, line, original, changed } = mutation
      const reason = reasonFor(mutation)
      if (reason !== null) count.explained += 1
      console.log(JSON.stringify({ survived: `${file}:${line}`, original, changed, reason }))
    }
    running.child.send('end')
  }
  const killed = count.killed + count.endless
  // What no test can notice is named with its reason, and not counted against the tests.
  const countable = mutations.length - count.explained
  const share = countable === 0 ? 1 : killed / countable
  const holds = share >= bar
  console.log(
    JSON.stringify({
      folder: folder.name,
      changes: of,
      tried: mutations.length,
      killed,
      endless: count.endless,
      explained: count.explained,
      percent: Math.round(1000 * share) / 10,
      bar: 100 * bar,
      holds,
    }),
  )
  if (!holds) process.exitCode = 1
}

interface Running {
  readonly child: ChildProcess
  readonly mostMs: number
  readonly reached: Reached
}

async function started(folder: Folder, mutations: readonly Mutation[], before?: Running): Promise<Running> {
  const from = performance.now()
  const child = fork(join(import.meta.dirname, 'child.ts'))
  const { tests, name } = folder
  child.send({ tests, mutations, reached: before?.reached } satisfies Task)
  const answer = await new Promise<unknown>((resolve) => {
    child.once('message', resolve)
    child.once('exit', () => resolve('unsound'))
  })
  if (typeof answer !== 'object') {
    child.kill()
    throw new Error(`${name}: the tests fail on the sources as they are`)
  }
  const mostMs = before?.mostMs ?? patience * (performance.now() - from)
  return { child, mostMs, reached: answer as Reached }
}

async function tried({ child, mostMs }: Running, number: number): Promise<Fate | 'endless'> {
  return new Promise((answer) => {
    const end = (fate: Fate | 'endless'): void => {
      clearTimeout(timer)
      child.off('exit', ended)
      answer(fate)
    }
    const ended = (): void => end('endless')
    const timer = setTimeout(ended, mostMs)
    child.once('exit', ended)
    child.once('message', (fate) => end(fate as Fate))
    child.send(number)
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
