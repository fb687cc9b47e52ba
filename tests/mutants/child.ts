import { join } from 'node:path'
import { Bench } from './bench.ts'
import type { Mutation } from './mutations.ts'

// Has one copy of the sources and tries the changes it is sent, one after the other.
const root = join(import.meta.dirname, '../..')
const bench = await Bench.open(root, JSON.parse(process.argv[2] ?? '[]') as string[])

process.on('message', (mutation: Mutation | 'end') => {
  void (async () => {
    if (mutation === 'end') {
      await bench.close()
      process.exit(0)
    }
    process.send?.(await bench.try(mutation))
  })()
})
process.send?.((await bench.isSound()) ? 'sound' : 'unsound')
