import { pistonIn, placeIn, type BuildEvent } from '../../core/builds/index.ts'
import type { EngineSpec } from '../../core/engine/index.ts'
import { textIn, type Phrase } from '../../core/problem/index.ts'
import { withUnit } from '../../core/quantity/index.ts'
import { numberOf } from '../../core/tightening/index.ts'
import type { Words } from '../../core/words/index.ts'

/** Its kind and what it holds, in one line; its kind alone where the spec cannot be read. */
export function entryHolds(words: Words, spec: EngineSpec | null, event: BuildEvent): string {
  const kind = words.archive.entries[event.type]
  const holds = spec === null ? '' : entryText(words, spec, event)
  return holds === '' ? kind : words.archive.entryHolds({ kind, holds })
}

/** What an entry is about and what was given with it, in the order in which a sheet says it; empty where its kind says all. */
export function entryText(words: Words, spec: EngineSpec, event: BuildEvent): string {
  return [aboutIn(words, spec, event), ...givenIn(words, event)].filter(Boolean).join(', ')
}

function aboutIn(words: Words, spec: EngineSpec, event: BuildEvent): string {
  const say = (phrase: Phrase) => textIn(words, words.phrases, phrase)
  if ('procedure' in event && event.procedure !== null) return inRun(words, spec, event)
  if (event.type === 'half-fitted' || event.type === 'half-taken-out')
    return say({ code: 'halfAt', facts: { position: event.position, half: event.half } })
  if (event.type === 'readings-noted' || event.type === 'readings-withdrawn')
    return say({ code: 'partAt', facts: { position: event.position, part: event.part } })
  if ('position' in event) return event.position
  const step = 'step' in event ? spec.steps.find(({ id }) => id === event.step) : undefined
  const named = step?.name ?? ('step' in event ? (event.step ?? '') : '')
  const part = partIn(spec, event)
  return part === '' || part === named ? named : say({ code: 'partIn', facts: { part, step: named } })
}

/** What of its step an entry is about. */
function partIn(spec: EngineSpec, event: BuildEvent): string {
  if ('measure' in event) return placeIn(spec, event)
  if ('cylinder' in event) return pistonIn(spec, event)
  if ('place' in event) {
    const step = spec.steps.find(({ id }) => id === event.step)
    const places = step !== undefined && 'places' in step ? step.places : []
    const { say = event.place } = places.find(({ id }) => id === event.place) ?? {}
    return say.replace(/\.$/, '') // it may be a sentence, and goes on here
  }
  if (event.type === 'parts-ticked' || event.type === 'ticks-removed' || event.type === 'part-left-over')
    return spec.parts.find(({ id }) => id === event.part)?.name ?? event.part
  return ''
}

function inRun(
  words: Words,
  spec: EngineSpec,
  event: BuildEvent & { readonly procedure: string | null },
): string {
  const procedure = spec.procedures.find(({ id }) => id === event.procedure)
  const named = procedure?.name ?? event.procedure ?? ''
  const say = (phrase: Phrase) => textIn(words, words.phrases, phrase)
  const number = 'fastener' in event ? numberOf(spec, event.fastener) : null
  if (event.type === 'fastener-pulled') {
    const kind = procedure?.passes[event.pass]?.kind
    const thing = number ?? `${event.pull}`
    return kind === undefined
      ? say({ code: 'fastenerOf', facts: { procedure: named, number: thing } })
      : say({ code: 'pullInPass', facts: { procedure: named, pass: event.pass + 1, kind, thing } })
  }
  if ('pull' in event && event.pull !== null)
    return say({ code: 'pullOf', facts: { procedure: named, number, pull: event.pull } })
  if (number !== null) return say({ code: 'fastenerOf', facts: { procedure: named, number } })
  return 'pass' in event
    ? say({ code: 'fromPassOf', facts: { procedure: named, pass: event.pass + 1 } })
    : named
}

/** Values as they were typed, how they were judged, and what a person said. */
function givenIn(words: Words, event: BuildEvent): readonly (string | null | undefined)[] {
  switch (event.type) {
    case 'marks-noted':
      return [event.typed]
    case 'shells-chosen':
      return event.choices.map(({ position, half, grade }) => {
        const at = textIn(words, words.phrases, { code: 'halfAt', facts: { position, half } })
        return `${at} ${grade}`
      })
    case 'readings-noted':
      return event.cells.flat().map(({ typed, unit }) => withUnit(typed, unit))
    case 'thread-read':
      return [withUnit(event.width.typed, event.width.unit)]
    case 'check-answered': {
      const { good, notGood } = words.sheet.checks
      return [event.verdict === 'good' ? good : notGood, event.reading?.typed, event.note]
    }
    case 'fastener-pulled':
    case 'pull-read-again': {
      const { reading, verdict } = event
      const read = reading && withUnit(reading.typed, reading.unit)
      const reason = event.type === 'pull-read-again' ? event.reason : event.outOfOrder
      return [read, words.sheet.run.verdicts[verdict], reason]
    }
    case 'limit-measured':
      return [event.reading.typed]
    case 'crank-turned':
      return [event.reading && withUnit(event.reading.typed, event.reading.unit)]
    case 'parts-ticked':
      return [`${event.count} ×`, event.number, event.reason]
    case 'step-confirmed':
      return [event.second]
    case 'step-sent-back':
      return [event.second, event.reason]
    case 'build-handed-over':
      return [event.to.name, event.note]
    case 'build-taken-over':
      return [event.to.name, event.reason]
    case 'build-amended':
      return [event.text, event.reason]
    default:
      return (['text', 'note', 'caption', 'answer', 'reason'] as const).map((key) => saidIn(event, key))
  }
}

function saidIn(event: BuildEvent, key: string): string | null {
  const said: unknown = Reflect.get(event, key)
  return typeof said === 'string' ? said : null
}
