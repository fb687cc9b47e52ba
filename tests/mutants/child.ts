import { join } from 'node:path'
import { Bench, type Reached } from './bench.ts'
import type { Mutation } from './mutations.ts'

/** What a child is sent first: without `reached` it looks which tests come to which change. */
export interface Task {
  readonly tests: readonly string[]
  readonly mutations: readonly Mutation[]
  readonly reached: Reached | undefined
}

// Has one copy of the sources and tries the changes it is sent the numbers of, one after the other.
const root = join(import.meta.dirname, '../..')
let bench: Bench | undefined
let reached: Reached = {}

process.on('message', (message: Task | number | 'end') => {
  void (async () => {
    if (message === 'end') {
      await bench?.close()
      process.exit(0)
    }
    if (typeof message === 'number') {
      process.send?.(await bench?.try(message, reached[message] ?? []))
      return
    }
    bench = await Bench.open(root, message.tests, message.mutations)
    const found = message.reached ?? (await bench.look())
    reached = found ?? {}
    process.send?.(found ?? 'unsound')
  })()
})
