import { describe, expect, it } from 'vitest'
import { thingsOn, thingKinds, valueIn, type SpecDocument, type ValuePath } from '../../core/drafts/index.ts'
import type { Control } from './controls.ts'
import { actions } from './by-actions.ts'
import { partsOfASpec } from './parts-of-a-spec.ts'
import { controlsIn, ofEditor } from './rendered.ts'
import { reachedBy, tryOut } from './what-is-reached.ts'
import { wholeEngine } from './whole-engine.ts'

/** What nobody enters by hand, and why. */
const notByHand: readonly { readonly parts: RegExp; readonly why: string }[] = [
  { parts: /^bedplateSpec$/, why: 'the version of the form of a spec: the program writes it' },
  { parts: /^id$/, why: 'made of the name when a draft is begun; a revision of it keeps it' },
  {
    parts: /^source\(entered\)\.(kind|enteredBy|on)$/,
    why: 'who begins a draft, and when: the program knows it',
  },
  {
    parts: /^source\(entered\)\.checkedBy$/,
    why: 'said by the second-person check, once all values are the same',
  },
  { parts: /^typedBy/, why: 'noted when a draft is published, of those whose edits it has' },
  { parts: /^source\(demo\)\./, why: 'a draft is never a demo' },
  {
    parts: /^(fastenerGroups|parts|ringSets|ringSets\[\]\.rings|case\.faces|crank\.(throws|wheels))\[\]\.id$/,
    why: 'by which parts of a spec name each other: made by the program when an entry is added',
  },
]

const panels = [
  ...['case/CasePanel', 'faces/FacesPanel', 'groups/GroupsPanel', 'passes/PassesPanel', 'fits/FitsPanel'],
  ...['parts/PartsPanel', 'RestPanel'],
]
const component = (name: string) => ofEditor<{ readonly default: unknown }>(`${name}.svelte`)

/** The parts that the forms reach, those of the drawing among them. */
async function reachedByForms() {
  const engine = wholeEngine()
  const [stepForm, thingFields] = [await component('steps/StepForm'), await component('actions/ThingFields')]
  const shown = await Promise.all(panels.map(component))
  return reachedBy(engine, async (trial) => {
    const { desk } = trial
    desk.look(engine.procedures[0]!.face)
    const things = engine.case.faces.flatMap(({ id }) =>
      thingsOn(engine, id, thingKinds).map((thing) => ({ thing, face: id })),
    )
    const oneOfEach = things.filter(
      ({ thing: { kind } }, at) =>
        kind === 'face-part' || things.findIndex((each) => each.thing.kind === kind) === at,
    )
    const controls = [
      ...shown.flatMap((each) => controlsIn(each, { desk })),
      ...engine.steps.flatMap((_, at) => controlsIn(stepForm, { desk, at })),
      ...oneOfEach.flatMap(({ thing, face }) => {
        desk.show(thing, face)
        return desk.chosen === null ? [] : controlsIn(thingFields, { desk, ...desk.chosen })
      }),
    ]
    for (const control of unlike(engine, controls)) await tryOut(trial, control)
  })
}

/** Fields of the same part stand for each other. */
function unlike(engine: SpecDocument, controls: readonly Control[]): readonly Control[] {
  const seen = new Set<string>()
  return controls.filter(
    (control) => control.kind !== 'field' || seen.size < seen.add(partNamed(engine, control.props.path)).size,
  )
}
function partNamed(engine: SpecDocument, path: ValuePath): string {
  return path
    .map((key, at) => {
      const entry = valueIn(engine, path.slice(0, at + 1))
      const isKind = typeof entry === 'object' && entry !== null && 'kind' in entry
      return isKind ? `(${String(entry.kind)})` : typeof key === 'number' ? '[]' : key
    })
    .join('.')
}

async function reachedByActions() {
  const engine = wholeEngine()
  const found = await Promise.all(
    Object.entries(actions).map(async ([name, act]) => ({
      name,
      reached: await reachedBy(engine, ({ desk }) => act(desk)),
    })),
  )
  for (const { name, reached } of found) expect(reached.size, name).toBeGreaterThan(0)
  return new Set(found.flatMap(({ reached }) => [...reached]))
}

describe('every part of a spec', () => {
  it('is entered in a form of the editor or by an action, or is none that a person enters', async () => {
    const reached = new Set([...(await reachedByForms()), ...(await reachedByActions())])
    const left = [...partsOfASpec].filter((part) => !reached.has(part))
    const isListed = (part: string) => notByHand.some(({ parts }) => parts.test(part))
    expect(left.filter((part) => !isListed(part))).toEqual([])
    // What is listed and is entered after all, or is no part any more, comes off the list.
    for (const { parts } of notByHand) {
      const listed = [...partsOfASpec].filter((part) => parts.test(part))
      expect(listed.length, String(parts)).toBeGreaterThan(0)
      expect(
        listed.filter((part) => reached.has(part)),
        String(parts),
      ).toEqual([])
    }
  })
})
