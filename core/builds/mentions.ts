import type { EngineSpec, NamesOf } from '../engine/index.ts'
import { numberOf } from '../tightening/index.ts'
import { flagWords, type FlagWord } from '../words/index.ts'
import type { BuildEvent, RecordedEvent } from './events/events.ts'

/** One word by which a build is found again, and what it was said of. */
export interface Mention {
  readonly kind: 'engine' | 'name' | 'serial' | 'person' | 'part' | 'flag'
  /** As `searchWords` writes it. */
  readonly word: string
}

/** More words than anybody types for a search. */
const mostWords = 40

/**
 * The words by which a text is found: small letters and digits, accents off, in order, none twice. A text like `F-201`
 * gives `f`, `201` and `f201`, so that it is found with and without its hyphen.
 */
export function searchWords(text: string): readonly string[] {
  return words(text, (parts) => (parts.length > 1 ? [...parts, parts.join('')] : parts))
}

/**
 * What is looked for when somebody types a text: a `F-201` as `f201` alone, which narrows most and is also what a serial
 * number without the hyphen is found by.
 */
export function typedWords(text: string): readonly string[] {
  return words(text, (parts) => (parts.length > 0 ? [parts.join('')] : []))
}

function words(text: string, of: (parts: readonly string[]) => readonly string[]): readonly string[] {
  const plain = text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase()
  const found = plain
    .split(/\s+/)
    .flatMap((word) => of(word.split(/[^\p{L}\p{N}]+/u).filter((part) => part !== '')))
  return [...new Set(found)].slice(0, mostWords)
}

/**
 * What an entry adds to the words by which its build is found: names, who made it, the shells and parts that were put in,
 * and what became of a fastener that was flagged. A pull that went well adds only its person: every build of an engine
 * has the same fasteners. `namesOf` is in the languages in which steps, parts and places are to be found.
 */
export function mentionsOf(
  spec: EngineSpec,
  namesOf: NamesOf,
  { person, event }: Pick<RecordedEvent, 'person' | 'event'>,
): readonly Mention[] {
  const mentions: Mention[] = []
  const called = (...thing: Parameters<NamesOf['byId']>) => {
    const names = namesOf.byId(...thing)
    return names.length > 0 ? names : [thing[1]]
  }
  const { byKey } = namesOf
  const say = (kind: Mention['kind'], ...texts: readonly (string | null)[]) => {
    for (const word of texts.flatMap((text) => searchWords(text ?? ''))) mentions.push({ kind, word })
  }
  const flag = (word: FlagWord, ...texts: readonly (string | null)[]) =>
    say('flag', ...Object.values(flagWords[word]), ...texts)
  say('person', person)
  switch (event.type) {
    case 'build-started':
      say('engine', spec.name, spec.id)
      say('name', event.name)
      say('serial', event.serial)
      break
    case 'shells-chosen':
      say('part', ...new Set(event.choices.map(({ grade }) => grade)))
      say('part', ...[...new Set(event.choices.flatMap(({ undersize }) => undersize ?? []))].flatMap(byKey))
      break
    case 'undersize-declared':
      if (event.undersize !== null) say('part', ...byKey(event.undersize))
      break
    case 'part-fitted':
      say('part', ...called('steps', event.step))
      break
    case 'limit-measured':
      if (event.verdict === 'outside') flag('outside', ...called('steps', event.step), ...byKey(event.at))
      break
    case 'crank-turned':
      if (event.verdict !== 'free' && event.verdict !== 'within')
        flag(event.verdict, ...called('steps', event.step))
      break
    case 'measured-part-replaced':
      flag('replaced', ...byKey(event.at))
      break
    case 'parts-ticked': {
      const names = called('parts', event.part)
      say('part', ...names, event.number)
      if (event.reason !== null) flag('used-again', ...names)
      break
    }
    case 'fasteners-declared-new':
      say('part', ...called('fastenerGroups', event.group))
      break
    case 'fastener-pulled':
      if (event.verdict === 'unread' || event.verdict === 'within') break
      flag(event.verdict, numberOf(spec, event.fastener))
      break
    case 'fastener-replaced':
      flag('replaced', numberOf(spec, event.fastener))
      break
    case 'problem-noted':
      flag('problem', numberOf(spec, event.fastener), event.text)
      break
    case 'check-answered':
      if (event.verdict === 'not-good') flag('not-good', ...called('steps', event.step))
      say('part', ...washersIn(event).flatMap(byKey))
      break
    case 'step-skipped':
      flag('skipped', ...called('steps', event.step))
      break
    case 'step-confirmed':
    case 'step-sent-back':
      say('person', event.second)
      break
    case 'marks-noted':
    case 'half-fitted':
    case 'half-taken-out':
    case 'part-taken-out':
    case 'limit-accepted':
    case 'rings-fitted':
    case 'rings-taken-off':
    case 'turning-accepted':
    case 'turning-voided':
    case 'place-done':
    case 'place-undone':
    case 'photo-added':
    case 'photo-skipped':
    case 'photo-withdrawn':
    case 'step-reopened':
    case 'revision-taken-over':
    case 'skip-taken-back':
    case 'note-written':
    case 'ticks-removed':
    case 'part-left-over':
    case 'parts-counted':
    case 'bead-laid':
    case 'bead-wiped-off':
    case 'build-finished':
    case 'build-amended':
    case 'build-voided':
    case 'build-handed-over':
    case 'build-taken-over':
    case 'fork-settled':
    case 'readings-noted':
    case 'readings-withdrawn':
    case 'basis-decided':
    case 'shells-pinned':
    case 'shells-released':
    case 'tray-noted':
    case 'thread-read':
    case 'run-started':
    case 'pull-taken-back':
    case 'pull-read-again':
    case 'flag-answered':
    case 'fastener-loosened':
    case 'pass-repeated':
    case 'run-restarted':
    case 'run-paused':
    case 'run-resumed':
      break
    default:
      event satisfies never
  }
  return mentions
}

/** The thrust washers that were in, and those to fit, by what entries call them. */
function washersIn({
  fittedWashers,
  washersByTable,
  thrustPair,
}: Extract<BuildEvent, { readonly type: 'check-answered' }>): readonly string[] {
  const toFit = [washersByTable, thrustPair?.first, thrustPair?.second].flatMap(
    (washer) => washer?.name ?? [],
  )
  return [...new Set([...(fittedWashers === undefined ? [] : [fittedWashers]), ...toFit])]
}
