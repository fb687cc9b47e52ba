import type { auditBearingWords as english, OfMarks } from '../../en/problems/audit-bearing.ts'
import { pairText } from '../halves.ts'

/** What the family of a case says of its halves. */
const families = {
  'split-horizontal': 'el cárter se divide en horizontal, en mitad superior e inferior',
  'split-vertical': 'el cárter se divide en vertical',
  caps: 'el cárter lleva sombreretes bajo sus apoyos',
  bedplate: 'el cárter lleva una bancada de una pieza con los apoyos inferiores',
  tunnel: 'el cigüeñal entra en un túnel',
}

/** What a fit says of the two halves of one bearing. */
const rules = {
  'one-grade': 'las mitades de un cojinete deben ser de una misma clase',
  neighbours: 'solo se pueden mezclar clases contiguas',
  'thicker-upper': 'la mitad superior lleva la pared más gruesa',
  'thicker-lower': 'la mitad inferior lleva la pared más gruesa',
  'thicker-left': 'la mitad izquierda lleva la pared más gruesa',
  'thicker-right': 'la mitad derecha lleva la pared más gruesa',
}

export const auditBearingWords: typeof english = {
  // Bands and grades
  'band-reversed': ({ place, over, upTo }) =>
    `${place}: el intervalo va de ${over} a ${upTo}, al revés o sobre nada. Corregir uno de los dos.`,
  'bands-overlap': ({ place, first, second }) =>
    `${place}: los intervalos de las marcas ${first} y ${second} se solapan, y una medida tiene dos marcas. Corregir uno de ellos.`,
  'bands-gap': ({ place, first, second, from, to }) =>
    `${place}: entre la marca ${first} y la marca ${second}, las medidas de más de ${from} hasta ${to} no tienen ` +
    'marca. Comprobar si un intervalo tiene una errata.',
  'bands-not-as-drawn': ({ place, drawn, limits, bands, width, classes }) =>
    `${place}: el plano dice ${drawn}, que es ${limits}; los intervalos de las marcas van de ${bands}` +
    (classes.length === 0
      ? `, con ${width} de ancho, y no son de ninguna clase de tolerancia ISO 286 conocida aquí. `
      : `, que serían ${classes.join(' o ')}. `) +
    'Comparar los dos con el plano.',
  'band-wide': ({ place, width }) =>
    `${place}: un intervalo de ${width} de ancho es poco habitual en un cojinete. Comprobar sus dos extremos y su unidad.`,
  'band-missing': ({ place }) =>
    `${place}: no tiene intervalo y otros sí. Añadirlo, para poder calcular la holgura.`,
  'bore-far-from-nominal': ({ place, band, bearing, nominal }) =>
    `${place}: ${band} está lejos de los ${nominal} con que se dibuja ${bearing}. ` +
    'Comprobar los dos y su unidad.',
  'nothing-to-choose-by': ({ fit }) =>
    `${fit}: no hay ni tabla ni intervalo para cada marca y clase, así que no se puede elegir semicojinete. Dar una de las dos cosas.`,
  'grades-not-ascending': ({ fit, first, second }) =>
    `${fit}: la clase ${second} figura después de ${first} y no es más gruesa. Enumerar las clases de fina a gruesa.`,
  'grades-overlap': ({ fit, first, second }) =>
    `${fit}: las paredes de las clases ${first} y ${second} se solapan. Comprobar los dos intervalos.`,
  'grades-look-alike': ({ fit, first, second }) =>
    `${fit}: las clases ${first} y ${second} tienen el mismo color y trama. Dar otro a una.`,
  'undersize-large': ({ fit, name, undersize }) =>
    `${fit}: nadie rectifica ${undersize} en un muñón («${name}»). Comprobar el valor y su unidad.`,
  'undersize-twice': ({ fit, name, undersize }) =>
    `${fit}: la submedida ${undersize} figura dos veces, o tiene dos nombres («${name}»). Dejar una.`,
  'split-against-family': ({ fit, family }) =>
    `${fit}: sus mitades son izquierda y derecha, pero ${families[family]}. Corregir cómo están las mitades, o el tipo de cárter.`,
  'undersize-grade-unknown': ({ fit, name, grade }) =>
    `${fit}, ${name}: ${grade} no es una clase de estos cojinetes. Corregirla, o incluirla entre las clases.`,
  'undersize-grade-twice': ({ fit, name, grade }) =>
    `${fit}, ${name}: hay dos paredes para la clase ${grade}. Dejar una.`,
  'undersize-wall-off': ({ fit, name, grade, printed, expected }) =>
    `${fit}, ${name}: la clase ${grade} viene impresa como ${printed}, y con la mitad de la submedida sería ` +
    `${expected}. Mirar otra vez las dos.`,
  'undersize-wall-full': ({ fit, name, grade, printed, expected }) =>
    `${fit}, ${name}: la clase ${grade}, ${printed}, es más gruesa que la estándar en toda la submedida. Las ` +
    `dos mitades se la reparten: ${expected}.`,
  'worn-wall-above-new': ({ fit, name, worn }) =>
    `${fit}${name === null ? '' : `, ${name}`}: un semicojinete usado estaría gastado con ${worn}, y algunos nuevos son más finos. Corregir uno de ` +
    'los dos.',
  'taper-length-incomplete': ({ fit }) =>
    `${fit}: una conicidad por longitud necesita la conicidad, al menos dos planos de medida y la distancia del primero al último. Añadir lo que ` +
    'falta.',
  'planes-beyond-bearing': ({ fit, apart, width }) =>
    `${fit}: planos de medida a ${apart} no caben en un cojinete de ${width} de ancho. Corregir uno de los dos.`,
  'position-in-two-fits': ({ position, first, second }) =>
    `${position} está en ${first} y en ${second}: recibiría sus semicojinetes dos veces. Quitarlo de uno.`,

  // Charts
  'chart-mark-unknown': ({ fit, mark, part, known }) =>
    `${fit}: la tabla tiene una casilla para la marca ${mark} de ${part}, que no es ninguna de ` +
    `${known.join(', ')}. Corregir la casilla, o añadir la marca.`,
  'chart-grade-unknown': (facts) =>
    `${cell(facts)}: ${facts.grade} no es una clase de estos cojinetes. Sus clases son ${facts.known.join(', ')}.`,
  'chart-cell-absent': (facts) =>
    `${cell(facts)}: la tabla no tiene semicojinetes para ${facts.positions.join(', ')}. Añadir la casilla, o decir por qué está vacía.`,
  'chart-cell-twice': (facts) =>
    `${cell(facts)}: la tabla tiene dos casillas para un mismo cojinete. Dejar una.`,
  'chart-mixes-against-rule': (facts) =>
    `${cell(facts)}: ${pairText(facts, ' con ')}, pero ${rules[facts.rule]}. Corregir la casilla, o la regla.`,
  'chart-leaves-limits': (facts) =>
    `${cell(facts)}: ${pairText(facts, ' con ')} puede dar, por sus intervalos, una holgura de ${facts.clearance}; ` +
    `admisible: ${facts.limits}. Comprobar la casilla y los intervalos.`,
  'chart-misses-limits': (facts) =>
    `${cell(facts)}: ${pairText(facts, ' con ')} da, por sus intervalos, una holgura de ${facts.clearance}, ` +
    `toda fuera de ${facts.limits}. Corregir la casilla o los intervalos.`,
  'bands-leave-limits': (facts) =>
    `${cell(facts)}: la mejor pareja, ${pairText(facts, ' con ')}, puede dar ${facts.clearance}; ` +
    `admisible: ${facts.limits}. Comprobar los intervalos y los límites.`,
  'bands-miss-limits': (facts) =>
    `${cell(facts)}: ninguna pareja de clases entra en ${facts.limits}; la más cercana, ` +
    `${pairText(facts, ' con ')}, da ${facts.clearance}. Corregir los intervalos o los límites.`,
}

function cell({ fit, housing, journal }: OfMarks): string {
  return `${fit}, marcas ${housing} y ${journal}`
}
