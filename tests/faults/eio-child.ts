import { append, startOn } from './adding.ts'

// `node eio-child.ts FOLDER`: adds twelve times three entries, and prints the last entry of each three that was confirmed.
const store = await startOn(process.argv[2] ?? '')
let last = store.entries(store.lastBuild() ?? '').length
for (let round = 0; round < 12; round += 1)
  if (append(store, last, 3)) {
    last += 3
    process.stdout.write(`${last}\n`)
  }
process.exit(0)
