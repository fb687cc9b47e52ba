import type { Words } from '../../words.ts'

export const view: Words['view'] = {
  title: 'Ansicht',
  open: 'Ansicht …',
  liesOnTheBench: 'Lage auf der Werkbank',
  nose: 'Steuerseite',
  noseSides: { left: 'links', top: 'von mir weg', right: 'rechts', bottom: 'zu mir' },
  nearer: 'Vergrößern',
  further: 'Verkleinern',
  wholeSheet: 'Ganzes Blatt',
  onlyStep: 'Nur zeigen, worum es im Schritt geht',
  everything: 'Alles auf dieser Fläche zeigen',
  save: 'Zeichnung als SVG speichern',
  flip: 'Wenden',
  turn: 'Drehen',
  leave: 'Verlassen',
  inWords: 'Zeichnung in Worten',
}
