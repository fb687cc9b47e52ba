import type { Bore } from './bores.ts'
import { drawnBeads, keepOutId } from './beads.ts'
import type { Drawing } from './drawing.ts'
import type { BearingFact, FastenerFact } from './facts.ts'
import { stateOf } from './fasteners.ts'
import type { SceneRow } from './scene.ts'
import { viewInWords } from './view.ts'

/** The drawing in words, one row for each thing on it. */
export function rowsOf(drawing: Drawing, bores: readonly Bore[]): readonly SceneRow[] {
  const { spec, here, view, facts } = drawing
  const plain = (about: string, text: string): SceneRow => ({ about, text, state: 'plain' })
  return [
    plain(`face/${here.face.id}`, viewInWords(spec.case, here.face, view)),
    ...here.fasteners.map((fastener) => fastenerRow(drawing, fastener)),
    ...here.bearings.flatMap(({ id, kind, thrust }) => [
      ...(['upper', 'lower'] as const).map((half) => halfRow(kind, id, half, facts.bearings[id])),
      ...(thrust ? [plain(`thrust/${id}`, `Thrust washers at ${kind.toLowerCase()} ${id}`)] : []),
    ]),
    ...drawnBeads(drawing).flatMap(({ bead, state }) => [
      { about: `bead/${bead.id}`, text: `${bead.name}: ${state === 'laid' ? 'laid' : 'to lay'}`, state },
      ...bead.keepOut.map(({ name }, index) => plain(keepOutId(bead, index), `${name}: no sealant`)),
    ]),
    ...here.oilPassages.map(({ id, name }) => plain(`oil-passage/${id}`, `Oil passage, ${name}`)),
    ...here.dowels.map(({ id }) => plain(`dowel/${id}`, `Dowel ${id}`)),
    ...bores.map(({ number }) => plain(`bore/${number}`, `Bore ${number}`)),
  ]
}

const stateWords: Readonly<Record<FastenerFact['state'], string>> = {
  waiting: 'waiting',
  next: 'next',
  'after-next': 'after the next',
  'partly-done': 'partly done',
  done: 'done',
  flagged: 'flagged',
}

function fastenerRow(drawing: Drawing, fastener: Drawing['here']['fasteners'][number]): SceneRow {
  const { facts } = drawing
  const { state, share } = stateOf(drawing, fastener.id)
  const number = facts.fasteners[fastener.id]?.number ?? fastener.number
  const more =
    state === 'next' && facts.callout !== null
      ? `, ${facts.callout}`
      : state === 'partly-done'
        ? `, ${Math.round(share * 100)} % of its passes`
        : ''
  const text = `Fastener ${number}, ${fastener.where}: ${stateWords[state]}${more}`
  return { about: `fastener/${fastener.id}`, text, state }
}

function halfRow(kind: string, id: string, half: 'upper' | 'lower', fact: BearingFact | undefined): SceneRow {
  const shell = fact?.[half] ?? null
  const parts =
    shell === null ? ['shell not chosen'] : [`grade ${shell.grade}`, shell.fitted ? 'fitted' : 'not fitted']
  const clearance = fact?.clearance ?? null
  const outside = fact?.withinLimits === false
  const sizes = clearance === null ? [] : [`${clearance}${outside ? ', outside the limits' : ''}`]
  const flag = fact?.flag === undefined ? [] : [fact.flag]
  const state = outside ? 'out-of-limits' : shell === null ? 'unknown' : shell.fitted ? 'fitted' : 'chosen'
  return {
    about: `half/${id}/${half}`,
    text: `${kind} ${id} ${half}: ${[...parts, ...sizes, ...flag].join(', ')}`,
    state,
  }
}
