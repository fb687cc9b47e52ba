import type { auditTighteningWords as english, OfPass, Slip } from '../../en/problems/audit-tightening.ts'
import { listed as all, thread } from '../formats.ts'

const at = ({ procedure, pass }: OfPass) => `${procedure}, pasada ${pass}`

export const auditTighteningWords: typeof english = {
  // Orders
  'order-misses': ({ procedure, order, numbers, group }) =>
    `${procedure}: el orden «${order}» omite ${listed(numbers)} de ${group}. ` + 'Incluir todas, o ninguna.',
  'order-repeats': ({ procedure, order, numbers }) =>
    `${procedure}: el orden «${order}» repite ${listed(numbers)}. Dejar cada una una vez.`,
  'order-of-other-face': ({ procedure, order, numbers, face }) =>
    `${procedure}: el orden «${order}» tiene ${listed(numbers)}, que no están en ${face}. ` +
    'Quitarlas, o corregir su cara.',
  'order-unused': ({ procedure, order }) =>
    `${procedure}: ninguna pasada sigue el orden «${order}». Nombrarlo en una pasada, o quitarlo.`,
  'group-never-tightened': ({ group, face, count }) =>
    `${group}: ningún procedimiento aprieta las ${count} de ${face}. Ponerlas en un orden y una pasada.`,
  'number-twice': ({ number, face }) =>
    `${face}: dos fijaciones tienen el número ${number}. Dar a cada una el suyo, como en el dibujo.`,
  'value-outside-order': (facts) =>
    `${at(facts)}: se da un valor propio a ${listed(facts.numbers)}, que esta ` +
    'pasada no toca. Corregir las fijaciones, o el orden.',
  'recheck-outside-order': (facts) =>
    `${at(facts)}: se comprobarían ${listed(facts.numbers)}, que no están en el orden de la ` +
    'pasada. Corregir las fijaciones, o el orden.',
  'value-given-twice': (facts) =>
    `${at(facts)}: se dan dos valores propios a ${listed(facts.numbers)}. Dejar uno.`,

  // Cap by cap
  'cap-by-cap-without-caps': ({ procedure, face }) =>
    `${procedure}: va sombrerete por sombrerete, y ${face} no tiene sombreretes. Quitar eso, o corregir la cara.`,
  'cap-with-one-fastener': ({ procedure, cap, number }) =>
    `${procedure}: va sombrerete por sombrerete, y el sombrerete ${cap} lo sujeta solo ${number}. Añadir las demás de ese sombrerete, o corregir dónde ` +
    'están.',
  'cap-by-cap-repeats': (facts) =>
    `${at(facts)}: va sombrerete por sombrerete, así que no puede repasarlas todas hasta que ninguna gire. Dejar una de las dos cosas.`,
  'two-readings-at-once': (facts) =>
    `${at(facts)}: se leen a la vez una longitud y un par de giro. Hacer una operación de cada uno.`,
  'rise-above-most': ({ place, rise, most }) =>
    `${place}: el par de giro puede subir ${rise} de una vez, y ser ${most} como máximo. Mirar si están ` +
    'intercambiados.',

  // Passes
  'angle-without-torque': (facts) =>
    `${at(facts)}: se girarían por ángulo ${listed(facts.numbers)} sin haberse ` +
    'asentado ni apretado antes. Poner delante una pasada de par.',
  'angle-beyond-a-turn': (facts) =>
    `${at(facts)}: ${facts.angle} es más de una vuelta completa; el tornillo se rompe por el camino. Corregir el ángulo.`,
  'angle-missing': (facts) =>
    `${at(facts)}: un ángulo de 0° no gira nada. Indicar el ángulo, o quitar la pasada.`,
  'recheck-before-torque': (facts) =>
    `${at(facts)}: se comprobarían ${listed(facts.numbers)} antes de apretarlas a par. ` +
    'Poner la comprobación detrás de la pasada de par.',
  'stretch-without-length': (facts) =>
    `${at(facts)}: el alargamiento de ${listed(facts.numbers)} no tiene longitud con que compararse. ` +
    'Poner delante una pasada que mida la longitud antes de apretar.',
  'length-after-pull': (facts) =>
    `${at(facts)}: se medirían ${listed(facts.numbers)} ya apretadas, ` +
    'y por tanto en parte alargadas. Medir la longitud antes del primer par.',
  'stretch-large': (facts) =>
    `${at(facts)}: un alargamiento de ${facts.most} es el ${facts.percent} de los ${facts.grip} que ` +
    `aprieta el grupo ${facts.group}: más de lo que se alarga adrede ningún tornillo. Comprobar el valor y su unidad.`,
  'stretch-not-by-torque': ({ group, torque, longer, bound, tooShort, ...facts }) =>
    `${at(facts)}: calculado con su rosca, longitud de apriete y rozamiento, ${torque} alarga el grupo ` +
    `${group} ${tooShort ? 'como máximo' : 'como mínimo'} ${longer}, y el ${tooShort ? 'mínimo' : 'máximo'} ` +
    `pedido es ${bound}. Comprobar los pares, el alargamiento y la longitud de apriete.`,
  'torque-after-turn': (facts) =>
    `${at(facts)}: se apretarían a par ${listed(facts.numbers)} después de girarlas por ángulo: ` +
    'la llave salta enseguida, o las estira más. Comprobar el orden de las pasadas, o aflojarlas antes.',
  'torque-below-last': (facts) =>
    `${at(facts)}: ${facts.target} en ${listed(facts.numbers)} es menos que los ` +
    `${facts.last} que ya tienen, así que la llave salta enseguida. Comprobar los dos valores.`,
  'recheck-above-last': (facts) =>
    `${at(facts)}: la comprobación de ${listed(facts.numbers)} es a ${facts.target}, más que ` +
    `los ${facts.last} a los que se apretaron, así que girarán. Comprobar los dos valores.`,
  'left-loose': ({ procedure, numbers }) =>
    `${procedure}: quedan aflojadas ${listed(numbers)}. Añadir la pasada que las aprieta.`,
  'only-seated': ({ procedure, numbers }) =>
    `${procedure}: solo se asientan a mano, sin par, ${listed(numbers)}. Añadir la pasada que las aprieta.`,

  // Torque against proof load
  'torque-overload': ({ slip, ...facts }) =>
    `${at(facts)}: ${facts.torque} llevaría el grupo ${facts.group} (${thread(facts.thread)}, ` +
    `${facts.propertyClass}) a ${facts.preload} incluso con rozamiento alto; su carga de prueba es ${facts.proof}. ` +
    `Corregir el par, la rosca o la clase.${slipWords(slip)}`,
  'torque-likely-overload': ({ slip, ...facts }) =>
    `${at(facts)}: ${facts.torque} llevaría el grupo ${facts.group} (${thread(facts.thread)}, ` +
    `${facts.propertyClass}) a ${facts.preload} con rozamiento habitual; su carga de prueba es ${facts.proof}. ` +
    `Comprobar el valor, la rosca y la clase.${slipWords(slip)}`,
  'torque-clamps-nothing': ({ slip, ...facts }) =>
    `${at(facts)}: ${facts.torque}, el último par que recibe, lleva el grupo ${facts.group} (${thread(facts.thread)}, ` +
    `${facts.propertyClass}) a ${facts.preload} como máximo, de ${facts.proof}: casi sin fuerza de apriete. ` +
    `Comprobar el valor y su unidad.${slipWords(slip)}`,
  'turn-leaves-elastic-line': (facts) =>
    `${at(facts)}: calculado como elástico, ${facts.angle} lleva el grupo ${facts.group} a ` +
    `${facts.preload}, muy por encima del límite elástico (${facts.yieldLoad}; carga de prueba ${facts.proof}). Comprobar el ángulo, la longitud de apriete y la clase.`,
  'same-torque-for-small': (facts) =>
    `${at(facts)}: ${facts.small} recibe ${facts.torque}, como ${facts.large}, de rosca mayor. ` +
    'Comprobar si la rosca menor tiene un valor propio.',
  'tolerance-too-fine': (facts) =>
    `${at(facts)}: ±${facts.spread} de ${facts.torque} es más fino de lo que cumple cualquier llave. ` +
    'Comprobar los límites.',

  'no-usual-wrench': (facts) =>
    `${at(facts)}: casi ninguna llave marca ${facts.torque}. Comprobar el valor y su unidad.`,
}

function slipWords(slip: Slip | null): string {
  return slip === null
    ? ''
    : ` Si se quiso decir ${slip.meant}, no ${slip.written}, son ${slip.inNewtonMetres}.`
}

/** `3`, `3 y 5`, `3, 5 y otras 9`. */
function listed(numbers: readonly string[]): string {
  const shown = numbers.slice(0, 8)
  const more = numbers.length - shown.length
  return all(more > 0 ? [...shown, more === 1 ? 'otra 1' : `otras ${more}`] : shown)
}
