import type { BuildEvent } from '../../core/builds/index.ts'
import { sha256 } from '../../electron/store/index.ts'

/** Not a whole spec: the store keeps the text and does not read it. */
export const spec = { text: '{"name":"Three for the ferry"}', engine: 'Three for the ferry', demo: true }

export const started: BuildEvent = {
  type: 'build-started',
  version: 1,
  spec: 'ferry-3',
  specRevision: 'A',
  specSha256: sha256(spec.text),
  name: 'Ferry, port engine',
  serial: 'F-201',
}

export function fitted(step: string): BuildEvent {
  return { type: 'part-fitted', version: 1, step }
}

export const buildId = '01956f6c-8a00-7000-8000-000000000001'
export const otherBuildId = '01956f6c-8a00-7000-8000-000000000002'
