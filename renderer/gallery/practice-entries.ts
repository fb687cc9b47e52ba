import type { PersonLine } from '../../core/contract/index.ts'
import { atOnce } from '../../core/joint/index.ts'
import { bareFacts, sceneOf } from '../../core/layout/index.ts'
import {
  asLying,
  candidatesOf,
  chartDrill,
  drillsOf,
  measureDrill,
  mirrorDrill,
  orderConsequence,
  orderDrill,
  progressOf,
  readyPeople,
  seedOf,
  trainingRack,
  valuesDrill,
  type DrillKind,
  type MeasureQuestion,
} from '../../core/practice/index.ts'
import { en } from '../../core/words/index.ts'
import { drillViews } from '../practice/drills/drill-views.ts'
import DrillResult from '../practice/DrillResult.svelte'
import { DryRun } from '../practice/dry-run/dry-run.ts'
import DryRunResult from '../practice/dry-run/DryRunResult.svelte'
import DryRunScreens from '../practice/dry-run/DryRunScreens.svelte'
import ErrorsByPlace from '../practice/ErrorsByPlace.svelte'
import MistakePicture from '../practice/drills/MistakePicture.svelte'
import PracticePage from '../practice/PracticePage.svelte'
import ReadinessNotice from '../practice/ReadinessNotice.svelte'
import ReadyPeople from '../practice/ReadyPeople.svelte'
import WhatIf from '../practice/WhatIf.svelte'
import { benchWith, clientWith } from './at-bench.ts'
import { usualPreferences } from './memory-host.ts'
import { engineOf, engines } from './engines.ts'
import { entriesOf, type Entry } from './entry.ts'
import { playOrder, practisedOf } from './practised.ts'
import type { Press } from './press.ts'
import { holdAsData } from './sample-data.ts'
import type { OnStage } from './shown.ts'

const { spec } = engineOf('skerry-3')
const engine = spec.id
const screen = entriesOf('Practice', 'screen')
const panel = entriesOf('Parts of practice', 'panel')
const page = entriesOf('Parts of practice, wide', 'page')
const nothing = () => undefined

/** The one at the bench, in the list of people. */
const person: PersonLine = {
  ...{ id: '01956f6c-8a00-7000-8000-000000000003', name: 'I. Brandvold', role: 'mechanic' },
  ...{ hasBadge: false, hasPin: false, present: true },
}
const practised = practisedOf(spec)
const progress = progressOf(practised)
/** The page opens at the first engine. */
const both = [...practised, ...practisedOf(engines[0]!.spec)]
const kept = { rounds: { [person.name]: both }, minimums: { [engine]: 2 } }
const benchPractised = (shown: OnStage) => benchWith(shown, { people: [person], practice: kept })

/** Of each kind, the round whose drill goes over the main joint, or its bearings, where there is one. */
const seeds: Readonly<Record<DrillKind, string>> = {
  order: seedOf(engine, 'order', 1),
  chart: seedOf(engine, 'chart', 1),
  values: seedOf(engine, 'values', 1),
  angle: seedOf(engine, 'angle', 1),
  mirror: seedOf(engine, 'mirror', 1),
  measure: seedOf(engine, 'measure', 1),
  fault: seedOf(engine, 'fault', 1),
}
const order = orderDrill(spec, seeds.order)!
const chart = chartDrill(spec, seeds.chart)!
const values = valuesDrill(spec, seeds.values, trainingRack(en), 'N·m', '2026-03-02')!

const drilled =
  (drill: DrillKind, seed = seeds[drill]) =>
  async (shown: OnStage) => ({
    // Without wrenches: the questions are then about those for practice, whose calibration is never over.
    all: {
      ...{ bench: await benchWith(shown, { wrenches: [] }) },
      ...{ open: { spec, drill, seed }, onleave: nothing, ondone: nothing, result: undefined },
    },
  })
const ofDrill = (drill: DrillKind, name: string, shows: string, press: readonly Press[] = []) =>
  screen(`${en.practice.names[drill]}: ${name}`, shows, drillViews[drill], drilled(drill), press)

/** A fastener of the order drill as the list of the drawing has it, before it is pulled. */
function unnamed(fastener: string): string {
  const { where } = spec.fasteners.find(({ id }) => id === fastener)!
  return en.practice.fastener({ where, letter: null, isPulled: false })
}
const last = order.key.at(-1)!
const wrongValue = (at: number): string => {
  const { choices, key, kind } = values.questions[at]!
  const wrong = choices.find((_, place) => !key.includes(place))
  if (kind === 'wrench' || !wrong || !('number' in wrong)) throw new Error('that question has no values')
  return en.practice.values.scale(wrong)
}
/** The place of the drawing's list that a wrong answer to the first question of the mirror drill names. */
function wrongPlace(): string {
  const [question] = mirrorDrill(spec, seeds.mirror)!.questions
  if (!question) throw new Error('that round asks nothing')
  const facts = { ...bareFacts(question.face), subject: 'shells' } as const
  const sheet = { widthPx: 900, heightPx: 640, capitalPx: 18 }
  const scene = sceneOf(en, spec, facts, question.view, sheet)
  const { rows } = asLying(en, spec, question, scene, null)
  const wrong = candidatesOf(spec, question).find(({ about }) => about !== question.key)!
  return rows.find(({ about }) => about === wrong.about)!.text
}
/** A round of the measure drill that begins with an instrument. */
function beginningWith(kind: MeasureQuestion['kind'], unit: MeasureQuestion['unit']): string {
  for (let rounds = 0; rounds < 1000; rounds += 1) {
    const seed = seedOf(engine, 'measure', rounds)
    const [first] = measureDrill(spec, seed).questions
    if (first?.kind === kind && first.unit === unit) return seed
  }
  throw new Error(`no round begins with ${kind}`)
}
/** The shells of the first bearing, the upper one a grade too thick or too thin. */
function wrongPair(): readonly Press[] {
  const { key } = chart.questions[0]!
  const grades = chart.fit.grades.map(({ grade }) => grade)
  const other = grades.find((grade) => grade !== key.upper)!
  return [
    { group: en.engineParts.halves.upper, button: other },
    { group: en.engineParts.halves.lower, button: key.lower },
    en.practice.check,
  ]
}

/** What the joint is like with the last fastener of a round's pass pulled at its beginning. */
function mistakeIn(id: string, rounds: number) {
  const { spec: of } = engineOf(id)
  const drill = orderDrill(of, seedOf(id, 'order', rounds))!
  const early = drill.key.at(-1)!
  const consequence = atOnce(orderConsequence(of, drill, drill.key[0]!, early))
  if (!consequence.ok || consequence.value === null) throw new Error('the model says nothing of that pass')
  return { spec: of, consequence: consequence.value, early }
}

const tried = async (shown: OnStage) => ({
  all: { bench: await benchWith(shown), spec, onleave: nothing },
})

function dryRun(): DryRun {
  const named = { number: en.practice.dryRun.number, name: en.practice.dryRun.build }
  holdAsData(named)
  const started = DryRun.start(clientWith({}), {
    ...{ engine: engineOf('skerry-3'), person: person.name, preferences: usualPreferences },
    ...named,
  })
  if (!started.ok) throw new Error(started.problem.code)
  return started.value
}

export const practiceEntries: readonly Entry[] = [
  screen('Practice', 'What is due today, the drills and errors by place', PracticePage, async (shown) => ({
    all: { bench: await benchPractised(shown) },
  })),
  screen('Practice, nothing kept', 'Somebody who is not in the list', PracticePage, async (shown) => ({
    all: { bench: await benchWith(shown) },
  })),

  ofDrill('order', 'at its start', 'A pass on the drawing without its numbers'),
  ofDrill('order', 'a mistake', 'Why not that one, the next one in blue, and what the joint would hold', [
    unnamed(last),
    { appears: en.practice.order.picture },
  ]),
  ofDrill('order', 'what comes next', 'After the last fastener of the pass', [
    ...order.key.map(unnamed),
    en.practice.order.complete,
  ]),
  ofDrill('chart', 'at its start', 'Marks drawn by chance, and the printed chart'),
  ofDrill('chart', 'a mistake', 'The clearance that the wrong shells would leave', wrongPair()),
  ofDrill('values', 'at its start', 'What a fastener is pulled to'),
  ofDrill('values', 'a mistake', 'What the fastener would get', [wrongValue(0)]),
  ofDrill('angle', 'at its start', 'A handle without its wedge'),
  ofDrill('angle', 'too little', 'How far it came, with the wedge', [
    ...angleSteps(25),
    en.practice.angle.here,
  ]),
  ofDrill('angle', 'with a wrench', 'The angle is read off a protractor', [en.practice.angle.hows.own]),
  ofDrill('mirror', 'at its start', 'A case that does not lie as printed, without its names'),
  ofDrill('mirror', 'a mistake', 'Why not there, and the right place in blue', [wrongPlace()]),
  ...(
    [
      ['feelers', 'mm', 'Blades that go in together, on edge'],
      ['strip', 'mm', 'A strip of plastic beside its scale'],
      ['micrometer', 'mm', 'Sleeve, thimble and vernier, unrolled'],
      ['micrometer', 'in', 'Sleeve, thimble and vernier, unrolled'],
      ['bore-gauge', 'in', 'A dial that was set in a ring'],
    ] as const
  ).map(([kind, unit, shows]) =>
    screen(
      `${en.practice.names.measure}: ${en.practice.measure.drawn({ instrument: en.practice.measure.instruments[kind], unit })}`,
      shows,
      drillViews.measure,
      drilled('measure', beginningWith(kind, unit)),
    ),
  ),

  ofDrill('fault', 'at its start', 'A finished build with one thing wrong'),
  ofDrill('fault', 'on the sheet', 'Its results, with the charts', [en.practice.fault.showns.sheet]),

  screen('What if: at its start', 'An order to tap, or patterns to take', WhatIf, tried),
  screen('What if: a pattern', 'The difference to the spec’s order', WhatIf, tried, [
    en.whatIf.patterns['end-to-end'],
    { appears: en.clampMap.pulls },
  ]),
  screen('Dry run', 'The real window under the word PRACTICE', DryRunScreens, async (shown) => ({
    all: {
      ...{ bench: await benchWith(shown), run: dryRun(), onend: nothing },
    },
  })),
  screen('Dry run, ended', 'How it went, by place of error', DryRunResult, async (shown) => ({
    all: {
      ...{ bench: await benchWith(shown), spec, tally: playOrder(spec, seeds.order, [1, 3]), seconds: 2460 },
      ...{ isFinished: true, standing: null, onagain: nothing, onleave: nothing },
    },
  })),

  page('Errors by place', 'Where on the engine errors were made', ErrorsByPlace, async (shown) => {
    const faultless = [practised[3]!]
    return {
      'of some rounds': { bench: await benchWith(shown), spec, progress },
      'without an error': {
        ...{ bench: await benchWith(shown), spec },
        progress: progressOf(faultless),
      },
    }
  }),
  page('Mistake', 'What a joint would hold with one fastener too early', MistakePicture, () => ({
    'loads that differ': mistakeIn('skerry-3', 1),
    'loads that hardly change': mistakeIn('strath-6', 1),
  })),
  panel('Result', 'What a round came to', DrillResult, () => {
    const standing = progress.find(({ drill }) => drill === 'order')!
    const common = { onagain: nothing, onleave: nothing }
    return {
      'with errors': { ...common, tally: playOrder(spec, seeds.order, [2]), seconds: 174, standing },
      'without an error': { ...common, tally: playOrder(spec, seeds.order, []), seconds: 96.4, standing },
      'not kept': { ...common, tally: playOrder(spec, seeds.order, []), seconds: 96.4, standing: null },
    }
  }),
  panel('Practice before a build', 'What of the minimum is missing', ReadinessNotice, async (shown) => ({
    'somebody who practised': { bench: await benchPractised(shown), engine, person: person.name },
    'somebody who did not': { bench: await benchPractised(shown), engine, person: 'B. Lind' },
  })),
  panel('Who is ready', 'Everybody in the list, with the drills of an engine', ReadyPeople, () => {
    const offered = drillsOf(spec).map((drill) => ({ engine, drill }))
    const drills = offered.map(({ drill }) => drill)
    const people = [
      { name: person.name, progress: progressOf(practisedOf(spec)) },
      { name: 'B. Lind', progress: [] },
    ]
    const shownFor = (least: number) => ({
      ready: { least, drills, people: readyPeople(offered, people, least) },
    })
    return { 'a minimum of 1': shownFor(1), 'without a minimum': shownFor(0) }
  }),
]

/** The buttons that turn the handle by so many degrees, a multiple of 5. */
function angleSteps(by: number): readonly Press[] {
  return Array.from({ length: by / 5 }, () => en.practice.angle.by({ degrees: 5 }))
}
