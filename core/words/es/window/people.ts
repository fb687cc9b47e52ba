import type { Words } from '../../words.ts'
import { pairText } from '../halves.ts'

const flags = { under: 'insuficiente', over: 'demasiado', moved: 'ha girado', problem: 'problema' }
const roles = { mechanic: 'mecánico', apprentice: 'aprendiz' }

export const people: Words['people'] = {
  title: 'Personas',
  backToBuild: 'Volver al montaje',
  whatFor:
    'La persona del banco figura en cada entrada. Un nombre que no esté en la lista se puede escribir siempre. La ' +
    'lista sirve para elegir con un toque, para una tarjeta que escribe y para un PIN donde el taller lo quiera: un PIN mantiene ' +
    'honestas las entradas, no detiene a un ladrón.',
  apprentices:
    'El montaje de un aprendiz espera en ciertos pasos a que los revise un mecánico de esta lista. Como tarjeta vale ' +
    'cualquier lector que escriba: mientras se puede escribir una lectura, un número es una lectura; una tarjeta con letras antes ' +
    'del número es siempre una tarjeta.',
  whoChanges: 'Quién cambia la lista',
  mechanic: 'Mecánico',
  pin: 'PIN',
  change: ({ name }) => `Cambiar a ${name}`,
  remove: ({ name }) => `Quitar a ${name}`,
  add: 'Añadir una persona',
  removedStayNamed:
    'A quien se quita de la lista se le sigue nombrando en sus entradas. Nada de esta página forma parte del registro de un montaje.',
  roles,
  line: ({ role, hasBadge, hasPin }) =>
    `${roles[role]}${hasBadge ? ', tarjeta' : ''}${hasPin ? ', PIN' : ''}`,

  form: {
    new: 'Persona nueva',
    name: 'Nombre, como va en la hoja',
    role: 'Función',
    badge: 'Tarjeta:',
    hasBadge: 'tiene una',
    noBadge: 'ninguna',
    badgeGoes: 'se quitará',
    presentBadge: 'Presentar ahora la tarjeta …',
    teachBadge: 'Asignar una tarjeta',
    takeBadge: 'Quitar la tarjeta',
    badgeLikeReading:
      '! Esta tarjeta escribe algo que podría ser una lectura. Mientras se puede escribir una lectura, lo es: ahí, tocar antes el nombre ' +
      'en el banco y presentar después la tarjeta.',
    newPin: 'PIN nuevo, vacío para conservar el actual',
    firstPin: 'PIN, vacío para ninguno',
    takePin: 'Quitar el PIN',
    keep: 'Guardar',
  },

  choose: {
    who: '¿Quién está en el banco?',
    goOn: 'Continuar',
    somebodyElse: 'Otra persona',
    person: ({ role, asksForPin }) => `${roles[role]}${asksForPin ? ', PIN' : ''}`,
    anotherName: 'Otro nombre',
    takeName: 'Usar este nombre',
    people: 'Personas …',
  },

  second: {
    kicker: 'segunda persona',
    itIsRight: ({ name }) => `${name}: está bien`,
    sentBack: ({ name, reason }) => `Devuelto por ${name}: ${reason}. Repetirlo y llamar otra vez.`,
    did: ({ names }) =>
      `Hecho por ${names.join(', ')}. Otra persona lo revisa antes de seguir con el montaje.`,
    whatAgain: ({ name }) => `${name}: ¿qué hay que repetir?`,
    sendItBack: 'Devolverlo',
    sendBack: '! Devolver',
    firstWho: 'Elegir antes quién lo ha revisado.',
    whoLooks: '¿Quién lo revisa?',
    nobodyElse: ({ names }) =>
      `En la lista de personas no hay más mecánicos que ${names.join(', ')}. Añadir ahí a quien lo revise.`,
    people: 'Personas …',
    played: 'Segunda persona',
    play: 'Revisarlo como lo haría la segunda persona',
    again: 'Trabajar en ello otra vez',
  },

  lookAt: {
    marks: 'Leer otra vez las marcas en las piezas. Anotado:',
    mark: ({ position, mark }) => `${position} ${mark ?? 'borrada'}`,
    shells: 'Comparar con marcas, lecturas y las cajas de los semicojinetes. Elegido:',
    pair: ({ position, split, upper, lower }) =>
      `${position}: ${pairText({ split, upper: upper ?? '–', lower: lower ?? '–' })}`,
    halves: 'Mirar cada mitad en su apoyo. El dibujo muestra qué semicojinete va en cada sitio.',
    part: ({ name, tick }) => `${name}: ${tick}`,
    bead: 'Comparar el cordón con su recorrido en el dibujo.',
    fasteners: 'Mirar cada fijación en el dibujo y en el motor. Cada apriete está en la hoja.',
    noFlag: 'No hubo incidencias.',
    flag: ({ fastener, about, text, answer }) =>
      `! ${fastener === null ? '' : `Fijación ${fastener}: `}${text ?? flags[about]}. ` +
      `Respuesta: ${answer ?? 'ninguna'}`,
    checkedGood: ({ noted }) => `Respuesta: bien${noted.length > 0 ? `, ${noted.join('. ')}` : ''}`,
  },
}
