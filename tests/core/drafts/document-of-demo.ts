import { readFileSync } from 'node:fs'
import type { SpecDocument } from '../../../core/drafts/index.ts'
import { engineFile } from '../../engine-files.ts'

/** A demo engine as its file has it; two of them with short plans. */
export function documentOf(id: string): SpecDocument {
  return JSON.parse(readFileSync(engineFile(id), 'utf8')) as SpecDocument
}

/** A spec that Ada Brook entered from notes, and nobody checked yet. */
export const entered: SpecDocument = {
  ...documentOf('skerry-3'),
  source: { kind: 'entered', from: 'Shop notes', enteredBy: 'Ada Brook', on: '2026-03-31' },
}
