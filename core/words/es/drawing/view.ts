import type { Words } from '../../words.ts'

export const view: Words['view'] = {
  title: 'Vista',
  open: 'Vista …',
  liesOnTheBench: 'Está en el banco',
  nose: 'Delante',
  noseSides: { left: 'izquierda', top: 'hacia el fondo', right: 'derecha', bottom: 'hacia el frente' },
  nearer: 'Acercar',
  further: 'Alejar',
  wholeSheet: 'Hoja entera',
  onlyStep: 'Mostrar solo lo del paso',
  everything: 'Mostrar todo lo de esta cara',
  save: 'Guardar el dibujo en SVG',
  flip: 'Voltear',
  turn: 'Girar',
  leave: 'Salir',
  inWords: 'El dibujo en palabras',
}
