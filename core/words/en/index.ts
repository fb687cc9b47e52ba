import { amounts } from './amounts.ts'
import { archive } from './archive.ts'
import { auditReport } from './audit-report.ts'
import { benchCard } from './bench-card.ts'
import { buildWindow } from './build-window.ts'
import { clampMap } from './clamp-map.ts'
import { clearance } from './clearance.ts'
import { desktop } from './desktop.ts'
import { doctor } from './doctor.ts'
import { described } from './described.ts'
import { drawing } from './drawing.ts'
import { engineParts } from './engine-parts.ts'
import { engines } from './engines.ts'
import { flags } from './flags.ts'
import { flangeAssumptions, pullInputs } from './joint.ts'
import { keys } from './keys.ts'
import { launch } from './launch.ts'
import { limits } from './limits.ts'
import { placed } from './placed.ts'
import { order } from './order.ts'
import { packaging } from './packaging.ts'
import { parts } from './parts.ts'
import { partsList } from './parts-list.ts'
import { passes } from './passes.ts'
import { people } from './people.ts'
import { phrases } from './phrases.ts'
import { practice } from './practice.ts'
import { whatIf } from './what-if.ts'
import { proposals } from './proposals.ts'
import { problems } from './problems/index.ts'
import { record } from './record.ts'
import { run } from './run.ts'
import { settings } from './settings.ts'
import { sheet } from './sheet.ts'
import { shells } from './shells.ts'
import { steps } from './steps.ts'
import { tray } from './tray.ts'
import { view } from './view.ts'
import { window } from './window.ts'
import { wrenches } from './wrenches.ts'

/** Every text of the program that a person reads, in English, in one table for each subject. */
export const en = {
  amounts,
  archive,
  auditReport,
  benchCard,
  buildWindow,
  clampMap,
  clearance,
  desktop,
  doctor,
  described,
  drawing,
  engineParts,
  engines,
  flangeAssumptions,
  flags,
  keys,
  launch,
  limits,
  placed,
  order,
  packaging,
  parts,
  partsList,
  passes,
  people,
  phrases,
  practice,
  whatIf,
  proposals,
  problems,
  pullInputs,
  record,
  run,
  settings,
  sheet,
  shells,
  steps,
  tray,
  view,
  window,
  wrenches,
}
