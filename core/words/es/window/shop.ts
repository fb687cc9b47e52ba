import type { Words } from '../../words.ts'
import { counted } from '../formats.ts'

export const shop: Words['shop'] = {
  title: 'Taller',
  thisBench: 'Nombre de este banco',
  keepName: 'Guardar el nombre',
  thisOne: 'este banco',
  bench: 'Banco',
  lastSeen: 'Visto por última vez',
  program: 'Programa',
  asOf: 'A fecha de',
  standing: 'Entre este banco y el taller',
  connection: {
    untried: () => 'Aún sin conexión.',
    open: ({ since }) => `Conectado${since === null ? '.' : ` desde ${since}.`}`,
    cut: ({ since }) => `Sin conexión${since === null ? '.' : ` desde ${since}.`}`,
  },
  notReached: ({ since }) => `Sin conexión${since === null ? '.' : ` desde ${since}.`}`,
  onlyHere:
    'Se muestra lo que tiene este banco: sus propios montajes y los de otros bancos tal como llegaron por última vez.',
  waiting: ({ entries, builds }) =>
    entries === 0
      ? 'Nada espera: todo lo confirmado aquí está en el archivo.'
      : `Aún no en el archivo: ${counted(entries, 'entrada', 'entradas')} de ${counted(builds, 'montaje', 'montajes')}. Todo está guardado aquí y se envía solo.`,
  refused: 'Montajes rechazados',
  benches: 'Bancos del taller',
  builds: 'Montajes del taller',
  find: 'Nombre, número de serie, motor, persona, pieza',
  findIt: 'Buscar',
  leave: 'Dejar el taller',
  isForked: 'continuado por separado en dos bancos',

  /** Whether all benches have people and wrenches in common. */
  lists: {
    title: 'Personas y llaves dinamométricas',
    people: {
      common: 'Personas: una lista para todos los bancos. Lo que se cambia aquí vale en todos.',
      own: 'Personas: este banco tiene su propia lista.',
    },
    wrenches: {
      common: 'Llaves dinamométricas: una lista para todos los bancos. Lo que se cambia aquí vale en todos.',
      own: 'Llaves dinamométricas: este banco tiene su propia lista.',
    },
    chosen: 'Lo elige el propietario del archivo, con «npm run shop -- lists».',
  },

  join: {
    title: 'Unirse a un taller',
    what: 'Los bancos de un taller comparten un archivo en PostgreSQL. Este banco lleva su propio registro como hasta ahora y sigue trabajando sin red; lo que se confirma aquí llega solo al archivo.',
    address: 'Dirección del archivo',
    example: 'postgres://bench@server/bedplate',
    password: 'Contraseña, si el archivo la pide',
    authority: 'Fichero de la autoridad que emitió el certificado del servidor, si es propia',
    kept: {
      'key-store': 'La contraseña se guarda en el almacén de claves de este sistema, y nunca se muestra.',
      file: 'La contraseña se guarda en un fichero que solo puede leer este usuario, porque aquí no hay almacén de claves utilizable, y nunca se muestra.',
      environment: 'La contraseña viene del entorno (PGPASSWORD), que precede a la que se escriba aquí.',
    },
    join: 'Unirse',
  },

  apart: {
    title: 'Continuado por separado en dos bancos',
    line: ({ number, name, entry, bench, own, counts }) =>
      `${number} ${name}: ${own === null ? 'aquí' : `en ${own}`} y en ${bench} desde la entrada ${entry}. ` +
      (counts === null
        ? 'Nadie ha decidido cuál vale.'
        : counts === 'here'
          ? `Vale lo registrado ${own === null ? 'aquí' : `en ${own}`}.`
          : `Vale lo registrado en ${bench}.`),
    look: 'Ver las dos líneas',
    own: ({ own }) => own ?? 'Este banco',
    which: '¿Qué línea vale?',
    hereCounts: ({ own }) => `Vale lo registrado ${own === null ? 'aquí' : `en ${own}`}`,
    thereCounts: ({ bench }) => `Vale lo registrado en ${bench}`,
    entries: 'Entradas desde la separación',
    entry: 'Entrada',
    onTheSheet: 'En qué difieren las dos hojas de montaje',
  },

  build: {
    title: 'Bancos',
    asOf: ({ at }) => `A fecha de ${at}.`,
    handOver: 'Entregar …',
    toWhich: '¿Qué banco continúa?',
    note: 'Lo que debe saber (puede quedar vacío)',
    doHandOver: ({ bench }) => `Entregar a ${bench}`,
    handedOver: ({ bench, note }) => `Entregado por ${bench}${note === '' ? '.' : `: ${note}`}`,
    noOther: 'Ningún otro banco se ha unido aún al taller.',
    takeOver: 'Tomarlo en este banco',
    whyTakeOver: '¿Por qué se toma? El banco que lo tiene se detiene al saberlo.',
    doTakeOver: 'Tomar',
    whySettle: '¿Por qué vale esta línea? La otra se conserva y no se continúa.',
  },

  wall: {
    title: 'Vista de pared',
    open: 'Vista de pared',
    none: 'Ningún montaje del taller está abierto.',
    step: ({ place, of }) => `${place}/${of}`,
    noStep: 'hecho',
    next: ({ fastener, pass }) => (fastener === null ? `pasada ${pass}` : `sigue ${fastener}`),
    problems: ({ openProblems }) => counted(openProblems, 'problema', 'problemas'),
    awaitsSecond: 'segunda persona',
    forked: 'dos líneas',
    paused: 'pausa',
  },
}
