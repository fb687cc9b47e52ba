import { archive } from './archive.ts'
import { doctor } from './doctor.ts'
import { engines } from './engines.ts'
import { keys } from './keys.ts'
import { parts } from './parts.ts'
import { people } from './people.ts'
import { problems } from './problems/index.ts'
import { record } from './record.ts'
import { settings } from './settings.ts'
import { tray } from './tray.ts'
import { window } from './window.ts'
import { wrenches } from './wrenches.ts'

/** Every text of the program that a person reads, in English, in one table for each subject. */
export const en = {
  archive,
  doctor,
  engines,
  keys,
  parts,
  people,
  problems,
  record,
  settings,
  tray,
  window,
  wrenches,
}
