import type { Words } from '../words/index.ts'
import type { ValuePath } from './forms/index.ts'

type Texts = Readonly<Record<string, unknown>>
type TextsOf = (words: Words) => Texts

/** What a `kind` is of, by the list of the document that it stands in. */
const kinds: Readonly<Record<string, TextsOf>> = {
  fits: ({ editor }) => editor.drawn.fits.kinds,
  procedures: ({ passes }) => passes.kinds,
  ringSets: ({ editor }) => editor.drawn.rings.kinds,
  steps: ({ editor }) => editor.steps.kinds,
  case: ({ editor }) => editor.drawn.faceParts,
  crank: ({ drawing }) => drawing.list.wheels,
}

/** The choices of a spec by the field that they stand in. */
const choices: Readonly<Record<string, TextsOf>> = {
  clamped: ({ editor }) => editor.fields.materials,
  dangers: ({ dangers }) => dangers,
  family: ({ drafts }) => drafts.families,
  flow: ({ editor }) => editor.drawn.ways,
  gap: ({ editor }) => editor.steps.gaps,
  head: ({ editor }) => editor.fields.heads,
  into: ({ editor }) => editor.fields.intos,
  lip: ({ editor }) => editor.drawn.ways,
  material: ({ editor }) => editor.fields.materials,
  part: ({ editor }) => editor.steps.parts,
  pastMost: ({ editor }) => editor.groups.pastMosts,
  plane: ({ editor }) => editor.drawn.faces.planes,
  reuse: ({ editor }) => editor.fields.reuses,
  secondPerson: ({ editor }) => editor.steps.secondPersons,
  shows: ({ editor }) => editor.drawn.faces.showing,
  side: ({ editor }) => editor.drawn.crank.sides,
  signal: ({ signals }) => signals,
  thicker: ({ editor }) => editor.drawn.fits.halves,
  threadState: ({ engineParts }) => engineParts.threadStates,
  workedFrom: ({ editor }) => editor.drawn.faces.sides,
}

/** What a choice of a spec is called where it stands, as its form calls it; null for what is no choice, and no yes or no. */
export function choiceTextAt(words: Words, keys: ValuePath, value: unknown): string | null {
  const { fields } = words.editor
  if (typeof value === 'boolean') return value ? fields.yes : fields.no
  if (typeof value !== 'string') return null
  const key = String(keys.findLast((each) => typeof each === 'string'))
  const texts = textsAt(String(keys[0]), key)?.(words)
  const text = texts !== undefined && Object.hasOwn(texts, value) ? texts[value] : undefined
  return typeof text === 'string' ? text : null
}

function textsAt(root: string, key: string): TextsOf | undefined {
  if (key === 'pattern' && root === 'procedures') return ({ order }) => order.own.patterns
  return key === 'kind' ? kinds[root] : choices[key]
}
