import { problem } from '../../core/problem/index.ts'
import { drawingFacts, sealantClock } from '../../core/builds/index.ts'
import { sceneOf } from '../../core/layout/index.ts'
import { patterns, signals } from '../../core/engine/index.ts'
import { fitting } from '../canvas/camera.ts'
import SceneList from '../canvas/SceneList.svelte'
import CautionNote from '../parts/CautionNote.svelte'
import Choice from '../parts/Choice.svelte'
import DayField from '../parts/DayField.svelte'
import GradeTag from '../parts/GradeTag.svelte'
import OpenTime from '../parts/OpenTime.svelte'
import ProblemNote from '../parts/ProblemNote.svelte'
import QrCode from '../parts/QrCode.svelte'
import ReasonForm from '../parts/ReasonForm.svelte'
import CardOnBoard from './CardOnBoard.svelte'
import { benchAt, momentOf } from './at-bench.ts'
import { engineOf } from './engines.ts'
import { entriesOf, type Entry } from './entry.ts'
import type { OnStage } from './shown.ts'
import { en } from '../../core/words/index.ts'

const part = entriesOf('Parts', 'panel')
const nothing = () => undefined

const faulty = problem('calibration-unknown', { name: 'Click 100' })
const usual = ['Pressed by mistake', 'Wrong wrench setting']
const units = ['N·m', 'lbf·ft', 'lbf·in'].map((value) => ({ value, text: value }))

export const partEntries: readonly Entry[] = [
  part('Caution', 'What can hurt, under its signal word', CautionNote, () =>
    byName(signals, (signal) => ({ caution: { signal, text: 'Studs stand up: keep hands clear.' } })),
  ),
  part('Choice', 'One of a few, all in sight', Choice, () => ({
    named: { name: 'Torque in', options: units, value: 'N·m', onchoose: nothing },
    unnamed: { name: 'Torque in', named: false, options: units, value: 'lbf·in', onchoose: nothing },
  })),
  part('Day', 'A day by its parts, in the language of the window', DayField, () => ({
    chosen: { label: 'Calibrated on', value: '2026-03-05', onchoose: nothing },
    none: { label: 'Calibrated on', value: '', onchoose: nothing },
    begun: { label: 'Calibrated on', value: '2026-03', onchoose: nothing },
  })),
  part('Grade tag', 'A shell as the drawing shows it, in every pattern', GradeTag, () => {
    const { grades } = engineOf('firth-v8').spec.fits[0]!
    const tags = byName(patterns, (pattern) => ({ grade: { ...grades[0]!, pattern } }))
    return { ...tags, large: { grade: grades[0]!, size: 'large' as const } }
  }),
  part('Open time', 'What is left before the sealant skins over', OpenTime, async (shown) => {
    const { openBuild } = await benchAt(shown, momentOf('skerry-3', 'bead laid').build)
    const clock = sealantClock(openBuild.spec, openBuild.state)!
    const over = { ...clock, endsAt_ms: Date.parse(clock.laidAt) }
    return { running: { openBuild, clock }, over: { openBuild, clock: over } }
  }),
  part('Problem', 'What happened, where, and what to do next', ProblemNote, () => ({
    stays: { problem: faulty },
    'can be closed': { problem: faulty, onclose: nothing },
    'camera refused': { problem: problem('camera-refused', {}), onclose: nothing },
    'photo damaged': { problem: problem('photo-damaged', { step: 25 }) },
  })),
  part('QR code', 'The head of a record, to be read by a telephone', QrCode, () => ({
    'a head': { text: 'Bedplate 0197a2 231 91c4 e07f 2b5d 83aa' },
  })),
  part('Reason', 'Why something is done against the order', ReasonForm, () => ({
    'in own words': { question: 'Pull out of order: why?', action: 'Pull it', onreason: nothing },
    'with usual answers': {
      ...{ question: 'Take back fastener 4: why?', action: 'Take it back', usual },
      ...{ onreason: nothing, oncancel: nothing },
    },
  })),
  part('Card of a fastener', 'Every pass of it, and what was flagged', CardOnBoard, (shown) =>
    cardOf(shown, 'fastener/case-1'),
  ),
  part('Card of a half', 'Its shell, and why that one', CardOnBoard, (shown) =>
    cardOf(shown, 'half/M1/upper'),
  ),
  part('Drawing in words', 'What the canvas shows, for keys and screen readers', SceneList, () => {
    const { step, build } = momentOf('skerry-3', 'run in mid pass')
    const { spec } = build.engine
    const view = { from: 'below', turn: 0 } as const
    const sheet = { widthPx: 940, heightPx: 700, capitalPx: 12 }
    const scene = sceneOf(en, spec, drawingFacts(en, spec, build.state, step), view, sheet)
    return { 'in mid pass': { scene, onTap: nothing } }
  }),
]

/** A card beside what was tapped, in the middle of a run. */
async function cardOf(shown: OnStage, about: string) {
  const { step, build } = momentOf('skerry-3', 'run with a flag')
  const { bench, openBuild } = await benchAt(shown, build)
  const board = { width: 428, height: 640 }
  const { words } = shown.language
  const facts = drawingFacts(words, openBuild.spec, openBuild.state, step)
  const sheet = { widthPx: board.width, heightPx: board.height, capitalPx: 12 }
  const scene = sceneOf(words, openBuild.spec, facts, { from: 'below', turn: 0 }, sheet)
  const { seq } = openBuild.state
  return {
    'in a run with a flag': {
      ...{ bench, openBuild, scene, board, camera: fitting(scene.frame, board), onclose: nothing },
      picked: { about, at: { x: 214, y: 320 }, seq },
    },
  }
}

function byName<Name extends string, Of>(names: readonly Name[], of: (name: Name) => Of) {
  return Object.fromEntries(names.map((name) => [name, of(name)]))
}
