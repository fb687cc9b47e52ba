import type { Words } from '../../words.ts'
import type { OfAction, OfPlace } from '../../en/tightening/run.ts'
import { clock } from '../../formats/index.ts'
import { passes } from './passes.ts'
import { pullExplained } from './pull-explained.ts'
import { turnByAngle } from './turn-by-angle.ts'
import { wrenchForPull } from './wrench-for-pull.ts'

/** In front of what is confirmed of it: `7: asentada`. */
const who = ({ number }: OfAction) => (number === null ? '' : `${number}: `)
const first = (text: string, { number }: OfAction) =>
  number === null ? text.charAt(0).toUpperCase() + text.slice(1) : text
const passAndKind = ({ pass, kind }: OfPlace) => `pasada ${pass}, ${passes.kinds[kind]}`

const cap = ({ cap: name }: { readonly cap: string }) => `sombrerete ${name}`

export const run: Words['run'] = {
  heading: ({ cap: name, pass, passes: all, kind, step, ownOrder }) =>
    `${name === null ? '' : `${cap({ cap: name })}, `}pasada ${pass} de ${all}, ${passes.kinds[kind]}` +
    `${step === null ? '' : `, ${passes.step(step)}`}${ownOrder ? ', orden propio' : ''}`,
  cap,
  orderOfCap: ({ cap: name }) => `Fijaciones del sombrerete ${name}`,
  passes: 'Pasadas',
  pulled: ({ pulled, planned }) => `${pulled} de ${planned}`,
  pulledInPass: ({ pulled, planned }) => `${pulled} de ${planned} en esta pasada`,
  orderOfPass: 'Orden de esta pasada',
  gap: 'abertura',

  // What the main button says
  confirm: {
    backToPull: 'Volver al apriete',
    useOrder: 'Usar este orden …',
    start: ({ procedure }) => `Empezar: ${procedure}`,
    areNew: ({ group }) => `Todos nuevos: ${group}`,
    swing: ({ swing, swings, angle }) => `Tramo ${swing} de ${swings}: ${angle}`,
    newIn: ({ number }) => `${number}: nueva montada`,
    reads: (facts) => `${who(facts)}${first('lectura', facts)} ${facts.reading}`,
    writeDown: ({ number }) => (number === null ? 'Anotar lo que marca' : `Anotar la medida de ${number}`),
    seated: (facts) => `${who(facts)}${first('asentada', facts)}`,
    loose: (facts) => `${who(facts)}${first('aflojada', facts)}`,
    done: 'Hecho',
    holds: (facts) => `${who(facts)}${first('aguanta', facts)} ${facts.target}`,
    turned: (facts) => `${who(facts)}${first('girada', facts)} ${facts.target}`,
    at: (facts) => `${who(facts)}${first('apretada', facts)} a ${facts.target}`,
    moved: 'Ha girado',
  },

  // What is next
  next: 'Siguiente',
  usualLimits: 'La ficha no da límites: los habituales.',
  measure: {
    gap: 'Medir la abertura de la cara de unión',
    stretch: 'Medir de nuevo su longitud',
    tightenOn: 'Seguir apretando hasta el alargamiento pedido',
    lengthBefore: 'Medir su longitud antes del apriete',
  },
  seatByHand: 'A mano, hasta que asiente',
  seatByWrench: 'Con llave, hasta que asiente',
  loosenIt: 'Aflojarla',
  longerBy: 'alargada',
  readingIn: ({ unit, onScale }) => `Lectura en ${unit}${onScale ? ', como la muestra la escala' : ''}`,
  torqueThen: ({ unit, onScale }) =>
    `Su par en ese punto en ${unit}${onScale ? ', como lo muestra la escala' : ''}`,
  prevailing: {
    included: ({ most }) => `Par de autofrenado hasta ${most}, y su par lo incluye: no sumar nada.`,
    notSaid: ({ most }) =>
      `Par de autofrenado hasta ${most}. La ficha no dice si su par lo incluye: no sumar nada.`,
    read: ({ unit }) => `Par de autofrenado al enroscarla, en ${unit}`,
    readFirst: ({ most }) =>
      `Como máximo ${most}. Leerlo antes de que la fijación asiente, con una llave sin adaptador: su par no lo incluye.`,
    onTop: ({ running, target, least, most, isRange }) =>
      isRange
        ? [
            `Par de autofrenado ${running}, que se suma: `,
            { strong: `${least} a ${most}` },
            ' en la fijación.',
          ]
        : [
            `Par de autofrenado ${running}, que se suma: apretar a `,
            { strong: target },
            ` (${least} a ${most}).`,
          ],
  },
  asScaleShows: 'como lo muestra la llave',
  unit: 'Unidad',
  asGaugeShows: 'como en el instrumento',
  typeOrConfirm: 'o confirmar',
  doubt: {
    again: 'Medir de nuevo',
    sure: ({ typed }) => `Es correcto: anotar ${typed}`,
  },
  screenMayDarken: 'La pantalla puede apagarse: el sistema no la mantiene encendida.',
  answerFirst: 'Responder antes a la pregunta de arriba, o cancelarla.',
  orderNotMade: 'El orden aún no está hecho: nombrar cada fijación una vez, o cancelarlo.',
  unasked: {
    sent: ({ sent }) => `El instrumento envió ${sent} cuando nada pedía una lectura. Se conserva.`,
    use: 'Usarla aquí',
    drop: 'Descartarla',
    which: 'Llegó una segunda lectura antes de confirmar la primera. ¿Cuál vale?',
    counts: ({ sent }) => `Vale ${sent}`,
    dropped: {
      'broken-off':
        'El instrumento se cortó a media lectura. Lo enviado se ha descartado: enviarla de nuevo.',
      crossed: 'Dos instrumentos enviaron a la vez. Lo enviado se ha descartado: enviar uno tras otro.',
    },
  },

  // Before the start, while paused, at the end
  benchCard: 'Ficha de banco',
  clampMap: 'Mapa de apriete',
  onceOnly: ({ group }) => `De un solo uso: ${group}. Montar nuevos y tirar los viejos.`,
  paused: ({ reason }) => `En pausa${reason === '' ? '' : `: ${reason}`}.`,
  allDone: '✓ Todas las pasadas hechas y todas las incidencias respondidas.',
  problem: '! Problema',
  pause: 'Pausa',

  pauseForm: {
    why: '¿Por qué la pausa? (opcional)',
    pause: 'Parar aquí',
    usualReasons: ['Teléfono', 'Fin de la jornada', 'A la espera de una pieza'],
  },
  problemForm: {
    what: ({ number }) => `¿Cuál es el problema${number === null ? '' : ` en la fijación ${number}`}?`,
    note: 'Anotar el problema',
  },
  ownOrderForm: {
    why: '¿Por qué este orden y no el del fabricante?',
    start: 'Empezar en este orden',
    usualReasons: [
      'El orden del fabricante no es accesible',
      'Por indicación del jefe de taller',
      'Para practicar',
    ],
  },

  takeBack: {
    offer: ({ number }) => `Retirar ${number ?? 'la operación'}`,
    why: ({ number }) =>
      `Retirar ${number === null ? 'la última operación' : `la fijación ${number}`}: ¿por qué?`,
    takeBack: 'Retirar',
    mistyped: 'La lectura se escribió mal',
    usualReasons: ['Pulsado por error', 'Llave mal ajustada', 'No es seguro que saltara la llave'],
    wasTurned: ({ number, read }) =>
      `¿Se giró la fijación ${number}?${read === null ? '' : ` Se leyó ${read}.`}`,
    sayFirst: 'Indicar antes si se giró.',
    notTurned: 'No, se confirmó sin girarla …',
    turned: 'Sí: hay que empezarla de nuevo …',
    whyNotTurned: ({ number }) => `Retirar la fijación ${number}, que no se giró: ¿por qué?`,
    usualReasonsNotTurned: ['Pulsado por error', 'Pulsado antes de girar', 'Se giró otra fijación'],
    staysTurned: ({ number }) =>
      `Lo girado, girado queda. Aflojar ${number} del todo: lo apretado en ella ya no vale, y se empieza ` +
      'de nuevo por su primera pasada.',
    usualReasonsTurned: ['No es seguro cuánto se giró', 'Llave mal ajustada'],
  },

  loosen: {
    offer: 'Aflojarla y empezarla de nuevo …',
    whatHappens:
      'Aflojarla del todo. Lo apretado en ella ya no vale, y se empieza de nuevo por su primera pasada.',
    why: ({ number }) => `Aflojar ${number} y empezarla de nuevo: ¿por qué?`,
    usualReasons: ['Dudas sobre sus aprietes', 'Tiene que salir otra vez'],
  },

  picked: {
    title: ({ number, where }) => `Fijación ${number}: ${where}`,
    notItsTurn: ({ target, ...place }) =>
      `No le toca. Lo que tiene pendiente: ${passAndKind(place)}${target === null ? '' : `, ${target}`}.`,
    why: 'Apretarla ahora, antes de que le toque: ¿por qué?',
    isPulled: ({ number }) => `Fijación ${number}: apretada`,
    usualReasons: ['A la siguiente aún no se llega', 'Por indicación del jefe de taller'],
    nothingLeft: '✓ En este procedimiento no le queda nada por hacer.',
    back: 'Volver a la siguiente',
  },

  flag: {
    whatWasDone: '¿Qué se ha hecho?',
    note: 'Anotar lo hecho',
    usualAnswers: {
      under: ['Apretada de nuevo hasta saltar la llave'],
      over: ['Arreglado y medido de nuevo'],
      moved: ['Apretada de nuevo al valor completo', 'Cambiada por una nueva'],
      problem: ['Arreglado', 'Pieza cambiada'],
    },
    answerLater: 'Responder después (hasta entonces no se cierra)',
    later: 'Por responder antes del final',
    answerNow: 'Responder ahora',
    measureAgain: ({ pass }) => `Todas aflojadas: medir de nuevo desde la pasada ${pass}`,
    gapOut:
      'Aflojar todas las fijaciones de la unión, empezando por la última. Buscar lo que la mantiene abierta, asentarlas de nuevo y volver a medir la abertura.',
  },

  readAgain: {
    offer: 'Lectura errónea: leer de nuevo …',
    touchNothing: ({ number }) =>
      `Sin tocar nada, leer de nuevo${number === null ? '' : ` la fijación ${number}`}. Las dos lecturas quedan en el registro.`,
    turnedAfter: ({ degrees }) => `Se lee lo girado después de los primeros ${degrees}°.`,
    reads: ({ unit }) => `Lectura, en ${unit}`,
    torque: ({ unit }) => `Su par, en ${unit}, si se leyó mal (vacío: como estaba)`,
    why: '¿Por qué se lee de nuevo?',
    usualReason: 'La primera lectura era errónea',
    note: 'Anotar la nueva lectura',
  },

  replace: {
    stretched:
      'Por la carga calculada se ha estirado más allá de la carga de prueba, y desenroscarla no lo deshace.',
    pastMost: 'Superó su límite máximo: hay que cambiarla.',
    onceOnly: 'Es de un solo uso.',
    whatToDo: ({ number }) => `Qué hacer con la fijación ${number}`,
    loosen: ({ number }) => `Aflojar ${number} del todo.`,
    fitNew: 'Montar una nueva y tirar la vieja.',
    beginAgain: ({ number }) =>
      `Empezar ${number} de nuevo desde la pasada 1. Lo apretado en ella ya no vale.`,
  },

  wait: {
    title: 'Tiempo de espera',
    left: ({ seconds }) => `Faltan ${clock(seconds)}`,
    over: '✓ La espera ha terminado.',
    goOnBefore: 'Continuar antes de que acabe …',
    why: '¿Por qué se acorta la espera?',
    shorten: 'Continuar ahora',
    usualReasons: ['Ya se esperó en otro sitio', 'Por indicación del jefe de taller'],
  },

  overTime: {
    goOn: 'Cerrar la unión de todos modos …',
    why: 'El tiempo abierto del sellador ha vencido. ¿Por qué se cierra la unión de todos modos?',
    closed: 'Apretar con este motivo',
    usualReasons: ['Sellador revisado, aún húmedo', 'El fabricante del sellador permite más'],
  },

  restart: {
    offer: 'Empezar de nuevo …',
    offerInstead: 'O empezar de nuevo …',
    whole:
      'Aflojar todas las fijaciones, empezando por la última. Después empezar de nuevo por la primera pasada.',
    opensJoint: ({ steps }) =>
      `La unión se abre y su sellador no sella dos veces. Se deshace con ello: ${steps.join(', ')}. Limpiar la unión y aplicar un cordón nuevo.`,
    from: ({ pass }) => `Lo apretado desde la pasada ${pass} ya no vale, y se aprieta de nuevo.`,
    beginWith: 'Empezar por',
    pass: passAndKind,
    why: 'Empezar de nuevo: ¿por qué?',
    beginAgain: ({ pass }) => `Empezar de nuevo por la pasada ${pass}`,
    usualReasons: [
      'Sellador abierto demasiado tiempo',
      'Se interrumpió la pasada',
      'La pieza tiene que salir otra vez',
    ],
  },

  angle: turnByAngle,
  wrench: wrenchForPull,
  explained: pullExplained,
}
