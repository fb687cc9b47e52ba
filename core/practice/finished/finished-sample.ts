import type { SampleEntry } from '../../builds/index.ts'
import type { EngineSpec } from '../../engine/index.ts'
import type { Outcome } from '../../problem/index.ts'
import type { Words } from '../../words/index.ts'
import { madeSample } from './made-sample.ts'
import { marksOf } from './right-command.ts'

/** A build of the engine of the finished sample from its first mark to its last count; see `madeSample`. */
export function finishedSample(
  words: Words,
  spec: EngineSpec,
  specSha256: string,
  at: string,
): Outcome<readonly SampleEntry[]> {
  const { name, problem, answer } = words.engines.sample.whole
  return madeSample(words, spec, specSha256, at, {
    ...{ sample: 'finished', name },
    trouble: { procedure: 'caps', fastener: 'cap-5', afterPulls: 13, problem, answer },
    marks: (chance) => marksOf(spec, chance),
    isThere: ({ finished }) => finished,
  })
}
