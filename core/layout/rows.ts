import { dowelNumber, halfName } from '../engine/index.ts'
import type { Bore } from './case/bores.ts'
import { pinStands } from './crank/pin-names.ts'
import { showsGasket } from './parts/gasket.ts'
import { drawnBeads } from './parts/beads.ts'
import { keepOutId } from './labels/names.ts'
import type { Drawing } from './drawing.ts'
import { stateOf } from './parts/fastener-state.ts'
import { shownJournals } from './case/ground.ts'
import { bearingTexts } from './footnotes.ts'
import type { BearingPlace } from './case/on-face.ts'
import type { SceneRow } from './scene/scene.ts'
import { acrossAnEnd, viewInWords } from './view.ts'

/** The drawing in words, one row for each thing on it. */
export function rowsOf(drawing: Drawing, bores: readonly Bore[]): readonly SceneRow[] {
  const { words, spec, here, view, facts } = drawing
  const { list } = words.drawing
  const plain = (about: string, text: string): SceneRow => ({ about, text, state: 'plain' })
  const rows = [
    plain(`face/${here.face.id}`, viewInWords(words, spec.case, here.face, view)),
    ...endRows(drawing),
    ...here.fasteners.map((fastener) => fastenerRow(drawing, fastener)),
    ...here.bearings.flatMap((bearing) => [
      ...(['upper', 'lower'] as const).map((half) => halfRow(drawing, bearing, half)),
      ...(bearing.thrust ? [plain(`thrust/${bearing.id}`, list.thrust({ saddle: bearing.id }))] : []),
    ]),
    ...drawnBeads(drawing).flatMap(({ bead, state }) => [
      { about: `bead/${bead.id}`, text: list.bead({ name: bead.name, isLaid: state === 'laid' }), state },
      ...bead.keepOut.map(({ name }, index) => plain(keepOutId(bead, index), list.keepOut({ name }))),
    ]),
    ...here.oilPassages.map(({ id, name }) => plain(`oil-passage/${id}`, list.passage({ name }))),
    ...here.dowels.map((dowel) =>
      plain(`dowel/${dowel.id}`, list.dowel({ number: dowelNumber(here.dowels, dowel) })),
    ),
    ...bores.map(({ number }) => plain(`bore/${number}`, list.bore({ number }))),
    ...shownJournals(drawing).map(({ id }) => plain(`journal/${id}`, list.journal({ id }))),
    ...laidIn(drawing),
    ...here.faceParts.map(({ id, kind, name }) => plain(`face-part/${id}`, list.facePart({ kind, name }))),
    ...(showsGasket(drawing) ? [plain(`gasket/${here.face.id}`, list.gasket)] : []),
    ...drawing.openings.map((_, index) => plain(`opening/${index + 1}`, list.opening({ number: index + 1 }))),
  ]
  return rows.map((row) => {
    const texts = facts.notes.flatMap(({ about, texts }) => (about === row.about ? texts : []))
    return texts.length === 0 ? row : { ...row, text: list.withNotes({ text: row.text, notes: texts }) }
  })
}

/** The crank where it lies open: its journals, its pins with where they stand, its wheels. */
function laidIn({ words, spec, view, crank }: Drawing): readonly SceneRow[] {
  if (crank.length === 0) return []
  const { list } = words.drawing
  const row = (about: string, text: string): SceneRow => ({ about, text, state: 'plain' })
  return [
    ...spec.case.saddles.map(({ id }) => row(`journal/${id}`, list.journal({ id }))),
    ...(spec.crank?.throws ?? []).map((one) =>
      row(`throw/${one.id}`, list.pin({ rods: one.rods, stands: pinStands(words, spec, one, view) })),
    ),
    ...(spec.crank?.wheels ?? []).map(({ id, kind }) => row(`wheel/${id}`, list.wheels[kind])),
  ]
}

/** The two ends of the engine; in a face across one of them neither is drawn. */
function endRows({ here, words }: Drawing): readonly SceneRow[] {
  if (acrossAnEnd(here.face)) return []
  return [
    { about: 'nose', text: words.drawing.list.nose, state: 'plain' },
    { about: 'drive', text: words.drawing.list.driveEnd, state: 'plain' },
  ]
}

function fastenerRow(drawing: Drawing, fastener: Drawing['here']['fasteners'][number]): SceneRow {
  const { words, facts, content } = drawing
  const { list } = words.drawing
  const about = `fastener/${fastener.id}`
  const { state, share } = stateOf(drawing, fastener.id)
  const number = facts.fasteners[fastener.id]?.number ?? fastener.number
  const named = list.fastener({ number, where: fastener.where })
  // A ring only says where it is.
  if (content.fasteners !== 'numbered') return { about, text: named, state: 'plain' }
  const more =
    state === 'next' && facts.callout !== null
      ? facts.callout
      : state === 'partly-done'
        ? list.shareOfPasses({ percent: Math.round(share * 100) })
        : null
  const text = list.fastenerState({ fastener: named, state: list.fastenerStates[state], more })
  return { about, text, state }
}

function halfRow(
  { words, facts, content }: Drawing,
  bearing: BearingPlace,
  half: 'upper' | 'lower',
): SceneRow {
  const { id, kind } = bearing
  const { list } = words.drawing
  const { bearings, halves } = words.engineParts
  const named = list.half({ bearing: bearings[kind], id, half: halves[halfName(bearing, half)] })
  if (content.bearings === 'landmarks') return { about: `half/${id}/${half}`, text: named, state: 'plain' }
  const fact = facts.bearings[id]
  const shell = fact?.[half] ?? null
  const isNext = facts.nextHalf === `${id}/${half}`
  const place = shell === null || shell.fitted ? 'fitted' : isNext ? 'next' : 'not-fitted'
  const parts = shell === null ? [list.shellNotChosen] : [list.grade(shell), list.fitted[place]]
  const clearance = fact?.clearance ?? null
  const sizes = clearance === null ? [] : [clearance]
  return {
    about: `half/${id}/${half}`,
    text: list.halfState({ half: named, parts: [...parts, ...sizes, ...bearingTexts(words, fact)] }),
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
