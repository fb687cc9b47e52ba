import type { Words } from '../../words.ts'
import { counted, day } from '../formats.ts'

export const editorCheck: Words['editor']['check'] = {
  title: 'Comparar con el manual',
  explained:
    'Comparar cada valor con el manual en su página. Los pares, ángulos y órdenes se escriben tal como los imprime el manual, sin ver lo que se introdujo.',
  ofDemo: 'Los números de una demo son inventados: no hay manual con que compararlos.',
  byAnother: ({ person }) =>
    `${person} introdujo los números y no puede comprobarlos. Otra persona elige aquí su nombre y sigue.`,
  progress: ({ done, of }) => `${done} de ${counted(of, 'valor', 'valores')} iguales.`,
  checked: ({ by }) => `Comprobado por ${by}.`,
  page: ({ page, document }) => `Página ${page}, ${document}`,
  noPage: 'No consta la página: puede escribirse junto a la parte a la que pertenece este valor.',
  same: 'Igual',
  other: 'Distinto',
  later: 'Después',
  whatItSays: 'Lo que dice el manual',
  typeUnseen: ({ unit }) => `Lo que imprime el manual, en ${unit} o con su unidad`,
  typeOrder: 'Las fijaciones en el orden del manual, por sus números',
  enter: 'Comparar',
  note: 'Anotarlo como distinto',
  differs:
    'No es lo que se introdujo. Mirar otra vez la página: si fue un error al escribir, escribirlo de nuevo; si el manual lo dice así, anotarlo.',
  noteOther: ({ found }) => `El manual dice «${found}»`,
  all: 'Todos los valores',
  open: 'aún sin comparar',
  sameBy: ({ by, on }) => `igual, ${by}, ${day(on)}`,
  otherBy: ({ by, on, found }) => `distinto, ${by}, ${day(on)}: ${found}`,
  compare: 'Comparar',
  again: 'Comparar otra vez',
  noDemoAnyMore: 'Se sustituyó cada valor: ya no es copia de una demo',
}
