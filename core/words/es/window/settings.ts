import type { Words } from '../../words.ts'
import type { Fineness } from '../../en/window/settings.ts'
import { fixed, plain } from '../formats.ts'

export const settings: Words['settings'] = {
  title: 'Pantalla y teclas',
  keys: 'Teclas',
  letterKeys: 'Teclas de un carácter',
  on: 'sí',
  off: 'no',
  switchedOff: 'Desactivadas.',
  screenSize: 'Tamaño de esta pantalla',
  measureWithCard:
    'Poner una tarjeta bancaria con su borde izquierdo sobre el borde izquierdo del contorno. Arrastrar el borde derecho, o pulsar las flechas ' +
    'o + y −, hasta que el contorno sea tan grande como la tarjeta (85,6 mm de ancho). Así los números tienen su tamaño real.',
  cardWidth: 'Ancho de la tarjeta',
  fineness,
  notMeasured: (facts) => `Sin medir: se supone ${fineness(facts)}.`,
  measured: (facts) => `✓ Medido: ${fineness(facts)}.`,
  asLargeAsCard: 'El contorno es tan grande como la tarjeta',
  forgetMeasured: 'Olvidar la medición',

  look: 'Colores',
  looks: { 'as-the-system': 'como el sistema', light: 'claros', dark: 'oscuros' },
  torqueIn: 'Par en',
  readFrom: 'Se lee desde',
  metres: ({ distance }) => `${distance === 0.5 ? '½' : plain(distance)} m`,
}

function fineness({ pxPerMm }: Fineness): string {
  return `${fixed(pxPerMm, 2, 'px/mm')}, ${Math.round(pxPerMm * 25.4)} px por pulgada`
}
