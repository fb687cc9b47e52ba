import { expect, it } from 'vitest'
import { problem, sentenceOf } from '../../../../core/problem/index.ts'

// What is said of a spec that cannot be read, each in a sentence.
it.each([
  [
    problem('spec-key-twice', { line: 3, column: 2, key: '"target"' }),
    'Line 3, column 2 gives "target" for the second time in one group. Remove one of the two.',
  ],
  [
    problem('spec-part-missing', {
      place: { code: 'placeInFile', facts: { parts: [{ list: null, name: 'bedplateSpec', number: 0 }] } },
      should: { code: 'version-of-spec', facts: { version: 1 } },
    }),
    '“bedplateSpec” is missing. Write 1 in a spec of your own, and open one of a newer program with that: this one reads version 1.',
  ],
  [
    problem('spec-part-wrong', {
      place: { code: 'placeInFile', facts: { parts: [{ list: null, name: 'bedplateSpec', number: 0 }] } },
      found: { kind: 'value', json: '2' },
      should: { code: 'version-of-spec', facts: { version: 1 } },
    }),
    '“bedplateSpec” is 2. Write 1 in a spec of your own, and open one of a newer program with that: this one reads version 1.',
  ],
  [
    problem('spec-keys-unknown', { place: { code: 'placeInFile', facts: { parts: [] } }, keys: ['colour'] }),
    'The file has “colour”, which no spec has there. Correct the spelling, or remove it.',
  ],
  [
    problem('spec-more-problems', { count: 32 }),
    'There are 32 more problems. Put the first ones right and read the file again.',
  ],
])('$code', (found, sentence) => {
  expect(sentenceOf(found)).toBe(sentence)
})
