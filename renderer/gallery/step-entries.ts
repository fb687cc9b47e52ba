import { bearingsIn, proposalsFor } from '../../core/builds/index.ts'
import type { Step } from '../../core/engine/index.ts'
import { newtonMetres } from '../../core/quantity/index.ts'
import { nextPull, runProgress, usableFor } from '../../core/tightening/index.ts'
import AnglePicture from '../card/AnglePicture.svelte'
import CardDrawing from '../card/CardDrawing.svelte'
import { Handle } from '../bench/handle.svelte.ts'
import { today } from '../parts/time.ts'
import AngleGuide from '../steps/run/turn/AngleGuide.svelte'
import FlagForm from '../steps/run/questions/FlagForm.svelte'
import OrderStrip from '../steps/run/order/OrderStrip.svelte'
import OrderWords from '../steps/run/order/OrderWords.svelte'
import PassList from '../steps/run/order/PassList.svelte'
import PullExplained from '../steps/run/PullExplained.svelte'
import ReplaceForm from '../steps/run/questions/ReplaceForm.svelte'
import RestartForm from '../steps/run/questions/RestartForm.svelte'
import PrevailingNote from '../steps/run/wrench/PrevailingNote.svelte'
import { RunningTorque } from '../steps/run/wrench/running-torque.svelte.ts'
import WrenchLine from '../steps/run/wrench/WrenchLine.svelte'
import WrenchView from '../steps/run/wrench/WrenchView.svelte'
import { RunDesk } from '../steps/run/run-desk.svelte.ts'
import type { PullTask, Task } from '../steps/run/run-task.ts'
import type { MemoryBuild } from '../bench/memory-build.ts'
import { nextTurn } from '../steps/run/turn/next-turn.ts'
import MeasuredWith from '../steps/check/MeasuredWith.svelte'
import MeasurePart from '../steps/shells/MeasurePart.svelte'
import ShellRow from '../steps/shells/ShellRow.svelte'
import ThreadCheck from '../steps/shells/ThreadCheck.svelte'
import { benchAt, momentOf } from './at-bench.ts'
import { entriesOf, type Entry } from './entry.ts'
import type { OnStage } from './shown.ts'

const engine = 'skerry-3'
const ofShells = entriesOf('Parts of choosing shells', 'panel')
const ofCheck = entriesOf('Parts of a check', 'panel')
const ofRun = entriesOf('Parts of a run', 'panel')
const onPaper = entriesOf('Parts of a run', 'paper')
const nothing = () => undefined

type StepOf<Kind extends Step['kind']> = Extract<Step, { kind: Kind }>

/** The bearing that the moment is about: one that is not as it should be, else the second. */
async function choosing(shown: OnStage, name: string) {
  const moment = momentOf(engine, name)
  const { bench, openBuild } = await benchAt(shown, moment.build)
  const step = moment.step as StepOf<'choose-shells'>
  const fit = openBuild.spec.fits.find(({ id }) => id === step.fit)!
  const proposals = proposalsFor(openBuild.spec, openBuild.state, fit.id)
  const proposal = proposals.find(({ within }) => within !== 'inside') ?? proposals[1]!
  const { position } = proposal
  const { tray } = bearingsIn(openBuild.state, fit.id)
  return {
    row: { bench, openBuild, step: step.id, fit, proposal, tray, ontoggle: nothing, onmeasure: nothing },
    part: { bench, openBuild, step: step.id, fit, position },
  }
}

interface Going {
  readonly engine?: string
  /** The step; the one on the main joint where none is named. */
  readonly of?: string
  /** What happens at that moment. */
  readonly then?: (build: MemoryBuild, procedure: string) => void
}

/** A run with its desk, as the panel has them. */
async function running(shown: OnStage, name: string, { engine: id = engine, of, then }: Going = {}) {
  const moment = momentOf(id, name, of)
  const build = moment.build.branch()
  then?.(build, (moment.step as StepOf<'run-procedure'>).procedure)
  const { bench, openBuild } = await benchAt(shown, build)
  const step = moment.step as StepOf<'run-procedure'>
  const desk = new RunDesk(
    () => openBuild,
    () => step.procedure,
    () => null,
    () => ({ putOff: [], putOffFlag: nothing, recallFlag: nothing }),
  )
  const face = openBuild.spec.case.faces.find(({ id }) => id === desk.procedure.face)!
  const task = desk.task as PullTask
  const window = task.window?.kind === 'torque' ? task.window : null
  const chosen = window && usableFor(bench.rack.setups, window, today())
  return { bench, openBuild, step, desk, face, task, choice: chosen?.ok ? chosen.value : null }
}

/** The wrenches of the rack for a pull that some of them can make. */
async function wrenchesFor(shown: OnStage) {
  const { choice } = await running(shown, 'run in mid pass', { engine: 'tarn-4' })
  if (choice === null || choice.usable.length < 2) throw new Error('the rack has no wrenches for that pull')
  return choice
}

/** What a run asks for, which must be of this kind. */
function taskOf<Kind extends Task['kind']>({ task }: RunDesk, kind: Kind): Extract<Task, { kind: Kind }> {
  if (task.kind !== kind) throw new Error(`the run asks for ${task.kind}, not ${kind}`)
  return task as Extract<Task, { kind: Kind }>
}

async function flagged(shown: OnStage, name: string, going: Going) {
  const { openBuild, desk } = await running(shown, name, going)
  return { openBuild, desk, flag: taskOf(desk, 'flag').flag }
}

/** The joint stands open where its gap is measured. */
function leaveGap(build: MemoryBuild, procedure: string) {
  const { pass } = nextPull(
    build.engine.spec.procedures.find(({ id }) => id === procedure)!,
    build.state.runs[procedure],
  )!
  build.does({
    ...{ type: 'pull', procedure, pass, fastener: null },
    ...{ reading: { typed: '0.12', unit: 'mm' }, moved: false, outOfOrder: null },
  })
}

export const stepEntries: readonly Entry[] = [
  ofShells('Row of a bearing', 'The pair that is proposed, and why', ShellRow, async (shown) => {
    const proposed = await choosing(shown, 'shells proposed')
    const differing = await choosing(shown, 'marks and readings differ')
    const outside = await choosing(shown, 'out of limits')
    return {
      closed: { ...proposed.row, open: false },
      open: { ...proposed.row, open: true },
      'marks and readings differ': { ...differing.row, open: true },
      'out of limits': { ...outside.row, open: true },
    }
  }),
  ofShells('Measuring a part', 'Readings in planes and directions', MeasurePart, async (shown) => {
    const [empty, noted] = [
      await choosing(shown, 'shells proposed'),
      await choosing(shown, 'marks and readings differ'),
    ]
    return {
      'nothing typed': { ...empty.part, part: 'housing' as const },
      noted: { ...noted.part, part: 'journal' as const },
    }
  }),
  ofShells('Crushed thread', 'The clearance as a crushed thread says it', ThreadCheck, async (shown) => ({
    'nothing typed': (await choosing(shown, 'shells proposed')).part,
  })),

  ofCheck(
    'Measured with',
    'The thrust washers that an end float was measured with',
    MeasuredWith,
    async (shown) => {
      const { openBuild } = await benchAt(shown, momentOf('rill-5', 'check to answer').build)
      const endFloat = openBuild.spec.endFloat!
      const [standard, oversize] = endFloat.washers
      const common = { endFloat, onchoose: nothing }
      return {
        'nobody has said': { ...common, fitted: null },
        'without washers': { ...common, fitted: [] },
        'two thicknesses': { ...common, fitted: [standard!, oversize!] },
      }
    },
  ),
  ofRun('Passes', 'Every pass of a procedure and how far it has come', PassList, async (shown) => {
    const [begun, mid] = [await running(shown, 'run at its start'), await running(shown, 'run in mid pass')]
    return {
      'at the start': { desk: begun.desk, bench: begun.bench },
      'in mid pass': { desk: mid.desk, bench: mid.bench },
    }
  }),
  ofRun('Order in words', 'How the order goes and what is unusual about it', OrderWords, async (shown) => {
    const { openBuild, desk } = await running(shown, 'run at its start')
    return { 'of the case joint': { spec: openBuild.spec, procedure: desk.procedure } }
  }),
  ofRun('Order as a strip', 'What was pulled, what is next', OrderStrip, async (shown) => {
    const { openBuild, desk } = await running(shown, 'run in mid pass')
    const next = nextPull(desk.procedure, desk.run)!
    const progress = runProgress(desk.procedure, desk.run)[next.pass]!
    return { 'in mid pass': { spec: openBuild.spec, progress, next, cap: null } }
  }),
  ofRun('Prevailing torque', 'What a locking nut means for the wrench', PrevailingNote, async (shown) => {
    const { desk, task } = await running(shown, 'run in mid pass')
    const unit = 'N·m' as const
    const mostTorque = newtonMetres(8)
    const nuts = (torqueIncludesPrevailing?: boolean, typed = '') => {
      const fastenerGroups = desk.spec.fastenerGroups.map((group) => ({
        ...{ ...group, prevailing: mostTorque, torqueIncludesPrevailing },
      }))
      const { procedure } = desk
      const spec = { ...desk.spec, fastenerGroups }
      const running = new RunningTorque(() => ({ spec, procedure, run: undefined }))
      running.typed = typed
      return { planned: task.next, unit, desk: { procedure, spec, running } }
    }
    return {
      included: nuts(true),
      'not said': nuts(),
      'to be read': nuts(false),
      'on top': nuts(false, '6'),
      'too much': nuts(false, '9'),
    }
  }),
  ofRun('Wrench, in a line', 'Which wrench and its setting', WrenchLine, async (shown) => {
    const choice = await wrenchesFor(shown)
    return {
      'of the rack': { choice, heldWrench: choice.usable.find(({ adapter }) => adapter === null)! },
      'with an adapter': { choice, heldWrench: choice.usable.find(({ adapter }) => adapter !== null)! },
      'another one': { choice, heldWrench: null },
      'no wrench known': { choice: null, heldWrench: null },
    }
  }),
  ofRun(
    'Wrenches for a pull',
    'What each wrench gives, and which cannot be used',
    WrenchView,
    async (shown) => {
      const choice = await wrenchesFor(shown)
      const common = { choice, unit: 'N·m' as const, ontake: nothing, onwrenches: nothing }
      const { choice: none } = await running(shown, 'run in mid pass')
      return {
        'of the rack': { ...common, heldWrench: choice.usable[0]! },
        'none fits': { ...common, choice: none, heldWrench: null },
      }
    },
  ),
  ofRun('Pull explained', 'What the pull does to its fastener', PullExplained, async (shown) => {
    const [torque, turn] = [await running(shown, 'run in mid pass'), await running(shown, 'turn by an angle')]
    const unit = 'N·m' as const
    return {
      'a torque': { desk: torque.desk, task: torque.task, unit },
      'a turn': { desk: turn.desk, task: turn.task, unit },
    }
  }),
  ofRun(
    'Angle guide',
    'Where the handle starts, where it ends, in how many swings',
    AngleGuide,
    async (shown) => {
      const { openBuild, step, face } = await running(shown, 'turn by an angle')
      const turn = nextTurn(openBuild.spec, openBuild.state, step)!
      const guide = (room: number | null) => {
        const { workedFrom, plane } = face
        const handle = new Handle(() => ({ view: { from: workedFrom, turn: 0 }, workedFrom, plane }))
        handle.allow(room)
        return { handle, turn, onexplain: nothing }
      }
      return { free: guide(null), 'room for 45°': guide(45) }
    },
  ),
  ofRun(
    'Flag',
    'What was noted, and a gap outside its limits, ask for an answer',
    FlagForm,
    async (shown) => {
      const rough = { type: 'note-problem', fastener: null, text: 'Thread is rough' } as const
      return {
        'a problem that somebody noted': await flagged(shown, 'run in mid pass', {
          then: (build, procedure) => build.does({ ...rough, procedure }),
        }),
        'a gap out of its limits': await flagged(shown, 'gap to measure', {
          engine: 'moor-flat-4',
          then: leaveGap,
        }),
      }
    },
  ),
  ofRun('Replacing', 'What had too much and cannot be turned back', ReplaceForm, async (shown) => {
    const { openBuild, desk } = await running(shown, 'run with a flag', { of: 'rods-on' })
    return { tight: { openBuild, desk, task: taskOf(desk, 'replace') } }
  }),
  ofRun('Beginning again', 'From which pass', RestartForm, async (shown) => ({
    'in mid pass': { desk: (await running(shown, 'run in mid pass')).desk },
  })),
  onPaper('Angle on paper', 'The turn on a bench card', AnglePicture, async (shown) => {
    const { openBuild, step } = await running(shown, 'turn by an angle')
    return { 'a turn': { window: nextTurn(openBuild.spec, openBuild.state, step)!.window } }
  }),
  onPaper('Drawing on a bench card', 'The order on paper', CardDrawing, async (shown) => {
    const { openBuild, face, desk } = await running(shown, 'run in mid pass')
    return { 'of the case joint': { spec: openBuild.spec, face, procedure: desk.procedure } }
  }),
]
