import {
  currentStep,
  drawingFacts,
  emptyBuild,
  evolve,
  sampleFacts,
  type BuildState,
} from '../../core/builds/index.ts'
import type { Client } from '../../core/contract/index.ts'
import { readSpec, type EngineSpec } from '../../core/engine/index.ts'
import { sceneOf, withProtractor } from '../../core/layout/index.ts'
import { halfWaySample } from '../../core/practice/index.ts'
import type { TorqueUnit } from '../../core/quantity/index.ts'
import type { Language, Words } from '../../core/words/index.ts'
import { Handle } from '../bench/handle.svelte.ts'
import { svgOf } from '../canvas/svg.ts'
import type { Theme } from '../look/theme.svelte.ts'
import { handleDirections, nextTurn } from '../steps/run/turn/next-turn.ts'
import type { HelpPicture } from './pictures.ts'

/** The demo engine that the help draws, in the language of its texts; null where it is not among the specs. */
export async function readDemo(client: Client, language: Language): Promise<EngineSpec | null> {
  const answer = await client.request('engines.read', { id: sampleFacts['half-way'].engine })
  const read = answer.ok ? readSpec(answer.value.specText, language) : null
  return read?.ok ? read.spec : null
}

interface Look {
  readonly theme: Theme
  readonly unit: TorqueUnit
}

const sheet = { widthPx: 760, heightPx: 400, capitalPx: 12 }

/** The drawing that the build window has at that moment of the demo build, as SVG; null where the demo has no such moment. */
export function demoDrawing(
  words: Words,
  spec: EngineSpec,
  { step: id, entries }: Extract<HelpPicture, { kind: 'drawing' }>,
  { theme, unit }: Look,
): string | null {
  const step = spec.steps.find((each) => each.id === id)
  const state = entries === null ? emptyBuild : stateAt(words, spec, id, entries)
  if (step === undefined || state === null) return null
  const facts = drawingFacts(words, spec, state, step, unit)
  const face = spec.case.faces.find((each) => each.id === facts.face)!
  const view = { from: face.workedFrom, turn: 0 } as const
  const bare = sceneOf(words, spec, facts, view, sheet)
  const turn = nextTurn(spec, state, step)
  const handle = new Handle(() => ({ view, workedFrom: face.workedFrom, plane: face.plane }))
  const px = bare.frame.width / sheet.widthPx
  const scene = turn ? withProtractor(words, bare, turn.fastener, handleDirections(turn, handle), px) : bare
  return svgOf(scene, { theme, widthPx: sheet.widthPx, title: `${face.name}, ${step.name}` })
}

/** The demo build after so many entries of a step. */
function stateAt(words: Words, spec: EngineSpec, step: string, entries: number): BuildState | null {
  const at = new Date(0).toISOString()
  const sample = halfWaySample(words, spec, '0'.repeat(64), at)
  if (!sample.ok) return null
  const events = sample.value.map(({ event }, index) => ({ seq: index + 1, at, event }))
  let state = emptyBuild
  let left: number | null = null
  for (const event of events) {
    if (left === null && currentStep(spec, state)?.id === step) left = entries
    if (left === 0) return state
    state = evolve(state, event)
    if (left !== null) left -= 1
  }
  return left === null ? null : state
}
