import type { AmountText } from '../../amount.ts'
import type {
  StretchedAt,
  tighteningWords as english,
  TooStiff,
  Turned,
} from '../../en/problems/tightening.ts'
import { listed } from '../formats.ts'
import { clock } from '../../formats/index.ts'
import { turningLimits } from '../steps/turning.ts'
import { reasonText } from './reason-for.ts'

const scales = { angle: 'un ángulo en °', length: 'una longitud', torque: 'un par' }

const lengthsBeside = {
  itself: 'antes del apriete se leyó',
  others: 'las demás de su tipo están en torno a',
  grip: 'lo que aprieta mide',
}

const the = (fastener: string | null) =>
  fastener === null ? 'La operación entre dos pasadas' : `Fijación ${fastener}`
const inUnit = (otherUnit: string | null) =>
  otherUnit === null ? '' : ` En ${otherUnit} sería correcto: mirar la unidad de la escala de la llave.`

const outside = (
  fastener: string | null,
  read: string,
  limits: AmountText,
  otherUnit: string | null,
  verdict: 'insuficiente' | 'demasiado',
) => `${the(fastener)}: ${read}, admisible ${limits}: ${verdict}.${inUnit(otherUnit)}`

const fromFirstPass = 'y empezarla de nuevo por su primera pasada.'
const newOne = 'montar una nueva y empezar la nueva por su primera pasada.'

const stretchedAt = (facts: StretchedAt) =>
  `${the(facts.fastener)}: ${facts.stretch} más larga (admisible ${facts.limits}) a ${facts.torque} (admisible ` +
  `${facts.torqueLimits}): ${facts.tooMuch ? 'no apretarla más' : 'ha cedido con demasiada facilidad'}.`

const turned = ({ cap, read, limits }: Turned) =>
  `${cap === null ? 'Girar el cigüeñal' : `Tras el sombrerete ${cap}, girar el cigüeñal`} requiere ${read}, admisible ${turningLimits(limits)}`

const lookAt = ({ lookAt: found }: TooStiff) =>
  found === null
    ? 'Aflojar un sombrerete tras otro y girar el cigüeñal cada vez: hay que mirar el que lo libera, sus semicojinetes, su aceite, ' +
      'el número y el sentido del sombrerete. Después apretarlo de nuevo y girar otra vez.'
    : `Donde más subió fue con el sombrerete ${found.cap}: aflojar ${listed(found.fasteners)}, mirar sus semicojinetes, su aceite, el número y el ` +
      'sentido del sombrerete, apretarlo de nuevo desde su primera pasada y girar otra vez.'

export const tighteningWords: typeof english = {
  'procedure-unknown': ({ procedure }) =>
    `Este motor no tiene el procedimiento «${procedure}». Elegir uno de sus pasos.`,
  'run-started-already': ({ name }) => `«${name}» ya está en marcha. Continuar donde está.`,
  'run-not-started': ({ name }) => `«${name}» no se ha empezado. Empezarlo antes.`,
  'run-paused': ({ name }) => `«${name}» está en pausa. Reanudarlo antes de apretar o retirar.`,
  'run-not-paused': ({ name }) => `«${name}» no está en pausa.`,
  'run-done': ({ name }) => `«${name}» está hecho. No queda nada que poner en pausa.`,
  'pass-unknown': ({ pass, passes, name }) =>
    `«${name}» tiene ${passes} pasadas, y ninguna pasada ${pass}. Apretar lo que el dibujo muestra como siguiente.`,
  'fastener-not-in-pass': ({ fastener, pass, name }) =>
    `${the(fastener)}: no está en la pasada ${pass} de «${name}». Apretar lo que el dibujo muestra como siguiente.`,
  'fastener-not-in-procedure': ({ fastener, name }) =>
    `${the(fastener)}: no es de «${name}». Anotar el problema en una que lo sea, o en ninguna.`,
  'pulled-already': ({ fastener, pass }) =>
    `${the(fastener)}: ya está hecha en la pasada ${pass}. Si fue un error, retirarla antes.`,
  'earlier-pass-first': ({ fastener, earlier, pass }) =>
    `La fijación ${fastener} no ha hecho la pasada ${earlier}. Apretarla ahí antes de la pasada ${pass}.`,
  'not-its-turn': ({ fastener, next, pass }) =>
    `${the(fastener)}: no le toca. Toca ${next === null ? 'una operación' : `la fijación ${next}`}, pasada ${pass}.` +
    ' Para adelantarla, indicar el motivo.',
  'declare-new-first': ({ group }) =>
    `De un solo uso: ${group}. Confirmar que todos son nuevos antes del primer apriete.`,
  'declared-already': ({ group }) => `Ya consta como nuevo: ${group}.`,
  'group-not-in-procedure': ({ group, name }) =>
    `«${group}» no se aprieta en «${name}». Confirmar como nuevo solo lo que se aprieta.`,
  'order-unknown': ({ order, name }) => `«${name}» no tiene el orden «${order}». Elegir uno de los suyos.`,
  'order-number-unknown': ({ typed, numbers }) =>
    `No hay ninguna fijación «${typed}» en este orden. Las que tiene son ${numbers.join(', ')}.`,
  'order-number-twice': ({ fastener }) =>
    `La fijación ${fastener} figura dos veces en el orden. Cada una se aprieta una vez por pasada: quitar una de las dos.`,
  'order-numbers-missing': ({ numbers }) =>
    `Faltan en el orden: ${numbers.join(', ')}. Cada fijación se aprieta una vez por pasada.`,
  'reading-of-other-kind': ({ wanted, unit }) =>
    `Esta pasada pide ${scales[wanted]}, y la lectura está en ${unit}. Leer la otra escala.`,
  'reading-not-asked': ({ fastener }) =>
    `${the(fastener)}: en esta pasada no hay nada que leer. Confirmar sin lectura.`,
  'reading-missing': ({ fastener }) =>
    `${fastener === null ? 'Aquí se mide' : `La fijación ${fastener} se mide`}. Anotar lo que marca el instrumento.`,
  'length-far-off': ({ fastener, read, beside, of }) =>
    `${the(fastener)}: lectura ${read}, y ${lengthsBeside[of]} ${beside}. ` +
    'Mirar la coma decimal y la unidad, y medir de nuevo.',
  'length-missing': ({ fastener }) =>
    `${the(fastener)}: no se midió antes del apriete, así que no se sabe cuánto se ha alargado. Aflojarla y empezarla de nuevo.`,
  'torque-missing': ({ fastener }) =>
    `${the(fastener)}: se aprieta hasta cierto alargamiento. Anotar también su par.`,
  'running-torque-missing': ({ fastener }) =>
    `${the(fastener)}: su par de autofrenado se suma a su par de apriete. Leerlo antes de que asiente, y anotarlo.`,
  'running-torque-high': ({ fastener, read, most }) =>
    `${the(fastener)}: par de autofrenado ${read}, y se admite como máximo ${most}. No se suma nada: ` +
    'desenroscarla, mirar las dos roscas y leer de nuevo antes de que asiente.',
  'wait-not-over': ({ minutes, seconds }) =>
    `Esperar ${minutes} min antes de la pasada siguiente: quedan ${clock(seconds)}. Para continuar antes, indicar el motivo.`,
  'fastener-not-pulled': ({ fastener }) =>
    `La fijación ${fastener} no se ha apretado: no hay nada que aflojar.`,
  'loosen-first': ({ fastener }) =>
    `La fijación ${fastener} sigue apretada. Aflojarla antes y después montar la nueva.`,
  'restart-after-angle': ({ pass, name }) =>
    `«${name}» no puede empezar de nuevo en la pasada ${pass}: desde entonces se giraron fijaciones por ángulo o se apretaron por alargamiento, y se estirarían dos veces. ` +
    'Aflojarlas todas y empezar por la pasada 1.',
  'nothing-to-restart': ({ pass, name }) =>
    `Nada de «${name}» se apretó en la pasada ${pass} ni después. Continuar donde está.`,
  'moved-outside-recheck': ({ fastener }) =>
    `${the(fastener)}: no se está comprobando, así que debe girar. Confirmar, o anotar un problema.`,
  'nothing-to-take-back': () => 'No se ha apretado nada: no hay nada que retirar.',
  'not-the-last-pull': ({ last, pass }) =>
    `Solo se puede retirar el último apriete: ${last === null ? 'la operación' : `la fijación ${last}`} en la pasada ${pass}. ` +
    'Retirar antes ese, o anotar un problema.',
  'flag-not-open': ({ flag }) => `La incidencia ${flag} no espera respuesta.`,
  'reason-missing': ({ reasonFor }) => `Indicar, al menos con una palabra, ${reasonText(reasonFor)}.`,
  'reading-under': ({ fastener, read, limits, otherUnit }) =>
    `${outside(fastener, read, limits, otherUnit, 'insuficiente')} Retirarlo y apretar de nuevo, o indicar ` +
    'qué se ha hecho.',
  'turn-short': ({ fastener, read, limits, left, from, to }) =>
    `${the(fastener)}: girada ${read}, admisible ${limits}: insuficiente. Dejarla donde está y seguir girando ` +
    `${left} (${from} a ${to}).`,
  'length-under': ({ fastener, read, limits, otherUnit }) =>
    `${fastener === null ? 'Lo medido' : `Fijación ${fastener}`}: ${read}, admisible ${limits}: ` +
    `insuficiente.${inUnit(otherUnit)} Leer de nuevo, o indicar qué se ha hecho al respecto.`,
  'stretch-short': ({ fastener, stretch, torque, limits, mostTorque }) =>
    `${the(fastener)}: ${stretch} más larga a ${torque}, admisible ${limits}: insuficiente. Dejarla ` +
    `donde está, seguir apretando hasta ${mostTorque} como máximo y medir de nuevo.`,
  'stretch-too-long': ({ fastener, stretch, torque, limits }) =>
    `${the(fastener)}: ${stretch} más larga a ${torque}, admisible ${limits}: demasiado. Aflojarla, ${newOne}`,
  'stretch-torque': (facts) =>
    `${stretchedAt(facts)} Aflojarla del todo, mirar rosca, cabeza y aceite, ${fromFirstPass}`,
  'stretch-torque-replace': (facts) =>
    `${stretchedAt(facts)} Aflojarla, mirar rosca, cabeza y aceite, ${newOne}`,
  'reading-over-begin-again': ({ fastener, read, limits, otherUnit }) =>
    `${outside(fastener, read, limits, otherUnit, 'demasiado')} Aflojarla del todo ${fromFirstPass}`,
  'reading-over-replace': ({ fastener, read, limits, otherUnit }) =>
    `${outside(fastener, read, limits, otherUnit, 'demasiado')} Aflojarla, ${newOne}`,
  'must-be-replaced': ({ fastener }) =>
    `La fijación ${fastener} superó su límite máximo. Aflojarla, montar una nueva y empezar la nueva por su ` +
    'primera pasada; o leer de nuevo, si la lectura era errónea.',
  'must-begin-again': ({ fastener }) =>
    `La fijación ${fastener} superó su límite máximo. Aflojarla del todo y empezarla de nuevo por su primera pasada; o leer ` +
    'de nuevo, si la lectura era errónea.',
  'turn-on-first': ({ fastener }) =>
    `La fijación ${fastener} no se ha girado lo suficiente. Seguir girando desde donde está; o leer de nuevo, si la lectura ` +
    'era errónea.',
  'pull-on-first': ({ fastener }) =>
    `La fijación ${fastener} aún no se ha alargado lo suficiente. Seguir apretando desde donde está y medir de nuevo; o leer de nuevo, ` +
    'si la lectura era errónea.',
  'used-once-already': ({ fastener }) =>
    `La fijación ${fastener} es de un solo uso, y ya se ha apretado y aflojado. Montar una nueva antes de apretar.`,
  'turn-not-taken-back': ({ fastener }) =>
    `Lo girado, girado queda: lo hecho en la fijación ${fastener} no se puede retirar aquí. Si no se giró en absoluto, ` +
    'indicarlo. Si se giró, aflojarla y empezarla de nuevo.',
  'not-flagged-reading': ({ pull }) =>
    `El apriete ${pull} no tiene ninguna lectura que espere respuesta. Solo una así se lee de nuevo.`,
  'arm-not-above-zero': ({ typed }) =>
    `La palanca mide «${typed}». Medir del centro del cigüeñal a donde tira el dinamómetro.`,
  'turning-over': (facts) =>
    `${turned(facts)}: demasiado. El manual del fabricante tiene prioridad. ${lookAt(facts)}`,
  'turning-under': (facts) =>
    `${turned(facts)}: insuficiente. Mirar si giraron juntos el cigüeñal y el instrumento y si está todo montado, ` +
    'y leer de nuevo; o indicar qué se ha hecho al respecto.',
  'reading-over': ({ fastener, read, limits, otherUnit }) =>
    `${outside(fastener, read, limits, otherUnit, 'demasiado')} Indicar qué se ha hecho al respecto.`,
  'fastener-moved': ({ fastener }) =>
    `${the(fastener)}: giró en la comprobación: había perdido carga. Indicar qué se ha hecho al respecto.`,
  'problem-noted': ({ fastener, text }) => `${fastener === null ? '' : `Fijación ${fastener}: `}${text}`,
}
