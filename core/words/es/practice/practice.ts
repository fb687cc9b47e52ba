import type { Words } from '../../words.ts'
import { counted, listed, plain } from '../formats.ts'
import { namesOf } from '../halves.ts'
import { faultDrill } from './fault-drill.ts'
import { measureDrill } from './measure-drill.ts'
import { mirrorDrill } from './mirror-drill.ts'

const names: Words['practice']['names'] = {
  order: 'Orden',
  chart: 'Tabla',
  values: 'Valores y llave',
  angle: 'Ángulo',
  mirror: 'Espejo',
  measure: 'Medir',
  fault: 'Buscar el fallo',
}

const rounds = (count: number) => counted(count, 'ronda', 'rondas')
const errors = (count: number) => counted(count, 'error', 'errores')
const clock = (seconds: number) =>
  seconds < 60 ? `${Math.round(seconds)} s` : `${Math.floor(seconds / 60)} min ${Math.round(seconds % 60)} s`
const oClock = (hour: number) => (hour === 1 ? 'la 1' : `las ${hour}`)

export const practice: Words['practice'] = {
  title: 'Práctica',
  back: 'Volver a la práctica',
  banner: 'PRÁCTICA',
  engine: 'Motor',
  none: 'Este motor no tiene nada que practicar: ni pasadas ni tabla.',
  keptFor: ({ name }) => `Lo que practica ${name} se guarda en este banco.`,
  notKept: ({ name }) =>
    (name === '' ? 'No hay nadie en el banco' : `${name} no está en la lista de personas`) +
    ': las rondas se pueden hacer y no se guardan.',

  today: 'Hoy, unos diez minutos',
  nothingToday: 'Hecho por hoy.',
  todays: ({ engine, drill, minutes }) => `${names[drill]}: ${engine}, ${minutes} min`,
  drillsOf: ({ engine }) => `Ejercicios de ${engine}`,
  names,
  abouts: {
    order: 'El orden de una pasada, en el dibujo sin sus números.',
    chart: 'Los semicojinetes para marcas al azar, según la tabla impresa.',
    values: 'El par de una pasada, su unidad, la llave y su ajuste.',
    angle: 'Un giro a ojo, sin ver el sector.',
    mirror: 'Semicojinetes y números de fijación de un cárter invertido o girado.',
    measure: 'Galgas, hilo calibrado, micrómetros y alexómetro, leídos hasta la última marca.',
    fault: 'Un montaje terminado con una cosa mal, en dibujo y hoja.',
  },
  notOffered: {
    order: 'ninguna pasada recorre fijaciones',
    chart: 'no tiene tabla',
    values: 'ninguna pasada tiene par',
    angle: 'ninguna pasada gira por ángulo',
    mirror: 'solo tiene un sitio donde poner un semicojinete o buscar una fijación',
    measure: 'no hay nada que medir',
    fault: 'nada de lo que puede estar mal se ve en dibujo y hoja',
  },
  without: ({ drill, reason }) => `No en este motor: ${names[drill]}, porque ${reason}.`,
  begin: ({ drill }) => `Empezar ${names[drill]}`,
  never: 'Aún sin hacer.',
  standing: ({ rounds: done, faultless, dueAt }) => [
    `${rounds(done)}, ${faultless} sin errores. Otra vez el `,
    { whole: `${dueAt}.` },
  ],

  errors: 'Errores por posición',
  errorsShown: 'Marcado: errores en las diez últimas rondas. Relleno: preguntado, sin errores.',
  noErrors: 'Sin errores en las últimas rondas.',
  errorsAt: ({ errors: count, asked }) => `${errors(count)}, preguntado ${counted(asked, 'vez', 'veces')}`,

  minimum: 'Rondas sin errores de cada ejercicio antes de dirigir un montaje de este motor',
  noMinimum: 'ninguna',
  minimumBy:
    'Lo fija un mecánico de la lista de personas, con PIN si los mecánicos lo tienen. Se muestra al empezar un montaje y no se lo impide a nadie.',
  ready: {
    title: 'Quién está preparado para este motor',
    person: 'Persona',
    verdict: 'Mínimo',
    yes: 'alcanzado',
    notYet: 'aún no',
    meaning: 'Rondas sin errores, y el día de la última.',
  },
  missing: ({ name, least, missing }) =>
    `El taller pide ${rounds(least)} sin errores de cada ejercicio antes de dirigir un montaje de este motor. ` +
    `${name} lleva: ` +
    missing.map(({ drill, faultless }) => `${names[drill]}, ${faultless}`).join('; ') +
    '. El montaje se puede empezar de todos modos.',

  // On the drawing
  fastener: ({ where, letter, isPulled }) =>
    `Fijación, ${where}${letter === null ? '' : ` ${letter}`}: ${isPulled ? 'apretada' : 'sin apretar'}`,

  // In a drill
  soFar: ({ done, of }) => `${done} de ${of}`,
  right: 'Correcto.',
  wrong: 'Esta no.',
  question: 'Qué se pregunta',
  check: 'Comprobar',
  onward: 'Siguiente',

  order: {
    help: 'La siguiente se muestra tras',
    afterErrors: ({ errors: count }) => errors(count),
    tap: '¿Qué fijación es la siguiente? Tocarla.',
    pass: ({ procedure, cap, pass }) => [
      `${procedure}${cap === null ? '' : `, sombrerete ${cap}`}: `,
      { strong: pass },
    ],
    complete: 'Esta pasada está completa',
    whatNext: '¿Qué viene después?',
    done: 'El procedimiento está hecho',
    whole: ({ name, target }) => (target === null ? name : `${name}, ${target}`),
    mistakes: {
      'already-pulled': ({ number }) => `${number} ya está apretada en esta pasada.`,
      'not-in-pass': ({ number }) =>
        `${number} no está en esta pasada: solo recorre algunas de las fijaciones.`,
      'is-complete': 'Todas las de esta pasada están apretadas. Indicarlo.',
      'not-complete': ({ left }) =>
        `La pasada no está completa: faltan por apretar ${counted(left, 'fijación', 'fijaciones')}. Una fijación olvidada en una pasada se gira demasiado en la siguiente.`,
      'wrong-pass':
        'Antes va otra pasada. Las pasadas suben la carga por etapas, para que las caras cierren por igual.',
    },
    reasons: {
      'middle-first': ({ number }) =>
        `${number} aún no: este orden va del centro hacia fuera. Lo que queda atrapado en el centro ya no se puede aplanar.`,
      apart: ({ number }) =>
        `${number} aún no: está junto a la anterior. Las vecinas apretadas una tras otra se quitan carga.`,
      'as-given': ({ number }) => `${number} aún no: el orden de la ficha pasa antes por otro sitio.`,
    },
    consequence: ({ early, number, right, wrong }) =>
      `Con una junta en la unión y ${early} apretada ahora, ${number} quedaría con ${wrong} kN al final de la pasada, en vez de ${right} kN.`,
    hardlyAny:
      'En el modelo de esta unión, las cargas al final de la pasada apenas cambian; el orden vale de todos modos.',
    picture: 'Lo que cada fijación apretaría de más o de menos al final de la pasada, en kN',
    showsNext: ({ number }) => `La siguiente es ${number}, en azul.`,
  },

  chart: {
    marks: ({ position, housing, housingMark, journal, journalMark }) => [
      { strong: `${position}: ` },
      `${housing} `,
      { strong: housingMark },
      `, ${journal} `,
      { strong: journalMark },
    ],
    which: '¿Qué semicojinetes?',
    chart: ({ fit, position, split }) => `Tabla de ${fit}, ${position}: ${namesOf(split).join(' / ')}`,
    sides: ({ housing, journal }) => `${housing} ↓ ${journal} →`,
    cell: ({ upper, lower }) => `${upper} / ${lower}`,
    noCell: '–',
    wrongHalves: ({ halves }) => `No es lo que da la tabla para estas marcas: ${listed(halves)}.`,
    wouldBe: ({ clearance, allowed }) => `Estos semicojinetes dejarían ${clearance}; admisible: ${allowed}.`,
    chartLeaves: ({ clearance }) => `Los semicojinetes de la tabla dejan ${clearance}.`,
    noSizes: 'La ficha no da medidas para estos: decide solo la tabla.',
  },

  values: {
    wrenches: {
      small: 'Llave pequeña, 5 a 25 N·m',
      inch: 'Llave pequeña, 30 a 250 lbf·in',
      middle: 'Llave mediana, 20 a 110 N·m',
      foot: 'Llave mediana, 20 a 150 lbf·ft',
      large: 'Llave grande, 60 a 330 N·m',
      adapter: 'adaptador de pata de gallo de 60 mm',
    },
    practiceRack: 'El taller no ha anotado llaves: estas son para practicar.',
    asks: {
      value: ({ pass, number }) => `${pass}: ¿a cuánto se aprieta la fijación ${number}?`,
      unit: ({ torque, unit }) =>
        `Se piden ${torque}, y la llave tiene escala en ${unit}. ¿A cuánto se ajusta?`,
      wrench: ({ torque }) => `¿Cuál de estas sirve para ${torque}?`,
      setting: ({ setup, torque }) => `${setup}: ¿a cuánto se ajusta para ${torque} en la fijación?`,
    },
    pass: ({ procedure, pass, kind }) => `${procedure}, pasada ${pass}, ${kind}`,
    scale: ({ number, unit }) => `${number} ${unit}`,
    noneOfThem: 'Ninguna de estas',
    someFits: 'Una de estas sirve: comparar el valor con el alcance de cada una.',
    gives: ({ value, byValue, times, target }) =>
      `${value} daría en la fijación ${byValue}: ${times} veces los ${target} que se piden.`,
  },

  angle: {
    ask: ({ number, angle }) => [`Girar la fijación ${number} `, { strong: angle }, '.'],
    room: ({ room, grip }) =>
      room === null
        ? 'El mango no tiene obstáculos.'
        : `El mango tiene ${plain(room)}° de recorrido. Volver a agarrar con: ${grip}.`,
    hint: 'Arrastrar el pomo, o usar las flechas: 5° cada vez, 1° con Mayús.',
    by: ({ degrees }) => (degrees < 0 ? `↺ ${-degrees}°` : `↻ ${degrees}°`),
    grip: 'Volver a agarrar',
    here: 'Está girado',
    atEnd: 'El mango está al final de su recorrido.',
    handle: ({ clock: hour }) => `Mango hacia ${oClock(hour)}`,
    judged: ({ reached, off, least, most }) => `${reached}: ${off}. Admisible de ${least} a ${most}.`,
    off: ({ degrees }) =>
      degrees === 0 ? 'exacto al grado' : `${plain(Math.abs(degrees))}° de ${degrees > 0 ? 'más' : 'menos'}`,
    how: 'Girado',
    hows: { screen: 'aquí', own: 'con una llave propia' },
    ownWrench:
      'Poner un tornillo en un tornillo de banco, girarlo este ángulo a ojo y leerlo después con un transportador.',
    protractorReads: 'El transportador marca, en °',
  },

  mirror: mirrorDrill,

  fault: faultDrill,

  measure: measureDrill,
  dryRun: {
    name: 'Simulacro',
    about:
      'Un montaje entero de este motor en las pantallas reales, sin motor. No está en ninguna lista ni registro, y desaparece al cerrar o volver a cargar la ventana.',
    start: 'Empezar un simulacro',
    number: 'PRÁCTICA',
    build: 'Simulacro',
    nobody: 'Nadie',
    band: 'PRÁCTICA: aquí no se registra nada',
    end: 'Terminar el simulacro',
    howItWent: ({ engine }) => `Cómo fue el simulacro de ${engine}`,
    notFinished: 'Se terminó antes de acabar el montaje, así que no cuenta como ronda.',
    counted:
      'Un error es una respuesta rechazada, una lectura fuera de límites, un semicojinete distinto del de la tabla, y todo lo que se retiró o se repitió.',
  },

  result: {
    title: 'Hecho',
    faultless: 'Sin errores.',
    errors: ({ errors: count, asked }) => `${errors(count)} en ${counted(asked, 'pregunta', 'preguntas')}.`,
    took: ({ seconds, fastest }) =>
      `Duración: ${clock(seconds)}.${fastest === null ? '' : ` La más rápida sin errores hasta ahora: ${clock(fastest)}.`}`,
    speedLater: 'El tiempo cuenta cuando una ronda no tiene errores.',
    again: ({ dueAt }) => `Otra vez el ${dueAt}.`,
    another: 'Otra ronda',
  },
}
