import { readdirSync, readFileSync } from 'node:fs'
import type { z } from 'zod'
import { lineOf } from '../../problem-line.ts'
import { readSpec, type engineSpec, type EngineSpec } from '../../../core/engine/index.ts'
import { audit, type Finding } from '../../../core/audit/index.ts'
import { engineFile, shippedFile } from '../../engine-files.ts'

/** A spec as it stands in its file, before its texts become quantities. */
export type Draft = z.input<typeof engineSpec>

const folder = new URL('../../../specs/', import.meta.url)

export const demoIds = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .map((name) => name.slice(0, -'.json'.length))

export function demoText(id: string): string {
  return readFileSync(engineFile(id), 'utf8')
}

/** As it ships: the demos with short plans for tests too. */
export function shippedText(id: string): string {
  return readFileSync(shippedFile(id), 'utf8')
}

export function shippedDraft(id: string): Draft {
  return JSON.parse(shippedText(id)) as Draft
}

export function shippedSpec(id: string): EngineSpec {
  return specOf(shippedDraft(id))
}

export function demoDraft(id: string): Draft {
  return JSON.parse(demoText(id)) as Draft
}

export function demoSpec(id: string): EngineSpec {
  return specOf(demoDraft(id))
}

export function specOf(draft: Draft): EngineSpec {
  const reading = readSpec(JSON.stringify(draft))
  if (!reading.ok) throw new Error(reading.problems.map(lineOf).join('\n'))
  return reading.spec
}

/** What the audit says of a demo after a change, as `weight code path: facts`. */
export function auditAfter(id: string, change: (draft: Draft) => void): readonly string[] {
  const draft = demoDraft(id)
  change(draft)
  return auditLines(specOf(draft))
}

export function auditLines(
  spec: EngineSpec,
  isMeant: (finding: Finding) => boolean = () => true,
): readonly string[] {
  return audit(spec)
    .filter(isMeant)
    .map(({ weight, problem }) => `${weight} ${lineOf(problem)}`)
}

/** What reading a demo says after a change, as `code path: facts`. */
export function readAfter(id: string, change: (draft: Draft) => void): readonly string[] {
  const draft = demoDraft(id)
  change(draft)
  return readLines(JSON.stringify(draft))
}

export function readLines(text: string): readonly string[] {
  const reading = readSpec(text)
  return reading.ok ? [] : reading.problems.map(lineOf)
}

/** The entry of a list with this id; a test that names none is wrong. */
export function named<Entry extends { readonly id: string }>(
  list: readonly Entry[] | undefined,
  id: string,
): Entry {
  const found = list?.find((entry) => entry.id === id)
  if (found === undefined) throw new Error(`there is no “${id}”`)
  return found
}

/** The entry at a place in a list; a test that goes past its end is wrong. */
export function nth<Entry>(list: readonly Entry[] | undefined, index: number): Entry {
  const found = list?.[index]
  if (found === undefined) throw new Error(`there is no entry ${index}`)
  return found
}
