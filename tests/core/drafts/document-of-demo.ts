import { readFileSync } from 'node:fs'
import type { SpecDocument } from '../../../core/drafts/index.ts'
import { engineFile } from '../../engine-files.ts'

/** A demo engine as its file has it; two of them with short plans. */
export function documentOf(id: string): SpecDocument {
  return JSON.parse(readFileSync(engineFile(id), 'utf8')) as SpecDocument
}
