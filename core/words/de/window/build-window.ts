import type { Words } from '../../words.ts'
import { fixed } from '../formats.ts'

export const buildWindow: Words['buildWindow'] = {
  stepsOfBuild: 'Schritte dieses Aufbaus',
  allBuilds: 'Aufbauten',
  benchView: 'Fernansicht',

  stepPlace: ({ place, steps, name }) => `Schritt ${place}/${steps} · ${name}`,
  passPlace: ({ pass, passes }) => `Durchgang ${pass}/${passes}`,
  allDone: 'Alle Schritte erledigt',
  allSteps: 'Schritte',
  sheet: 'Montageblatt',
  stepStates: {
    done: 'erledigt',
    open: 'jetzt möglich',
    unconfirmed: 'wartet auf zweite Person',
    waiting: ({ after }) => `nach ${after.join(', ')}`,
    again: 'zu wiederholen',
    againLater: ({ after }) => `zu wiederholen, nach ${after.join(', ')}`,
  },

  drawing: 'Zeichnung',
  timesLarger: ({ times }) => `${fixed(times, 1)} × · ganzes Blatt`,
  demo: 'DEMO',
  whatThisIs: 'Erklärung',
  notes: 'Hinweise auf der Zeichnung',

  engine: 'Motor',
  build: 'Aufbau',
  atTheBench: 'an der Werkbank',
  nobody: 'niemand',
  pinWanted: ({ person }) => `${person}, PIN nötig`,
  saved: 'gesichert',
  confirmed: 'Übung',
  saving: 'wird gesichert …',
  nothingSaved: 'noch nichts',
  units: 'Einheiten',
}
