import type { Pass, StepKind } from '../../core/engine/index.ts'
import type { HelpTopicId } from '../../core/words/index.ts'
import type { Place } from '../bench/place.ts'
import type { Task } from '../steps/run/run-task.ts'

/** The topic of each page. */
export const topicOfPlace: { readonly [At in Place['at']]: HelpTopicId } = {
  opening: 'engines',
  rescue: 'damaged-record',
  engines: 'engines',
  archive: 'archive',
  library: 'library',
  revision: 'library',
  draft: 'editor',
  record: 'record',
  shop: 'shop',
  wall: 'shop',
  'screen-and-keys': 'screen-and-keys',
  instruments: 'instruments',
  comparison: 'comparison',
  lines: 'shop',
  build: 'build-window',
  sheet: 'sheet',
  wrenches: 'wrenches',
  people: 'people',
  practice: 'practice',
  'bench-card': 'bench-card',
  'ring-card': 'bench-card',
  'clamp-map': 'clamp-map',
}

/** The topic of each kind of step. */
export const topicOfStep: { readonly [Kind in StepKind]: HelpTopicId } = {
  'note-marks': 'marks',
  'choose-shells': 'shells',
  'fit-shells': 'fit-shells',
  'fit-part': 'fit-part',
  'lay-bead': 'bead',
  'run-procedure': 'run',
  check: 'check',
  count: 'count',
  photo: 'photo',
  'measure-limits': 'limits',
  'measure-rings': 'rings',
  'fit-rings': 'rings',
  lubricate: 'placed',
  clean: 'placed',
  orient: 'placed',
  align: 'placed',
  'fit-places': 'placed',
  turn: 'turning',
  note: 'placed',
}

/** The topic of what a procedure asks for now. */
export function topicOfTask(task: Task): HelpTopicId {
  if (task.kind === 'flag' || task.kind === 'replace') return 'flags'
  return task.kind === 'pull' ? topicOfPass(task.pass) : 'run'
}

function topicOfPass({ kind }: Pass): HelpTopicId {
  switch (kind) {
    case 'angle':
      return 'angle'
    case 'length':
    case 'stretch':
    case 'tighten-to-stretch':
      return 'stretch'
    default:
      return 'run'
  }
}
