import { expect } from 'vitest'
import { pictureFile } from '../../photos/files.ts'
import { folder, store } from '../bench.ts'
import { asking } from './asking.ts'

export const gears = pictureFile('gears.jpg')

export const base64 = (bytes: Uint8Array) => Buffer.from(bytes).toString('base64')

export async function bench(inFolder = folder()) {
  const record = await store(inFolder)
  return { inFolder, record, ...asking(record) }
}

export type Bench = Awaited<ReturnType<typeof bench>>

/** A build with the photo of its first step. */
export async function photographed(here: Bench, bytes: Uint8Array = gears) {
  const { line } = await here.begin()
  await add(here, line.id, 1, bytes)
  return line.id
}

export function add(here: Bench, build: string, after: number, bytes: Uint8Array, step = 'case-marks') {
  const given = { build, after, person: 'Ana Ruiz', step, caption: 'Marks', part: null }
  return here.get('photos.add', { ...given, base64: base64(bytes) })
}

export async function verified({ get }: Pick<Bench, 'get'>) {
  await get('verification.start', { build: null })
  await expect.poll(async () => (await get('verification.read', {})).state).toBe('done')
  const outcome = await get('verification.read', {})
  if (outcome.state !== 'done') throw new Error('it is not done')
  return outcome
}
