import { copyFileSync, mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { sentenceOf, type Problem } from '../../core/problem/index.ts'
import type { Output } from '../../core/contract/index.ts'
import { openRequests } from '../../electron/requests/index.ts'
import { recordName } from '../../electron/store/index.ts'
import { chance } from './chance.ts'
import { acknowledged, childOf, confirming } from './child.ts'
import { found, type Fault } from './fault.ts'
import { withFolder } from './folder.ts'

const specs = join(import.meta.dirname, '../../specs')

/** One way to spoil a file; `at` is between 0 and 1. */
type Damage = (bytes: Buffer, at: number) => Buffer

const damages: Readonly<Record<string, Damage>> = {
  'header byte': (bytes, at) => flipped(bytes, Math.floor(at * 100)),
  'schema page byte': (bytes, at) => flipped(bytes, 100 + Math.floor(at * 3996)),
  'page byte': (bytes, at) => flipped(bytes, 4096 + Math.floor(at * (bytes.length - 4096))),
  'page of zeros': (bytes, at) => {
    const image = Buffer.from(bytes)
    const page = 1 + Math.floor(at * (bytes.length / 4096 - 1))
    return image.fill(0, page * 4096, (page + 1) * 4096)
  },
  truncated: (bytes, at) => bytes.subarray(0, Math.floor(at * bytes.length)),
  'not a database': (_, at) => Buffer.from('Dear Sir,\n'.repeat(1 + Math.floor(at * 1000))),
  'newer version': (bytes) => {
    const image = Buffer.from(bytes)
    image.writeUInt32BE(99, 60) // user_version, by SQLite's file format
    return image
  },
}

function flipped(bytes: Buffer, at: number): Buffer {
  const image = Buffer.from(bytes)
  image.writeUInt8(image.readUInt8(at) ^ 0xff, at)
  return image
}

/** A record of some builds, closed, with one backup of it. */
async function prepared(folder: string): Promise<void> {
  const child = childOf([process.execPath, confirming, folder])
  await child.until((lines) => lines.length > 260)
  await child.kill()
  const opened = await openRequests(
    { host: 'local', why: { code: 'hostByItself', facts: {} }, version: '0', dataFolder: folder },
    specs,
    () => undefined,
  )
  if (!opened.ok) throw new Error('the record cannot be opened')
  await opened.value.answer('backups.make', {})
  await opened.value.close()
  if (acknowledged(child.lines).size === 0) throw new Error('nothing was confirmed')
}

export const faults: readonly Fault[] = [
  {
    name: 'damaged file',
    must: 'it is told, or does no harm; the file is kept, and the backup is put in its place when it is asked for',
    run: (seed) =>
      withFolder(async (source) => {
        await prepared(source)
        const bytes = readFileSync(join(source, recordName))
        const random = chance(seed + 5)
        const wrong: string[] = []
        const counts = { images: 0, told: 0, refused: 0, harmless: 0, foundByVerifying: 0 }
        for (const [name, damage] of Object.entries(damages))
          for (let round = 0; round < 12; round += 1) {
            counts.images += 1
            const image = damage(bytes, random())
            const outcome = await withFolder((folder) => tried(source, folder, image))
            if (outcome.wrong !== null) wrong.push(`${name}: ${outcome.wrong}`)
            else counts[outcome.how] += 1
          }
        return found(counts, wrong)
      }),
  },
]

type Tried =
  | { readonly wrong: string }
  | { readonly wrong: null; readonly how: 'told' | 'refused' | 'harmless' | 'foundByVerifying' }

async function tried(source: string, folder: string, image: Buffer): Promise<Tried> {
  const file = join(folder, recordName)
  writeFileSync(file, image)
  const [backup = ''] = readdirSync(join(source, 'backups'))
  const opened = await openRequests(
    { host: 'local', why: { code: 'hostByItself', facts: {} }, version: '0', dataFolder: folder },
    specs,
    () => undefined,
  )
  if (!opened.ok)
    return readFileSync(file).equals(image)
      ? { wrong: null, how: 'refused' }
      : { wrong: 'refused, but touched' }
  const { answer, close } = opened.value
  try {
    const { problem } = (await value(answer, 'host.read', {})) as Output<'host.read'>
    if (problem === null)
      return { wrong: null, how: (await isVerified(answer)) ? 'harmless' : 'foundByVerifying' }
    if (!readFileSync(file).equals(image)) return { wrong: `${problem.code}, but the file was touched` }
    mkdirSync(join(folder, 'backups'))
    copyFileSync(join(source, 'backups', backup), join(folder, 'backups', backup))
    const { kept } = (await value(answer, 'backups.restore', { name: backup })) as Output<'backups.restore'>
    if (kept === null || !readFileSync(join(folder, kept)).equals(image))
      return { wrong: 'the damaged file was not kept' }
    return (await isVerified(answer))
      ? { wrong: null, how: 'told' }
      : { wrong: 'what was restored does not verify' }
  } finally {
    await close()
  }
}

type Answer = (name: string, input: unknown) => Promise<{ ok: boolean }>

async function value(answer: Answer, name: string, input: unknown): Promise<unknown> {
  const reply = (await answer(name, input)) as { ok: true; value: unknown } | { ok: false; problem: Problem }
  if (!reply.ok) throw new Error(`${name}: ${sentenceOf(reply.problem)}`)
  return reply.value
}

async function isVerified(answer: Answer): Promise<boolean> {
  await value(answer, 'verification.start', { build: null })
  for (;;) {
    const at = (await value(answer, 'verification.read', {})) as Output<'verification.read'>
    if (at.state === 'done') return at.breaks.length === 0
    if (at.state !== 'running') return false
    await new Promise((resolve) => setTimeout(resolve, 2))
  }
}
