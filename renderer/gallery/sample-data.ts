import { lengthUnits, torqueUnits } from '../../core/quantity/index.ts'
import { en, isLanguage } from '../../core/words/index.ts'
import { papers } from '../sheet/page-form.ts'

/** What is shown as it is in every language: names, numbers and texts that a person typed or a spec says, units and papers. */
const held = new Set<string>([...torqueUnits, ...lengthUnits, ...papers, en.engines.sample.mechanic])

/**
 * Notes what hosts and states of the gallery hold. A word of small letters alone is no name but an enumeration, which a table
 * gives its text; as an id, a name or a text of a spec it is what a person called the thing.
 */
export function holdAsData(value: unknown, key = ''): void {
  if (typeof value === 'string') {
    if (key === 'specText') holdAsData(JSON.parse(value))
    else if (key === 'id' || key === 'name' || isLanguage(key) || !/^[a-z]+(-[a-z]+)*$/.test(value))
      held.add(value)
  } else if (Array.isArray(value)) value.forEach((each) => holdAsData(each, key))
  else if (isPlain(value)) for (const [name, each] of Object.entries(value)) holdAsData(each, name)
}

const isPlain = (value: unknown): value is object =>
  typeof value === 'object' && value !== null && Object.getPrototypeOf(value) === Object.prototype

Object.assign(globalThis, { sampleData: held })
