import type { pastedTableWords as english } from '../../en/problems/pasted-table.ts'
import { counted } from '../formats.ts'

export const pastedTableWords: typeof english = {
  'table-empty': () => 'Ahí no hay ninguna tabla. Copiar la cabecera y las filas y pegarlas de nuevo.',
  'table-too-long': ({ rows, most }) =>
    `La tabla tiene ${counted(rows, 'fila', 'filas')}, y una ficha tiene como máximo ${most} fijaciones. Pegar una parte.`,
  'table-cell-formula': ({ row, column, text }) =>
    `La fila ${row}, columna ${column} es una fórmula, «${text}», y no un valor. Copiar solo los valores y pegarlos de nuevo.`,
  'table-cell-unread': ({ row, column, why }) =>
    `La fila ${row}, columna ${column} no se puede leer, y no se ha incorporado nada. ${why}`,
  'chart-too-large': ({ cells, most }) =>
    `La tabla tiene ${counted(cells, 'celda', 'celdas')}, y una tabla de selección tiene como máximo ${most}. Pegar solo la de un tipo de cojinete.`,
  'chart-head-unread': ({ found, housing, journal }) =>
    `La cabecera de la tabla tiene ${found.join(', ') || 'nada'}. Un lado debe tener las marcas de alojamiento ` +
    `${housing.join(', ')}, y el otro las de muñón ${journal.join(', ')}. Copiar las marcas con la tabla, o añadir las que faltan.`,
  'chart-row-unread': ({ row, found, known }) =>
    `La fila ${row} empieza por «${found}», que no es una marca de aquí (${known.join(', ')}). Corregirla, o añadir antes la marca.`,
  'chart-row-twice': ({ row, mark }) =>
    `La fila ${row} es la segunda para la marca ${mark}. Dejar fuera una de ellas.`,
  'chart-row-long': ({ row, found, most }) =>
    `La fila ${row} tiene ${counted(found, 'celda', 'celdas')} y la cabecera ${counted(most, 'marca', 'marcas')}. Mirar si se ha corrido una celda.`,
  'chart-cell-unread': ({ row, column, found, known }) =>
    `La fila ${row}, columna ${column} ${found === '' ? 'está vacía' : `tiene «${found}»`}. Escribir una clase de aquí (${known.join(', ')}), o dos con una barra entre ellas, primero la superior.`,
  'chart-rows-missing': ({ marks }) =>
    `La tabla no dice nada de ${marks.length === 1 ? 'la marca' : 'las marcas'} ${marks.join(', ')}. Copiar la tabla entera, también la última fila y columna.`,
  'positions-columns-missing': ({ missing, found }) =>
    `La tabla tiene las columnas ${found.join(', ')}, y ${missing.length === 1 ? 'falta' : 'faltan'} ${missing.join(' e ')}. Llamar x e y a dos de ellas.`,
  'positions-group-unknown': ({ group }) =>
    `No hay ningún grupo de fijaciones «${group}». Añadirlo antes en «Grupos», o quitar la columna.`,
  'positions-number-unread': ({ number }) =>
    `«${number}» no es un número para el dibujo. Escribir hasta tres cifras, con una letra delante si la hay.`,
}
