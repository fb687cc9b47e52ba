import type { Bore } from './bores.ts'
import { drawnBeads } from './beads.ts'
import { keepOutId } from './names.ts'
import type { Drawing } from './drawing.ts'
import type { FastenerFact } from './facts.ts'
import { stateOf } from './fastener-state.ts'
import { shownJournals } from './ground.ts'
import { bearingTexts } from './footnotes.ts'
import type { SceneRow } from './scene.ts'
import { acrossAnEnd, viewInWords } from './view.ts'

/** The drawing in words, one row for each thing on it. */
export function rowsOf(drawing: Drawing, bores: readonly Bore[]): readonly SceneRow[] {
  const { spec, here, view, facts } = drawing
  const plain = (about: string, text: string): SceneRow => ({ about, text, state: 'plain' })
  const rows = [
    plain(`face/${here.face.id}`, viewInWords(spec.case, here.face, view)),
    ...endRows(drawing),
    ...here.fasteners.map((fastener) => fastenerRow(drawing, fastener)),
    ...here.bearings.flatMap(({ id, kind, thrust }) => [
      ...(['upper', 'lower'] as const).map((half) => halfRow(drawing, kind, id, half)),
      ...(thrust ? [plain(`thrust/${id}`, `Thrust washers at ${kind.toLowerCase()} ${id}`)] : []),
    ]),
    ...drawnBeads(drawing).flatMap(({ bead, state }) => [
      { about: `bead/${bead.id}`, text: `${bead.name}: ${state === 'laid' ? 'laid' : 'to lay'}`, state },
      ...bead.keepOut.map(({ name }, index) => plain(keepOutId(bead, index), `${name}: no sealant`)),
    ]),
    ...here.oilPassages.map(({ id, name }) => plain(`oil-passage/${id}`, `Oil passage, ${name}`)),
    ...here.dowels.map(({ id }) => plain(`dowel/${id}`, `Dowel ${id}`)),
    ...bores.map(({ number }) => plain(`bore/${number}`, `Bore ${number}`)),
    ...shownJournals(drawing).map(({ id }) => plain(`journal/${id}`, `Main journal ${id}`)),
    ...drawing.openings.map((_, index) => plain(`opening/${index + 1}`, `Opening ${index + 1}`)),
  ]
  return rows.map((row) => {
    const texts = facts.notes.flatMap(({ about, texts }) => (about === row.about ? texts : []))
    return texts.length === 0 ? row : { ...row, text: [row.text, ...texts].join('; ') }
  })
}

/** The two ends of the engine; in a face across one of them neither is drawn. */
function endRows({ here }: Drawing): readonly SceneRow[] {
  if (acrossAnEnd(here.face)) return []
  return [
    { about: 'nose', text: 'Nose, the front end of the crank', state: 'plain' },
    { about: 'drive', text: 'Drive end', state: 'plain' },
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
  const { facts, content } = drawing
  const about = `fastener/${fastener.id}`
  const { state, share } = stateOf(drawing, fastener.id)
  const number = facts.fasteners[fastener.id]?.number ?? fastener.number
  // A ring only says where it is.
  if (content.fasteners !== 'numbered')
    return { about, text: `Fastener ${number}, ${fastener.where}`, state: 'plain' }
  const more =
    state === 'next' && facts.callout !== null
      ? `, ${facts.callout}`
      : state === 'partly-done'
        ? `, ${Math.round(share * 100)} % of its passes`
        : ''
  const text = `Fastener ${number}, ${fastener.where}: ${stateWords[state]}${more}`
  return { about, text, state }
}

function halfRow({ facts, content }: Drawing, kind: string, id: string, half: 'upper' | 'lower'): SceneRow {
  if (content.bearings === 'landmarks')
    return { about: `half/${id}/${half}`, text: `${kind} ${id} ${half}`, state: 'plain' }
  const fact = facts.bearings[id]
  const shell = fact?.[half] ?? null
  const isNext = facts.nextHalf === `${id}/${half}`
  const place = shell === null || shell.fitted ? 'fitted' : isNext ? 'next to fit' : 'not fitted'
  const parts = shell === null ? ['shell not chosen'] : [`grade ${shell.grade}`, place]
  const clearance = fact?.clearance ?? null
  const sizes = clearance === null ? [] : [clearance]
  return {
    about: `half/${id}/${half}`,
    text: `${kind} ${id} ${half}: ${[...parts, ...sizes, ...bearingTexts(fact)].join(', ')}`,
    state: isNext
      ? 'next'
      : fact?.withinLimits === false
        ? 'out-of-limits'
        : shell === null
          ? 'unknown'
          : shell.fitted
            ? 'fitted'
            : 'chosen',
  }
}
