import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { SpecDocument } from '../../../core/drafts/index.ts'

const folder = join(import.meta.dirname, '../../../specs')

/** A demo engine as its file has it. */
export function documentOf(id: string): SpecDocument {
  return JSON.parse(readFileSync(join(folder, `${id}.json`), 'utf8')) as SpecDocument
}
