import { sampleFacts, type SampleEntry } from '../../builds/index.ts'
import type { EngineSpec } from '../../engine/index.ts'
import { refused, type Outcome } from '../../problem/index.ts'
import type { Words } from '../../words/index.ts'
import { madeSample } from './made-sample.ts'
import type { MarksByFit } from './right-command.ts'

/** As they are stamped, housing with journal, of each bearing in turn. */
const marks: MarksByFit = new Map([
  ['mains', both('2 2 3 1', 'G G F H')],
  ['big-ends', both('4 5 4', 'L M L')],
])
/** All six rod bolts seated and torqued, and two of them turned. */
const pulls = 6 + 6 + 2

/**
 * A build of the sample engine that is half-way done: shells chosen and fitted, the crank in, the rod bolts in their angle
 * pass with a problem that was noted and answered; see `madeSample`.
 */
export function halfWaySample(
  words: Words,
  spec: EngineSpec,
  specSha256: string,
  at: string,
): Outcome<readonly SampleEntry[]> {
  const { name, problem, answer } = words.engines.sample
  if (!hasItsParts(spec)) return refused('engine-unknown', { engine: sampleFacts['half-way'].engine })
  return madeSample(words, spec, specSha256, at, {
    ...{ sample: 'half-way', name },
    trouble: { procedure: 'rods', fastener: 'rod-4', afterPulls: 9, problem, answer },
    marks: () => marks,
    isThere: ({ runs }) => runs['rods']?.pulls.length === pulls,
  })
}

function both(housing: string, journal: string) {
  const journals = journal.split(' ')
  return housing.split(' ').map((mark, index) => ({ housing: mark, journal: journals[index]! }))
}

function hasItsParts({ procedures, fits }: EngineSpec): boolean {
  const ids = [...procedures, ...fits].map(({ id }) => id)
  return ['rods', 'mains', 'big-ends'].every((id) => ids.includes(id))
}
