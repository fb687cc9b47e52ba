import { sentenceOf } from '../../../core/problem/index.ts'
import { openStore, restoreRecord } from '../../../electron/store/index.ts'

// A process of its own that opens the record of a folder and closes it, or puts a backup in its place: `node open-once.ts
// FOLDER [BACKUP]`. It prints `open` or `restored`, or the refusal.
const [folder = '', backup] = process.argv.slice(2)
const now = new Date()
if (backup === undefined) {
  const opened = await openStore(folder, () => now)
  console.log(opened.ok ? 'open' : sentenceOf(opened.problem))
  if (opened.ok) opened.value.close()
} else {
  const restored = await restoreRecord(folder, backup, now)
  console.log(restored.ok ? 'restored' : sentenceOf(restored.problem))
}
