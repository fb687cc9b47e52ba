import type { Words } from '../../words.ts'

export const engines: Words['engines'] = {
  program: 'Bedplate',
  purpose: 'Semicojinetes, tornillos y registro para la parte baja de un motor.',
  wrenches: 'Llaves',
  people: 'Personas',
  otherPages: 'Otras páginas',
  record: 'Registro y copias',
  onTheBench: 'En el banco',
  noBuilds: 'Aún nada. Elegir un motor para empezar un montaje.',
  sample: {
    offer:
      'O dar antes una vuelta por un montaje de demostración. Uno está a medio hacer: sus semicojinetes están elegidos y montados, y sus tornillos de biela, ' +
      'en la última pasada. Otro está terminado: ver su hoja, su mapa de apriete y su línea en el archivo. ' +
      'Los dos quedan en el registro de este banco, marcados como demo, y se pueden anular como cualquier otro.',
    take: { 'half-way': 'Probarlo', finished: 'Ver uno terminado' },
    offerGuided:
      'O montar un motor de demostración desde el primer paso, con una nota breve junto a cada uno.',
    beginGuided: 'Empezar un primer montaje guiado',
    guided: 'Demo: primer montaje guiado',
    name: 'Demo: transbordador, motor de babor',
    machinist: 'Mara Holt (demo)',
    mechanic: 'Jonas Reet (demo)',
    problem: 'Rayas bajo la cabeza de R4',
    answer: 'Superficie repasada con una piedra',
    whole: {
      name: 'Demo: riego, bomba 3',
      problem: 'La rosca de 5 iba áspera a mano',
      answer: 'Sacado, rosca del bloque repasada, tornillo aceitado de nuevo',
      withoutPhoto: 'Demo: no había nadie para hacer una',
    },
  },
  buildLine: ({ engine, demo, serial }) =>
    `${engine}${demo ? ', demo' : ''}${serial ? ` · n.º de serie ${serial}` : ''}`,
  lastEntry: ({ at }) => `última entrada ${at}`,
  standing: {
    step: ({ place, of, name }) => `Paso ${place} de ${of} · ${name}`,
    allStepsDone: 'Todos los pasos hechos, aún sin cerrar',
    awaitsSecond: 'espera a una segunda persona',
    next: ({ fastener, pass, passes }) =>
      `${fastener === null ? '' : `siguiente ${fastener}, `}pasada ${pass} de ${passes}`,
    paused: ({ reason }) => (reason ? `En pausa: ${reason}` : 'En pausa'),
    openProblems: ({ problems }) =>
      problems === 1 ? '1 incidencia por responder' : `${problems} incidencias por responder`,
  },
  startOn: 'Empezar con un motor',
  demo: 'demo',
  cannotBeBuilt: 'No se puede montar:',
  overruled:
    'El manual vigente del fabricante, las normas locales y una persona cualificada están por encima de este programa. Los motores de demostración son ' +
    'inventados: no montar nunca un motor real con uno de ellos.',

  newBuildOf: ({ engine }) => `Montaje nuevo de ${engine}`,
  buildName: 'Nombre de este montaje',
  buildNameExample: 'por ejemplo: Bomba 4, segunda reparación',
  serial: 'Número de serie, si lo tiene',
  person: 'Quién está en el banco',
  personExample: 'nombre, como va en la hoja',
  listOfPeople: 'De la lista de personas',
  apprentice: 'Lo monta un aprendiz: ciertos pasos requieren una segunda persona',
  lookedAt: ({ steps }) => `Los revisa un mecánico de la lista: ${steps.join(', ')}.`,
  noneLookedAt: 'La ficha de este motor no marca ningún paso para una segunda persona.',
  doubtful: 'Dudoso en esta ficha:',
  start: 'Empezar este montaje',
}
