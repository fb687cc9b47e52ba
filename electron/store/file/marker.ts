import { readFileSync } from 'node:fs'
import { basename, dirname, join, resolve } from 'node:path'
import { z } from 'zod'
import { writeWhole } from './durable.ts'

/** What remains known of a record when it is gone: that it was there, whose it was, and where its copies lie. */
const marker = z.strictObject({
  about: z.string(),
  bench: z.string().regex(/^[0-9a-f]{12}$/),
  dataFolder: z.string(),
  secondFolder: z.string().nullable(),
})
export type Marker = Omit<z.output<typeof marker>, 'about'>

const about =
  'Bedplate keeps a record in this data folder. It reads this note when the record is gone, so that it does not begin an empty one by mistake.'

/** Beside the record; and beside the data folder, for when that is gone as a whole. */
function markerFiles(dataFolder: string): readonly [within: string, beside: string] {
  const folder = resolve(dataFolder)
  return [join(folder, 'record-note.json'), join(dirname(folder), `.${basename(folder)}-record-note.json`)]
}

/** Null where there was no record, as far as is known. */
export function readMarker(dataFolder: string): Marker | null {
  const [within, beside] = markerFiles(dataFolder)
  const found = markerIn(beside)
  return markerIn(within) ?? (found?.dataFolder === resolve(dataFolder) ? found : null)
}

/** Writes it where it is not yet so. A place that cannot be written is done without. */
export function keepMarker(found: Marker): void {
  const kept = { ...found, dataFolder: resolve(found.dataFolder) }
  for (const file of markerFiles(kept.dataFolder)) {
    const before = markerIn(file)
    if (before !== null && JSON.stringify(before) === JSON.stringify(kept)) continue
    try {
      writeWhole(file, `${JSON.stringify({ about, ...kept }, null, 2)}\n`)
    } catch {
      // the folder above belongs to somebody else; the one within is enough for most
    }
  }
}

function markerIn(file: string): Marker | null {
  try {
    const read = marker.safeParse(JSON.parse(readFileSync(file, 'utf8')))
    if (!read.success) return null
    const { bench, dataFolder, secondFolder } = read.data
    return { bench, dataFolder, secondFolder }
  } catch {
    return null
  }
}
