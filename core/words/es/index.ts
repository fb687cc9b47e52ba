import type { Words } from '../words.ts'
import { auditReport } from './audit/audit-report.ts'
import { clearance } from './bearings/clearance.ts'
import { proposals } from './bearings/proposals.ts'
import { shells } from './bearings/shells.ts'
import { tray } from './bearings/tray.ts'
import { described } from './drawing/described.ts'
import { drawing } from './drawing/drawing.ts'
import { view } from './drawing/view.ts'
import { editor } from './editor/editor.ts'
import { engineParts } from './engine-parts.ts'
import { amounts, dates } from './formats.ts'
import { desktop } from './host/desktop.ts'
import { doctor } from './host/doctor.ts'
import { launch } from './host/launch.ts'
import { packaging } from './host/packaging.ts'
import { shopSetup } from './host/shop-setup.ts'
import { drafts } from './library/drafts.ts'
import { library } from './library/library.ts'
import { revision } from './library/revision.ts'
import { phrases } from './phrases.ts'
import { practice } from './practice/practice.ts'
import { whatIf } from './practice/what-if.ts'
import { problems } from './problems/index.ts'
import { sheet } from './sheet/sheet.ts'
import { instruments } from './speech/instruments.ts'
import { spoken } from './speech/spoken.ts'
import { dangers, signals } from './steps/dangers.ts'
import { limits } from './steps/limits.ts'
import { partsList } from './steps/parts-list.ts'
import { photos } from './steps/photos.ts'
import { plan } from './steps/plan.ts'
import { placed } from './steps/placed.ts'
import { rings } from './steps/rings.ts'
import { steps } from './steps/steps.ts'
import { turning } from './steps/turning.ts'
import { benchCard } from './tightening/bench-card.ts'
import { clampMap } from './tightening/clamp-map.ts'
import { flags } from './tightening/flags.ts'
import { flangeAssumptions, pullInputs } from './tightening/joint.ts'
import { order } from './tightening/order.ts'
import { passes } from './tightening/passes.ts'
import { run } from './tightening/run.ts'
import { wrenches } from './tightening/wrenches.ts'
import { archive } from './window/archive.ts'
import { buildWindow } from './window/build-window.ts'
import { engines } from './window/engines.ts'
import { keys } from './window/keys.ts'
import { parts } from './window/parts.ts'
import { people } from './window/people.ts'
import { record } from './window/record.ts'
import { settings } from './window/settings.ts'
import { shop } from './window/shop.ts'
import { window } from './window/window.ts'

/** Every text of the program that a person reads, in Spanish. */
export const es: Words = {
  amounts,
  archive,
  auditReport,
  benchCard,
  buildWindow,
  clampMap,
  clearance,
  dangers,
  dates,
  desktop,
  doctor,
  described,
  drafts,
  drawing,
  editor,
  engineParts,
  engines,
  flangeAssumptions,
  flags,
  instruments,
  keys,
  launch,
  library,
  limits,
  placed,
  order,
  packaging,
  parts,
  partsList,
  passes,
  people,
  photos,
  plan,
  phrases,
  practice,
  whatIf,
  proposals,
  problems,
  pullInputs,
  record,
  revision,
  rings,
  run,
  settings,
  sheet,
  shells,
  shop,
  shopSetup,
  signals,
  spoken,
  steps,
  tray,
  turning,
  view,
  window,
  wrenches,
}
