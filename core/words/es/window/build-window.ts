import type { Words } from '../../words.ts'
import { fixed, listed } from '../formats.ts'

export const buildWindow: Words['buildWindow'] = {
  stepsOfBuild: 'Pasos de este montaje',
  allBuilds: 'Montajes',
  benchView: 'Vista de banco',

  stepPlace: ({ place, steps, name }) => `Paso ${place} de ${steps} · ${name}`,
  passPlace: ({ pass, passes }) => `pasada ${pass}/${passes}`,
  allDone: 'Todos los pasos están hechos',
  allSteps: 'Pasos',
  sheet: 'Hoja',
  stepStates: {
    done: 'hecho',
    open: 'se puede hacer ahora',
    unconfirmed: 'espera a una segunda persona',
    waiting: ({ after }) => `después de ${listed(after)}`,
    again: 'por repetir',
    againLater: ({ after }) => `por repetir, después de ${listed(after)}`,
  },

  drawing: 'Dibujo',
  timesLarger: ({ times }) => `${fixed(times, 1)} × · hoja entera`,
  demo: 'DEMO',
  whatThisIs: 'Qué es esto',
  notes: 'Notas del dibujo',

  engine: 'motor',
  build: 'montaje',
  atTheBench: 'en el banco',
  nobody: 'nadie',
  pinWanted: ({ person }) => `${person}, falta el PIN`,
  saved: 'guardado',
  confirmed: 'práctica',
  saving: 'guardando …',
  nothingSaved: 'aún nada',
  units: 'unidades',
}
