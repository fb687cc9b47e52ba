import type { revisionWords as pattern } from '../../en/problems/revision.ts'
import type { Table } from '../../table.ts'

export const revisionWords: Table<typeof pattern> = {
  'revision-none': () =>
    'La biblioteca no tiene revisión más nueva de la ficha que sigue este montaje. Abrir de nuevo el montaje y mirar.',
  'revision-of-another': ({ engine }) =>
    `Esta ficha es de otro motor, «${engine}». Un montaje conserva su motor. Empezar otro montaje para el otro.`,
  'revision-same': () => 'El montaje ya sigue esta revisión. Seguir con ella.',
  'revision-step-begun': ({ step }) =>
    `«${step}» está a medio hacer, y se termina con la revisión con que se empezó. Terminarlo o deshacerlo; después, adoptar la revisión.`,
  'revision-opens-others': ({ others }) =>
    others.length === 0
      ? 'La revisión más nueva ya no vuelve a abrir ningún paso. Mirar otra vez y confirmar.'
      : `La revisión más nueva vuelve a abrir ${others.map((other) => `«${other}»`).join(', ')}. Mirar la lista otra vez y confirmar.`,
  'revision-not-taken-apart': ({ first }) =>
    `Antes de adoptar la revisión, deshacer en el banco lo que dice la lista, empezando por «${first}», e indicar que está deshecho.`,
}
