import type { mirrorDrill as english } from '../../en/practice/mirror-drill.ts'

type Nose = Parameters<typeof english.lies.shell>[0]['nose']

const sides = { left: 'a la izquierda', top: 'arriba', right: 'a la derecha', bottom: 'abajo' }
const noseAt = (nose: Nose) => (nose === null ? '' : `, extremo delantero ${sides[nose]}`)

export const mirrorDrill: typeof english = {
  printed: 'Como lo imprime el manual',
  lies: {
    shell: ({ half, nose }) => `La mitad ${half} del cárter está con la unión hacia arriba${noseAt(nose)}.`,
    fastener: ({ face, orientation, nose }) => `${face}, motor ${orientation}${noseAt(nose)}.`,
  },
  asks: {
    shell: ({ position, half }) => [
      '¿Dónde va el semicojinete de ',
      { strong: `${position} ${half}` },
      '? Tocarlo.',
    ],
    fastener: ({ number }) => ['¿Cuál es la fijación ', { strong: number }, '? Tocarla.'],
  },
  place: ({ number, of, from, aside }) => {
    const asides =
      from === 'left'
        ? { low: 'cerca de arriba', middle: 'en el medio', high: 'cerca de abajo' }
        : { low: 'a la izquierda', middle: 'en el medio', high: 'a la derecha' }
    return `Posición ${number} de ${of} desde ${from === 'left' ? 'la izquierda' : 'arriba'}${aside === 'none' ? '' : `, ${asides[aside]}`}`
  },
  slips: {
    'other-end': 'Esta no: está hacia el otro extremo. Contar desde el extremo delantero.',
    'other-side': 'Esta no: está en el otro lado.',
    both: 'Esta no: está hacia el otro extremo y en el otro lado.',
    elsewhere: 'Esta no.',
  },
  whys: {
    mirrored:
      'Aquí la cara se ve desde el lado contrario que en el manual, así que es una imagen especular: a lo largo del cigüeñal las posiciones mantienen su orden desde delante; a lo ancho, los lados se intercambian.',
    shell: ({ half }) =>
      `La mitad ${half} se ha dado la vuelta para estar así: va al revés que en el motor. Los apoyos se cuentan desde delante.`,
    turned:
      'Aquí el cárter solo está girado, no reflejado: girar la imagen hasta que los dos extremos delanteros apunten igual.',
    end: 'Aquí el motor solo está girado, no reflejado: girar la imagen hasta que coincidan sus lados.',
  },
  shown: 'La posición correcta se muestra en azul.',
}
