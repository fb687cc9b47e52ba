import { spawnSync } from 'node:child_process'
import { closeSync, mkdtempSync, mkdirSync, openSync, readFileSync, rmSync, truncateSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

const megabyte = 1024 * 1024

/** A disk that can be put in a folder: how it is made there, and how it is taken away. Both answer why not; null when it is done. */
interface Disk {
  readonly put: (folder: string, image: string) => string | null
  readonly take: (folder: string) => void
}

/**
 * Why a command failed, in its own words; null when it did not. Its words go to a file: what FUSE leaves running would hold a
 * pipe open.
 */
function run(program: string, ...words: readonly string[]): string | null {
  const place = mkdtempSync(join(tmpdir(), 'bedplate-said-'))
  const file = join(place, 'said')
  const output = openSync(file, 'w')
  try {
    const { status, error } = spawnSync(program, words, {
      stdio: ['ignore', output, output],
      timeout: 20_000,
    })
    if (error !== undefined) return `${program}: ${error.message}`
    return status === 0 ? null : readFileSync(file, 'utf8').trim().split('\n')[0] || `${program}: ${status}`
  } finally {
    closeSync(output)
    rmSync(place, { recursive: true, force: true })
  }
}

function first(...tries: readonly (() => string | null)[]): string | null {
  const whys: string[] = []
  for (const attempt of tries) {
    const why = attempt()
    if (why === null) return null
    whys.push(why)
  }
  return whys.join('; ')
}

function unmount(folder: string): void {
  void first(
    () => run('umount', folder),
    () => run('fusermount', '-u', folder),
    () => run('umount', '-l', folder),
  )
}

function imageOf(file: string, bytes: number): void {
  closeSync(openSync(file, 'w'))
  truncateSync(file, bytes)
}

/** The loop device of an image, for what wants a device; '' where there is none. */
function loopOf(image: string): string {
  return spawnSync('losetup', ['-f', '--show', image], { encoding: 'utf8' }).stdout.trim()
}

export const disks = {
  /** Of three megabytes in memory. */
  small: {
    put: (folder) => run('mount', '-t', 'tmpfs', '-o', 'size=3m,mode=0700', 'tmpfs', folder),
    take: unmount,
  },
  /** As memory sticks have, by the system's own driver: no links, no rights, names in either case. */
  fat: {
    put(folder, image) {
      imageOf(image, 24 * megabyte)
      return run('mkfs.vfat', image) ?? run('mount', '-o', 'loop', image, folder)
    },
    take: unmount,
  },
  /** A name is the same in capitals and in small letters. */
  'case-insensitive': {
    put(folder, image) {
      imageOf(image, 32 * megabyte)
      const why = run('mkfs.exfat', image)
      if (why !== null) return why
      return first(
        () => run('mount', '-o', 'loop', image, folder),
        () => run('mount.exfat-fuse', loopOf(image), folder),
      )
    },
    take(folder) {
      unmount(folder)
      run('sh', '-c', 'losetup -a | grep bedplate-disk- | cut -d: -f1 | xargs -r losetup -d')
    },
  },
  /** The folder itself, first as any other; made read-only by `makeReadOnly`. */
  bound: {
    put: (folder) => run('mount', '--bind', folder, folder),
    take: unmount,
  },
} satisfies Record<string, Disk>

export function makeReadOnly(folder: string): string | null {
  return run('mount', '-o', 'remount,ro,bind', folder)
}

/** Uses a folder that lies on such a disk; where this machine has none, the reason. */
export async function onDisk<Result>(
  name: keyof typeof disks,
  use: (folder: string) => Promise<Result>,
): Promise<Result | { readonly skipped: string }> {
  if (process.platform !== 'linux') return { skipped: 'disks are put in a folder on Linux only' }
  if (process.getuid?.() !== 0) return { skipped: 'only root may put a disk in a folder' }
  const around = mkdtempSync(join(tmpdir(), 'bedplate-disk-'))
  const folder = join(around, 'disk')
  mkdirSync(folder)
  const disk: Disk = disks[name]
  const why = disk.put(folder, join(around, 'image'))
  try {
    return why === null ? await use(folder) : { skipped: why }
  } finally {
    if (why === null) disk.take(folder)
    rmSync(around, { recursive: true, force: true })
  }
}
