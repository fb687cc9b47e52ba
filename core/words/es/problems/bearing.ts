import type { bearingWords as english, Shape } from '../../en/problems/bearing.ts'
import { engineParts } from '../engine-parts.ts'
import { pairText } from '../halves.ts'

/** What is measured of a bearing, with its article. */
const measured = {
  bore: 'un alojamiento',
  journal: 'un muñón',
  wall: 'una pared de semicojinete',
  'thread-width': 'un ancho de hilo',
  'card-step': 'una graduación de la tarjeta',
} as const

const gaps = { 'end-float': 'juego axial', 'side-clearance': 'juego lateral' } as const

const nameOf = { mm: 'milímetros', in: 'pulgadas', µm: 'micrómetros', thou: 'milésimas de pulgada' } as const

const { standardSize } = engineParts

const shapes = { bore: 'alojamiento', journal: 'muñón' } as const

function cure({ what }: Shape): string {
  return what === 'bore'
    ? 'Comprobar el sombrerete y sus tornillos y, después, hacer rectificar el alojamiento.'
    : 'Hacer rectificar el muñón a la submedida siguiente.'
}

export const bearingWords: typeof english = {
  'mark-unknown': ({ position, part, mark, known }) =>
    `${position}: «${mark}» no es una marca de ${part}. Las marcas conocidas son ${known.join(', ')}; ` +
    'escribir ? si está borrada.',
  'marks-too-few': ({ part, read, expected }) =>
    `${part}: se han leído ${read} de ${expected} marcas. Escribir una por posición, ? si está borrada.`,
  'marks-too-many': ({ part, read, expected }) =>
    `${part}: se han leído ${read} marcas y hay ${expected} posiciones. Quitar lo que no sea una marca.`,
  'marks-ambiguous': ({ part, typed }) =>
    `${part}: «${typed}» se puede leer como marcas de más de una manera. Separar las marcas con un espacio.`,
  'mark-worn': ({ place, part }) =>
    `${place}: no se conoce la marca de ${part}. Medir y elegir los semicojinetes por la lectura.`,
  'mark-without-band': ({ place, part, mark }) =>
    `${place}: la marca ${mark} de ${part} no indica medida: la ficha no da ninguna para ella, o la pieza se rectificó después de marcarla. ` +
    'Medir y elegir los semicojinetes por la lectura.',
  'reading-outlier': ({ place, plane, direction, size, middle }) =>
    `${place}, plano ${plane}, dirección ${direction}: lectura ${size}, las demás en torno a ` +
    `${middle}. Tomarla de nuevo.`,
  'chart-cell-missing': ({ place, housing, journal }) =>
    `${place}: la tabla no tiene semicojinetes para las marcas ${housing} y ${journal}. Leer otra vez las dos marcas, o medir.`,
  'grade-unknown': ({ place, grade, known }) =>
    `${place}: ${grade} no es una clase de estos cojinetes. Sus clases son ${known.join(', ')}.`,
  'wall-unknown': ({ place, grade }) =>
    `${place}: la ficha no da espesor de pared para la clase ${grade}. Medir la pared del semicojinete.`,
  'no-walls-known': ({ place }) =>
    `${place}: la ficha no da espesores de pared para sus clases. Medir la pared de los semicojinetes.`,
  'no-pair-inside-limits': ({ place, pair, clearance, limits }) =>
    `${place}: ninguna pareja admitida de semicojinetes queda con seguridad dentro de ${limits}; la más cercana es ` +
    `${pairText(pair, ' con ')}, ${clearance}. Medir alojamiento y muñón y elegir por las lecturas.`,
  'clearance-leaves-limits': ({ place, clearance, limits }) =>
    `${place}: holgura ${clearance}, admisible ${limits}. Medir alojamiento, muñón y semicojinetes ` +
    'antes de cerrarlo.',
  'size-not-above-zero': ({ place, what, typed }) =>
    `${place}: «${typed}» no puede ser la medida de ${measured[what]}. Leer el instrumento y escribirla de nuevo.`,
  'reading-in-other-unit': ({ place, typed, unit, meant, what, least, most }) =>
    `${place}: ¿es «${typed}» en ${nameOf[unit]}? Serían ${meant}; de ${measured[what]} ` +
    `se espera de ${least} a ${most}. Escribirlo con su unidad.`,
  'reading-far-off': ({ place, typed, least, most, what }) =>
    `${place}: «${typed}» está lejos de lo esperado de ${measured[what]}: de ${least} a ${most}. ` +
    'Leer otra vez el instrumento y comprobar que es la pieza correcta.',
  'readings-missing': ({ place, what, planes, directions }) =>
    `${place}: medir ${measured[what]} requiere ${planes} planos de ${directions} lecturas cada uno. ` +
    'Escribir las que faltan.',
  'temperature-not-sensible': ({ of, temperature, least, most }) =>
    `${temperature} no es una temperatura ${of === 'oil' ? 'de aceite en un motor' : 'para medir'}. ` +
    `Escribir una de ${least} a ${most}.`,
  'expansion-unknown': ({ place }) =>
    `${place}: la ficha no dice cuánto se dilatan las piezas con el calor. Medir a 20 °C.`,
  'bore-not-above-journal': ({ place, bore, journal }) =>
    `${place}: el alojamiento, ${bore}, no es mayor que el muñón, ${journal}. Comprobar que los dos son de aquí y ` +
    'medir de nuevo.',
  'gauge-too-coarse': ({ limits, uncertainty }) =>
    `Con una incertidumbre de medida de ± ${uncertainty}, ninguna lectura puede demostrar una medida dentro de ${limits}. Usar un instrumento más fino.`,
  'mark-against-size': ({ place, part, mark, least, most, size, wouldBe }) =>
    `${place}: la marca de ${part} es ${mark}, que va de ${least} a ${most}, pero la medida es ` +
    `${size}, ${wouldBe === null ? 'que no corresponde a ninguna marca' : `que sería la marca ${wouldBe}`}. ` +
    'Medir de nuevo; después decidir qué vale e indicar por qué.',
  'out-of-round': (facts) =>
    `${facts.place}: ovalización del ${shapes[facts.what]} ${facts.reading}, admisible ${facts.allowed}. ${cure(facts)}`,
  tapered: (facts) =>
    `${facts.place}: conicidad del ${shapes[facts.what]} ${facts.reading}, admisible ${facts.allowed}. ${cure(facts)}`,
  'shell-worn': ({ label, wall, least }) =>
    `${label}: una pared de ${wall} está gastada; un semicojinete usado se puede volver a montar desde ${least}. Cambiar las dos mitades de su ` +
    'cojinete y sacarlo de la bandeja.',
  'undersize-unknown': ({ place, name, known }) =>
    `${place}: la ficha no tiene la submedida ${name}. ${known.length === 0 ? 'No tiene ninguna.' : `Tiene ${known.join(', ')}.`}`,
  'undersize-against-size': ({ place, declared, size, measured: found }) =>
    `${place}: el muñón está declarado como ${declared ?? standardSize}, pero mide ${size}, que es ` +
    `${found ?? standardSize}. Medir de nuevo; después decidir qué vale e indicar por qué.`,
  'journal-sizes-unknown': ({ place, part }) =>
    `${place}: la ficha no da medidas de ${part} para reconocer una submedida. Elegir la submedida a mano.`,
  'journal-of-no-size': ({ place, journal, next }) =>
    `${place}: un muñón de ${journal} no es de medida estándar ni de ninguna submedida. ` +
    (next === null
      ? 'No hay submedida a la que se pueda rectificar; medir de nuevo.'
      : `Medir de nuevo, o hacerlo rectificar a ${next.name}, de ${next.least} a ${next.most}.`),
  'washer-not-defined': ({ place, float }) =>
    `${place}: la ficha no define qué arandelas pide un juego axial de ${float}. Medir de nuevo; si ` +
    'se mantiene, preguntar al fabricante.',
  'no-thrust-pair': ({ place, gap, nearest, least, most }) =>
    `${place}: ninguna arandela de empuje de la ficha deja un juego axial de ${least} a ${most} en un hueco de ${gap}` +
    (nearest === null
      ? '. '
      : `; las más cercanas son ${nearest.first} y ${nearest.second}, con ${nearest.float}. `) +
    'Medir de nuevo; si se mantiene, el cigüeñal o el apoyo están gastados.',
  'gap-outside-limits': ({ place, gap, reading, least, most }) =>
    `${place ?? 'Bielas'}: ${gaps[gap]} ${reading}, admisible de ${least} a ${most}. ` +
    (gap === 'end-float'
      ? 'Montar otras arandelas de empuje y medir de nuevo.'
      : 'Comprobar el desgaste de biela y cigüeñal.'),
  'labels-alike': ({ label }) =>
    `Dos líneas de la bandeja llevan la etiqueta ${label}. Dar a cada una su propia etiqueta.`,
  'count-not-whole': ({ label, count }) =>
    `${label}: ${String(count).replace('.', ',')} no es un número de semicojinetes. Contarlos y escribir un número entero, 0 o más.`,
  'pinned-outside': ({ place }) =>
    `${place}: con los semicojinetes elegidos aquí a mano, ninguna pareja está admitida y dentro de límites. Volver a los propuestos.`,
  'tray-too-small': ({ place }) =>
    `${place}: la bandeja no alcanza para todos los cojinetes, y la ficha no da espesores de pared para pedirlos. ` +
    'Medir más semicojinetes.',
}
