import type { specAdvice as english } from '../../en/audit/spec-advice.ts'
import { plain } from '../formats.ts'

/** What a place in a spec must hold, by the name that the schema has for it. */
const kinds: Readonly<Record<string, string>> = {
  array: 'una lista entre [ ]',
  boolean: 'true o false',
  int: 'un número entero',
  number: 'un número sin comillas',
  object: 'un grupo entre { }',
  string: 'un texto entre comillas',
  tuple: 'una lista entre [ ]',
}

const relations = {
  'at-least': 'como mínimo',
  above: 'más de',
  'at-most': 'como máximo',
  below: 'menos de',
}

export const specAdvice: typeof english = {
  // Of any value
  'write-kind': ({ kind }) => `escribir ${kinds[kind] ?? kind}`,
  'write-one-of': ({ values }) => {
    const listed = values.map((value) => (typeof value === 'string' ? `«${value}»` : plain(value)))
    return `escribir ${listed.length === 1 ? '' : 'uno de estos valores: '}${listed.join(', ')}`
  },
  'write-as-shown': () =>
    'escribirlo de una de las maneras que muestra el README junto a las fichas de demostración',
  'turning-empty': () =>
    'dar un máximo, un mínimo o una subida máxima del par de giro; omitirlo si el manual no da ninguno',
  'type-number': () => 'escribir un número',
  'type-whole-number': () => 'escribir un número entero',
  'write-date': () => 'escribir la fecha como año, mes y día, por ejemplo 2026-03-31',
  'write-another-way': () => 'escribirlo de otra manera',
  'write-another-name': () => 'escribir otro nombre',
  'write-another-value': () => 'escribir otro valor',
  'number-within': ({ relation, limit }) => `dar ${relations[relation]} ${plain(limit)}`,
  'entries-within': ({ relation, limit }) => `número de elementos: ${relations[relation]} ${limit}`,
  'characters-within': ({ relation, limit }) => `número de caracteres: ${relations[relation]} ${limit}`,
  'multiple-of': ({ divisor }) => `escribir un múltiplo de ${plain(divisor)}`,

  // Quantities and places
  'value-with-unit': ({ example }) =>
    `escribir el valor con su unidad entre comillas, por ejemplo "${example}"`,
  'length-within': ({ metres }) => `dar una longitud de ${plain(metres)} m como máximo`,
  'size-above-zero': () => 'dar una medida mayor que cero',
  'gap-not-negative': () => 'dar una abertura de cero o más',
  'torque-above-zero': () => 'dar un par mayor que cero',
  'force-above-zero': () => 'dar una fuerza mayor que cero',
  'two-lengths': () => 'escribir dos longitudes, a lo largo y a lo ancho, por ejemplo ["120 mm", "-46 mm"]',

  // Wrenches
  'step-above-zero': () => 'dar una división mayor que cero',
  'angle-to-handle': () => 'dar el ángulo con la línea del mango, de 0° a 180°',

  // Names
  'id-characters': () => 'usar hasta 40 letras, cifras, guiones y puntos',
  'id-of-javascript': () => 'elegir otro id: este lo reserva JavaScript',
  'languages-none': () => 'escribir el texto al menos en un idioma: «en», «de» o «es»',
  'name-empty': () => 'escribir un nombre',
  'name-long': ({ most }) => `un nombre de menos de ${most} caracteres`,
  'sentence-empty': () => 'escribir una frase',
  'sentence-long': ({ most }) => `una frase de menos de ${most} caracteres`,
  'number-of-fastener': () => 'un número son hasta tres cifras, como máximo con una letra mayúscula delante',
  'mark-characters': () => 'una marca son de uno a tres caracteres sin espacio',
  'grade-characters': () => 'una clase son de una a tres mayúsculas o cifras',
  'colour-digits': () => 'escribir el color como # y seis cifras hexadecimales en mayúscula',

  // What an engine has
  'outline-corners': () => 'un contorno necesita al menos tres vértices',
  'cylinders-none': () => 'un motor tiene al menos un cilindro',
  'faces-none': () => 'un cárter tiene al menos una cara de unión',
  'order-empty': () => 'un orden tiene al menos una fijación',
  'passes-none': () => 'un procedimiento tiene al menos una pasada',
  'limits-empty': () => 'dar el mínimo, el máximo o los dos',
  'pistons-none': () => 'nombrar al menos un pistón que lleve estos segmentos',
  'rings-none': () => 'nombrar al menos un segmento',
  'angle-on-the-clock': () => 'dar un ángulo de 0° hasta 360°, en sentido horario desde el lado delantero',
  'angle-within-circle': () => 'dar un ángulo de 0° hasta 360°, sin llegar a 360°',
  'throws-none': () => 'un cigüeñal necesita al menos un codo',
  'throw-without-rods': () => 'nombrar las bielas que van en la muñequilla',
  'angle-up-to-90': () => 'dar un ángulo de 0° a 90°',
  'angle-up-to-180': () => 'dar un ángulo mayor que 0°, de 180° como máximo',
  'places-none': () => 'nombrar al menos un punto en el que se hace algo',
  'measures-none': () => 'nombrar al menos una cosa que se mide',
  'part-limit': () =>
    'indicar que es nueva cada vez, o cuánto se puede reutilizar: un límite en palabras, o un número total de montajes',
  'part-unused': () => 'nombrar al menos un paso que la use',
  'parts-too-many': ({ most }) =>
    `una lista de piezas tiene como máximo ${most} líneas: reunir las piezas iguales en una línea con su cantidad, y omitir lo que este montaje no lleva`,
  'steps-none': () => 'una ficha tiene al menos un paso',
  'fasteners-none': () => 'nombrar al menos una fijación',
  'version-of-spec': ({ version }) =>
    `escribir ${version} en una ficha propia y abrir la de un programa más nuevo con ese: este lee la versión ${version}`,

  // Values as manuals print them
  'torque-or-range': () => 'dar el par como un solo valor, o como intervalo con su mínimo y su máximo',
  'turn-or-in-all': () => 'dar o cuánto se gira, o cuánto en total',
  'others-with-in-all': () => 'omitirlo si la pasada dice cuánto en total',
  'in-all-unclear': () =>
    'dar un ángulo mayor que lo girado antes, que debe ser igual para todas, o dar cuánto se gira cada una',
  'steps-do-not-come-out': () =>
    'ningún número de etapas iguales de este tamaño llega al valor de la pasada: dar el tamaño como intervalo, de y hasta, ' +
    'u otro tamaño',
  'steps-from-unlike': () =>
    'todas las fijaciones de un valor deben tener antes el mismo par, desde el que cuentan las etapas: escribir una pasada para cada etapa',
}
