import type { Act } from './trace.ts'

/** Files by path, as the disk holds them. */
export type Disk = Map<string, Buffer>

type Change = Extract<Act, { kind: 'write' | 'cut' }>

const sector = 512

/**
 * What a disk may hold when the power goes after the first `until` acts: everything synced, and of what was not yet,
 * each write kept, dropped, or torn between two sectors. What one write of a file became says nothing of the next.
 */
export function diskAfterCut(start: Disk, acts: readonly Act[], until: number, random: () => number): Disk {
  const disk: Disk = new Map(start)
  const waiting: Change[] = []
  for (const act of acts.slice(0, until)) {
    if (act.kind === 'write' || act.kind === 'cut') waiting.push(act)
    if (act.kind !== 'sync') continue
    for (const change of waiting.filter(({ file }) => file === act.file)) apply(disk, change)
    for (let at = waiting.length - 1; at >= 0; at -= 1)
      if (waiting[at]?.file === act.file) waiting.splice(at, 1)
  }
  for (const change of waiting) {
    const fate = random()
    if (fate < 0.4) continue
    apply(
      disk,
      fate < 0.7 || change.kind === 'cut' ? change : { ...change, bytes: torn(change.bytes, random) },
    )
  }
  return disk
}

function torn(bytes: Buffer, random: () => number): Buffer {
  return bytes.subarray(0, sector * Math.floor(random() * Math.ceil(bytes.length / sector)))
}

function apply(disk: Disk, change: Change): void {
  const before = disk.get(change.file) ?? Buffer.alloc(0)
  if (change.kind === 'cut') {
    disk.set(
      change.file,
      Buffer.concat([
        before.subarray(0, change.length),
        Buffer.alloc(Math.max(0, change.length - before.length)),
      ]),
    )
    return
  }
  const after = Buffer.alloc(Math.max(before.length, change.at + change.bytes.length))
  before.copy(after)
  change.bytes.copy(after, change.at)
  disk.set(change.file, after)
}
