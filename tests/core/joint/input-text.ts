import type { Input } from '../../../core/joint/index.ts'
import { textIn } from '../../../core/problem/index.ts'
import { en } from '../../../core/words/index.ts'

/** What a calculation was made from, as it is read. */
export function inputText({ name, value, source }: Input) {
  const { names, values, sources } = en.pullInputs
  return { name: names[name], value: textIn(en, values, value), source: textIn(en, sources, source) }
}
