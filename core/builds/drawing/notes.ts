import type { NoteFact } from '../../layout/index.ts'
import { lengthAmount, nanometres } from '../../quantity/index.ts'
import type { Words } from '../../words/index.ts'
import type { EngineSpec, Procedure, Step } from '../../engine/index.ts'
import { flagInShort, livePulls, openFlags, lengthSpan, windowOf, type Run } from '../../tightening/index.ts'
import { checkNote, washersCalled } from '../steps/check-note.ts'
import { faceOfStep } from '../steps/face-of-step.ts'
import type { BuildState, CheckAnswer } from '../events/state.ts'

type Check = Extract<Step, { kind: 'check' }>

/**
 * What is noted beside the drawing of a face: flags of its runs without an answer and checks that went wrong, then what
 * was measured there. Each thing has one note, which says all that is to be said of it.
 */
export function notesOn(
  words: Words,
  spec: EngineSpec,
  state: BuildState,
  face: string,
): readonly NoteFact[] {
  const runs = spec.procedures.flatMap((procedure) => {
    const run = state.runs[procedure.id]
    return procedure.face === face && run !== undefined ? [{ procedure, run }] : []
  })
  const checks = spec.steps.flatMap((step) => {
    const answer = state.checks[step.id]
    const about = step.kind === 'check' ? placeOfCheck(spec, step, face) : null
    return step.kind !== 'check' || answer === undefined || about === null
      ? []
      : [noteOf(words, step, { ...answer, note: checkNote(words, washersCalled(spec, answer)) }, about)]
  })
  const notes = [
    ...runs.flatMap(({ run, procedure }) => flagNotes(words, procedure, run)),
    ...checks.filter((note) => note?.kind === 'open'),
    ...checks.filter((note) => note?.kind === 'measured'),
    ...runs.flatMap(({ run, procedure }) => gapNotes(words, procedure, run)),
  ].filter((note) => note !== null)
  const things = [...new Set(notes.map(({ about }) => about))]
  return things
    .map((about) => {
      const own = notes.filter((note) => note.about === about)
      const kind = own.some((note) => note.kind === 'open') ? 'open' : 'measured'
      return { about, kind, texts: own.flatMap(({ texts }) => texts) } as const
    })
    .toSorted((one, other) => Number(one.kind === 'measured') - Number(other.kind === 'measured'))
}

function flagNotes(words: Words, procedure: Procedure, run: Run): readonly NoteFact[] {
  return openFlags(run).map((flag) => ({
    about: flag.fastener === null ? `face/${procedure.face}` : `fastener/${flag.fastener}`,
    kind: 'open',
    texts: [flagInShort(words, procedure, run, flag)],
  }))
}

/** The gap of the joint face once all were seated; while its own flag is open, that one says it. */
function gapNotes(words: Words, procedure: Procedure, run: Run): readonly NoteFact[] {
  const flagged = new Set(openFlags(run).map(({ pull }) => pull))
  return [...livePulls(run).values()].flatMap(({ pass, fastener, number, reading }): readonly NoteFact[] => {
    const passOfSpec = procedure.passes[pass]
    const window = passOfSpec?.kind === 'seat' && fastener === null ? windowOf(passOfSpec, null) : null
    if (window?.kind !== 'length' || reading === null || flagged.has(number)) return []
    const text = words.described.gap({
      reading: `${reading.value} ${reading.unit}`,
      limits: words.amounts.span(lengthSpan(window, 'mm')),
    })
    return [{ about: `face/${procedure.face}`, kind: 'measured', texts: [text] }]
  })
}

/** Where a check belongs on a face: end float at the thrust washers; null where it is not of this face. */
export function placeOfCheck(spec: EngineSpec, step: Check, face: string): string | null {
  const { endFloat, case: engineCase } = spec
  const shown = engineCase.faces.find(({ id }) => id === face)?.shows
  const isAtWashers =
    step.gap === 'end-float' &&
    engineCase.saddles.some(({ id, thrust }) => thrust && id === endFloat?.saddle) &&
    shown === 'saddles'
  if (isAtWashers) return `thrust/${endFloat?.saddle}`
  return faceOfStep(spec, step) === face ? `face/${face}` : null
}

function noteOf(
  { amounts, described }: Words,
  step: Check,
  { verdict, reading, note }: Pick<CheckAnswer, 'verdict' | 'reading' | 'note'>,
  about: string,
): NoteFact | null {
  const measured =
    reading === null ? null : amounts.amount(lengthAmount(nanometres(reading.length_nm), 'mm', 2))
  if (verdict === 'not-good') {
    const noteTexts = [measured, note === '' ? null : note].filter((each) => each !== null)
    return {
      about,
      kind: 'open',
      texts: [described.checkNote({ name: step.name, said: noteTexts })],
    }
  }
  return measured === null
    ? null
    : { about, kind: 'measured', texts: [described.checkNote({ name: step.name, said: [measured] })] }
}
