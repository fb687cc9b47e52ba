import {
  askedPlaces,
  askedRings,
  placeRounds,
  checkNote,
  washersCalled,
  gapTexts,
  measureName,
  partUses,
  photosAt,
  usesAt,
  type BuildState,
} from '../../core/builds/index.ts'
import type { EngineSpec, Step } from '../../core/engine/index.ts'
import { answerText, numberOf } from '../../core/tightening/index.ts'
import { turnedText } from '../steps/turning/turned-text.ts'
import type { Words } from '../../core/words/index.ts'

/** What a second person looks at in a step that was done: what to compare, and what was recorded. */
export function toLookAt(words: Words, spec: EngineSpec, state: BuildState, step: Step): readonly string[] {
  switch (step.kind) {
    case 'note-marks': {
      const fit = spec.fits.find(({ id }) => id === step.fit)
      const marks = state.marks[step.fit]?.[step.part] ?? []
      const read =
        fit?.positions.map((position, index) =>
          words.people.lookAt.mark({ position, mark: marks[index] ?? null }),
        ) ?? []
      return [words.people.lookAt.marks, read.join(', ')]
    }
    case 'choose-shells': {
      const chosen = state.shells[step.fit] ?? []
      const fit = spec.fits.find(({ id }) => id === step.fit)
      const grade = (position: string, half: string) =>
        chosen.find((each) => each.position === position && each.half === half)?.grade ?? null
      const pairs = fit?.positions.map((position) =>
        words.people.lookAt.pair({
          position,
          split: fit.split,
          upper: grade(position, 'upper'),
          lower: grade(position, 'lower'),
        }),
      )
      return [words.people.lookAt.shells, ...(pairs ?? [])]
    }
    case 'fit-shells':
      return [words.people.lookAt.halves]
    case 'fit-part':
      return [step.instruction, ...partsIn(words, spec, state, step)]
    case 'lubricate':
    case 'clean':
    case 'orient':
    case 'align':
    case 'fit-places':
    case 'note':
      return placeRounds(state, step).map(({ place, round, done }) =>
        words.placed.read({ at: place.at, round, done: done !== null, note: done?.note ?? place.say }),
      )
    case 'photo': {
      const reason = state.photosSkipped[step.id]
      const photos = photosAt(state, step.id).length
      return [
        step.instruction,
        reason === undefined ? words.photos.isThere({ photos }) : words.photos.isSkipped({ reason }),
      ]
    }
    case 'fit-rings':
      return askedRings(spec, state, step).map(({ set, piston, fitted }) =>
        words.rings.clock({
          piston: piston.name.text,
          gaps: fitted === null ? [] : gapTexts(words, set, fitted.gaps),
        }),
      )
    case 'turn': {
      const turned = state.turnings[step.id]
      const read = turned && turnedText(words, turned, step.turning?.unit ?? 'N·m')
      return [step.instruction, ...(read === undefined ? [] : [read])]
    }
    case 'measure-limits':
    case 'measure-rings':
      return askedPlaces(spec, state, step).map(({ measure, place: at, measured }) =>
        words.limits.read({
          ...{ name: measureName(words, measure), at, typed: measured?.reading.typed ?? '–' },
          ...{ verdict: measured?.verdict ?? 'outside', accepted: measured?.accepted ?? null },
        }),
      )
    case 'count':
      return [
        words.partsList.count.whatFor,
        ...partUses(spec, state).flatMap(({ part, leftOver }) =>
          leftOver === null ? [] : [words.partsList.count.leftOver({ name: part.name, ...leftOver })],
        ),
      ]
    case 'lay-bead':
      return [words.people.lookAt.bead]
    case 'run-procedure': {
      const flags = state.runs[step.procedure]?.flags ?? []
      const raised = flags.map(({ about, fastener, text, answer }) =>
        words.people.lookAt.flag({
          fastener: numberOf(spec, fastener),
          about,
          text,
          answer: answer && answerText(words, answer),
        }),
      )
      return [words.people.lookAt.fasteners, ...(raised.length > 0 ? raised : [words.people.lookAt.noFlag])]
    }
    case 'check': {
      const answer = state.checks[step.id]
      const note = answer === undefined ? '' : checkNote(words, washersCalled(spec, answer))
      const noted = [answer?.reading?.typed ?? '', note].filter((text) => text !== '')
      return [step.instruction, words.people.lookAt.checkedGood({ noted })]
    }
    default:
      return step satisfies never
  }
}

function partsIn(words: Words, spec: EngineSpec, state: BuildState, step: Step): readonly string[] {
  return usesAt(spec, state, step.id).flatMap(({ part, ticks }) =>
    ticks.map((tick) =>
      words.people.lookAt.part({
        name: part.name,
        tick: words.partsList.tick({ ...tick, before: tick.before ?? null }),
      }),
    ),
  )
}
