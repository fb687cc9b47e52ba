import type { libraryWords as pattern } from '../../en/problems/library.ts'
import type { Table } from '../../table.ts'
import { counted } from '../formats.ts'

export const libraryWords: Table<typeof pattern> = {
  'draft-unknown': () =>
    'Este borrador no está en el registro. Volver a la biblioteca y elegir uno que esté.',
  'draft-of-another-version': () =>
    'Otra versión de Bedplate escribió este borrador, con cambios que esta no entiende. Todos se conservan: abrirlo con aquella versión.',
  'draft-moved-on': ({ last }) =>
    `Otra ventana ha cambiado entretanto este borrador; ahora está en la entrada ${last}. Se muestra lo que hay: mirarlo y hacer el cambio de nuevo.`,
  'draft-closed': ({ state }) =>
    state === 'published'
      ? 'Este borrador está publicado, y una revisión publicada no se cambia nunca. Empezar una revisión nueva en la biblioteca.'
      : 'Este borrador está descartado. Recuperarlo en la biblioteca para seguir con él.',
  'draft-not-discarded': () => 'Este borrador no está descartado. Abrirlo desde la biblioteca.',
  'draft-nothing-to-undo': () => 'No hay cambio que deshacer. Así se empezó el borrador.',
  'draft-nothing-to-redo': () => 'No hay cambio que rehacer. Así quedó el borrador tras su último cambio.',
  'draft-edit-unfit': () =>
    'Este cambio no encaja en el borrador tal como está, y no se cambió nada. Abrir de nuevo el borrador y repetir el cambio.',
  'check-of-a-demo': () =>
    'Los números de una demo son inventados: no hay manual con que compararlos. Empezar en la biblioteca un motor propio.',
  'check-by-who-entered': ({ person }) =>
    `${person} introdujo estos números, y nadie encuentra sus propios errores. Que los compare otra persona: elegir su nombre en el banco.`,
  'draft-faulty': ({ faults }) =>
    `La comprobación encuentra ${counted(faults, 'fallo', 'fallos')}, y un motor montado así saldría mal. Corregir lo que dice y publicar después.`,
  'draft-overtaken': ({ revision }) =>
    `Entretanto se publicó la revisión ${revision} desde otro borrador. Comparar las dos en la biblioteca y empezar una revisión nueva desde la última.`,
  'draft-id-taken': ({ engine }) => `Otro motor ya tiene el identificador «${engine}». Dar otro a este.`,
  'engine-name-missing': () => 'El motor aún no tiene nombre. Escribir el que se usa aquí.',
  'engine-manual-missing': () =>
    'Falta decir de qué manual salen los números. Escribir título y edición, para que otra persona pueda comprobarlos.',
  'bare-size-not-above-zero': () => 'Cero o menos no es una medida. Escribirla de nuevo con su unidad.',
  'bare-thrust-main': ({ main, mains }) =>
    `El apoyo ${main} debe llevar las arandelas de empuje, y hay ${mains}. Elegir uno que exista.`,
  'library-engine-unknown': ({ engine }) =>
    `El motor «${engine}» no está en la biblioteca en esta revisión. Abrir de nuevo la biblioteca y elegir uno que esté.`,
  'spec-file-foreign': () =>
    'Este no es un fichero de una ficha de motor. Elegir uno guardado desde una biblioteca, que termine en .bedplate-spec.',
  'spec-file-newer': ({ version, known }) =>
    `Este fichero es de un Bedplate más nuevo (versión ${version} de las fichas; este conoce la ${known}). No se importó nada. Abrirlo con el programa más nuevo.`,
  'spec-file-older': ({ version, known }) =>
    `Este fichero tiene la versión ${version} de las fichas, y este programa solo conoce la ${known}. No se importó nada. Guardar de nuevo la ficha con un programa más nuevo.`,
  'spec-file-altered': () =>
    'La ficha de este fichero no es como se guardó: su huella difiere. No se importó nada. Pedir el fichero de nuevo y no abrirlo con un editor.',
  'spec-file-not-a-spec': ({ why }) =>
    `La ficha de este fichero no se puede leer, y no se importó nada. ${why}`,
  'spec-file-faulty': ({ faults, why }) =>
    `La comprobación encuentra ${counted(faults, 'fallo', 'fallos')} en esta ficha, y no se importó nada. ${why}`,
}
