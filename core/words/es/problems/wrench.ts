import type { wrenchWords as english } from '../../en/problems/wrench.ts'
import { day } from '../formats.ts'

const starts = {
  mark: 'de su marca más baja',
  fifth: 'de un quinto de su alcance',
  stated: 'de su mínimo indicado',
} as const

/** Ends that go on again only so far round. */
const ends = { hexagon: 'una boca hexagonal', 'bi-hexagon': 'una boca bihexagonal' } as const

const unusual = 'Poco habitual, lo que no significa que esté mal.'

export const wrenchWords: typeof english = {
  'wrench-range-reversed': ({ least, most }) =>
    `El alcance acaba en ${most}, que no es mayor que ${least}, donde empieza. Escribir primero la marca más baja de ` +
    'la escala y después la más alta.',
  'wrench-minimum-past-range': ({ minimum, most }) =>
    `Un mínimo de ${minimum} no es menor que ${most}, el final de la escala. Leer otra vez los dos ` +
    'en la llave.',
  'wrench-step-past-range': ({ step, most }) =>
    `Una escala con divisiones de ${step} no tiene ninguna marca antes de su final, ${most}. Indicar la distancia de ` +
    'una marca a la siguiente, en la unidad de la escala.',
  'wrench-class-unknown': ({ type, class: given, known }) =>
    `ISO 6789 no tiene el tipo ${type} clase «${given}». Leer otra vez la marca de la llave: para este tipo es una de estas: ` +
    `${known.join(', ')}.`,
  'adapter-too-long': ({ adapter, offset, length }) =>
    `«${adapter}» sobresale ${offset} y la llave mide ${length}: con eso ningún ajuste ` +
    'es seguro. Medir otra vez los dos: la llave, del centro de la empuñadura al cuadradillo; el ' +
    'adaptador, del cuadradillo a la fijación.',
  'wrench-length-missing': ({ name, adapter }) =>
    `${name} no tiene anotada su longitud, y el ajuste con «${adapter}» depende de ella. Medirla del ` +
    'centro de la empuñadura al cuadradillo, o poner el adaptador a escuadra con el mango y ajustar la llave como ' +
    'sin él.',
  'wrench-target-zero': () =>
    'Ninguna llave se puede ajustar a cero. Indicar un par mayor que cero, o asentar la fijación a mano.',
  'wrench-below-range': ({ name, setting, starts: from, below }) =>
    `${name} empieza en ${from}; ${setting} estaría por debajo ${starts[below]}. ` + 'Usar una más pequeña.',
  'wrench-above-range': ({ name, setting, ends: to }) =>
    `${name} acaba en ${to}; ${setting} se sale de su escala. Usar una más grande.`,
  'wrench-steps-too-coarse': ({ name, step, setting, limits }) =>
    `${name} tiene divisiones de ${step}: ninguna marca cerca de ${setting} mantiene la fijación dentro de ` +
    `${limits}. Usar una con escala más fina.`,
  'wrench-may-leave-window': ({ name, reach, limits }) =>
    `${name} puede desviarse tanto que la fijación reciba ${reach}; admisible: ${limits}. ` +
    'Usar una de una clase más fina, o hacer medir esta en ese valor.',
  'calibration-overdue': ({ name, on, cycles, due }) =>
    `A ${name} le toca calibración: ${
      due === 'months'
        ? `la última fue el ${day(on)}, hace más de 12 meses`
        : `${cycles} ciclos desde el ${day(on)}, y el máximo son 5000`
    } (ISO 6789: 12 meses o 5000 ciclos, lo que antes se cumpla). Hacerla calibrar, o usar otra.`,
  'calibration-unknown': ({ name }) =>
    `No consta ninguna calibración de ${name}. Hacerla calibrar y anotar la fecha en «Llaves», o usar otra.`,
  'calibration-in-future': ({ name, on }) =>
    `${name} consta como calibrada el ${day(on)}, fecha que aún no ha llegado. Corregir la fecha, o el reloj de ` +
    'este ordenador.',
  'no-wrench-fits': ({ target, from, to }) =>
    `Ninguna llave de aquí se puede ajustar a ${target}. Usar una con el final de escala entre ${from} ` +
    `y ${to}, mejor si el valor cae en el centro de su alcance.`,
  'choking-up': () =>
    'Agarrar una llave mayor más cerca de la cabeza da más tacto, pero es solo un mal menor: su escala no baja ' +
    'por ello, y una llave que no se agarra por el centro de la empuñadura puede saltar antes o después. No ' +
    'fiarse de ello en una última pasada.',

  'turn-out-of-range': ({ typed, most }) =>
    `Un giro de ${typed} es más de lo que pide cualquier pasada: aquí el máximo es ${most}, dos vueltas completas. Leer ` +
    'otra vez el valor.',
  'turn-missing': () => 'Un giro de 0° no gira nada. Indicar el ángulo de giro, por ejemplo 90°.',
  'room-too-small': ({ room, flat, grip }) =>
    `Con ${room} de recorrido, ${ends[grip]} no se puede sacar y volver a poner: hacen falta ` +
    `${flat}. Usar una carraca, o una boca de estrella bihexagonal, que necesita 30°.`,
  'no-room': () => 'El mango no tiene recorrido. Girar el cárter, o usar otro mango o una prolongación.',
  'order-begins-outside': ({ first, nearer }) =>
    `Empieza por ${first}, y hay ${nearer} ` +
    `${nearer === 1 ? 'fijación' : 'fijaciones'} más cerca del centro. La mayoría de los órdenes empiezan ahí. ` +
    unusual,
  'order-goes-inwards': ({ percent }) =>
    `De cada dos fijaciones, la exterior va primero en el ${percent} % de los casos: el orden va hacia dentro. ` +
    `La mayoría van hacia fuera. ${unusual}`,
  'order-in-line': ({ hops, first, last }) =>
    `De ${first} a ${last} pasa ${hops} veces seguidas a una vecina del mismo ` +
    `lado. La mayoría de los órdenes cambian más de lado. ${unusual}`,
  'order-of-caps': ({ caps }) =>
    `Estas fijaciones sujetan ${caps} sombreretes, cada uno una unión aparte: el orden se mide dentro de cada sombrerete, no de uno ` +
    'a otro.',
  'face-without-fasteners': ({ face }) =>
    `No hay ninguna fijación en «${face}», así que nada la aprieta. Elegir una cara atornillada.`,
}
