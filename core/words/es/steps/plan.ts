import type { plan as english } from '../../en/steps/plan.ts'

export const plan: typeof english = {
  doAgain: 'Repetir este paso …',
  skip: 'Omitir este paso …',
  takeBackSkip: 'Hacerlo pese a todo …',
  isSkipped: ({ reason }) => `OMITIDO: ${reason}`,
  skipped: 'Este paso está omitido.',
  again: ({ reason, other }) =>
    other === null ? `Por repetir: ${reason}` : `Por repetir, porque se repite «${other}»: ${reason}`,
  whySkip: '¿Por qué se omite?',
  skipIt: 'Omitirlo',
  whyAfterAll: '¿Por qué se hace pese a todo?',
  doAfterAll: 'Hacerlo pese a todo',
  whyAgain: '¿Por qué se repite?',
  againNow: 'Repetirlo',
  opensNone: 'No vuelve a abrir ningún otro paso.',
  opens: 'Con él se vuelven a abrir:',
  opensIfOther: 'Si alguna marca resulta distinta, se vuelven a abrir:',
  marksAlone: 'Lo que se apoya en las marcas sigue hecho, salvo que resulten distintas.',
  undoFirst: 'Antes, deshacer en el banco, en este orden:',
  deeds: {
    loosen: ({ step }) => `${step}: aflojar todo, en orden inverso`,
    'take-out-part': ({ step }) => `${step}: quitar o sacar la pieza`,
    'clean-off-bead': ({ step }) => `${step}: limpiar el sellador de ambas caras`,
    'take-out-shells': ({ step }) => `${step}: sacar los semicojinetes`,
    'take-off-rings': ({ step }) => `${step}: quitar los segmentos`,
  },
  isUndone: 'Está deshecho en el banco',
  sheet: {
    redone: 'Repetido',
    row: ({ reason, again, takenApart }) =>
      `Repetido: ${reason} (${again}${takenApart ? '; desmontado en el banco' : ''}).`,
    first: ({ stamp, skipped }) =>
      skipped ? 'omitido antes' : stamp === null ? 'empezado antes' : `hecho antes: ${stamp}`,
    alsoOpen: 'abiertos otra vez con él:',
    skipped: 'PASOS OMITIDOS',
    skippedRow: ({ reason, stamp }) => `${reason} (${stamp}).`,
    afterAll: ({ reason, stamp }) => `Omisión retirada: ${reason} (${stamp}).`,
    inList: ({ reason }) => `! OMITIDO: ${reason}`,
    timesAgain: ({ times }) => (times === 1 ? '; repetido una vez' : `; repetido ${times} veces`),
  },
}
