import type { Words } from '../../words.ts'
import type { Basis } from '../../en/bearings/shells.ts'
import { engineParts } from '../engine-parts.ts'
import { pairText } from '../halves.ts'
import { clearance } from './clearance.ts'
import { measuring } from './measuring.ts'
import { trayForm } from './tray-form.ts'

const { halves, standardSize } = engineParts

const bases = { marks: 'marcas', readings: 'lecturas', declared: 'declarado', measured: 'medido' }

/** Without an article, after a colon. */
function basisName(basis: Basis): string {
  return 'size' in basis ? `${basis.size ?? standardSize} (${bases[basis.by]})` : bases[basis.by]
}

export const shells: Words['shells'] = {
  take: 'Usar estos semicojinetes',
  allowedWhenNew: ({ least, most }) => `Holgura de aceite admisible en nuevo: ${least} a ${most}.`,
  without: ({ positions }) => `Aún sin semicojinetes: ${positions.join(', ')}.`,
  fromTray: 'De la bandeja.',
  toOrder: ({ lines }) =>
    'Por pedir: ' +
    lines
      .map(({ count, grade, undersize, half }) =>
        [`${count} ×`, grade, undersize, half === 'either' ? null : halves[half]].filter(Boolean).join(' '),
      )
      .join(', ') +
    '.',
  countTray: 'De la bandeja',
  countTrayAgain: 'Contar la bandeja de nuevo',
  orderAndLabels: 'Pedido y etiquetas',

  row: {
    marks: ({ housing, journal }) =>
      [housing, journal].map(({ name, mark }) => `${name.toLowerCase()} ${mark ?? '?'}`).join(', '),
    noShell: 'sin semicojinete propuesto',
    noSizes: 'sin medidas en la ficha',
    measured: 'medido',
    verdict: ({ verdict }) => `! ${clearance.verdicts[verdict]}`,
    differ: {
      declared: '! la medida declarada y las lecturas difieren',
      mark: '! la marca y las lecturas difieren',
    },
    outOfShape: '! fuera de forma',
    toOrder: ({ of }) => `por pedir: ${of.map((half) => halves[half]).join(', ')}`,
    pinned: 'elegido a mano',
  },

  pair: (pair) => pairText(pair),
  allowedPairs: ({ fromTray }) =>
    `Otras parejas admitidas, de fina a gruesa${fromTray ? '; lo elegido a mano sale de la bandeja o se pide' : ''}`,
  measure: ({ position }) => `Medir ${position}`,
  release: 'Volver a los semicojinetes propuestos',

  pin: {
    short: 'Elegir …',
    pin: ({ position, half }) => `Elegir a mano el semicojinete de ${position}, mitad ${halves[half]}`,
    half: ({ half, grade, undersize }) =>
      `${halves[half]}: ${grade}${undersize === null ? '' : `, ${undersize}`}.`,
    pinnedTo: ({ to }) => `Elegido a mano, ${to}:`,
    what: ({ half }) => `Semicojinete para la mitad ${halves[half]}`,
    whichever: ({ grade }) => `${grade}, cualquier semicojinete`,
    whyHalf: ({ what, half }) => `¿Por qué siempre ${what} en la mitad ${halves[half]}?`,
    whyPair: (pair) => `¿Por qué esta pareja: ${pairText(pair)}?`,
    pinAt: ({ position }) => `Usarlo en ${position}`,
    usualReasons: ['La clase propuesta no está en la estantería', 'Estaba montado antes y está bien'],
  },

  dispute: {
    by: (basis) => `Según ${basisName(basis)}:`,
    name: basisName,
    noShell: 'sin semicojinete',
    let: (basis) => `Usar ${basisName(basis)}`,
    decided: (basis) => `Decidido: ${basisName(basis)}.`,
    why: ({ basis, position }) => `¿Por qué usar ${basisName(basis)} en ${position}?`,
    usualReasons: {
      marks: ['El instrumento estaba mal ajustado', 'La pieza estaba sucia'],
      readings: ['Medido dos veces, igual', 'Se cambió la pieza'],
      declared: ['Medido en otro muñón', 'El instrumento estaba mal ajustado'],
      measured: ['Medido dos veces, igual', 'El cigüeñal se rectificó'],
    },
  },

  undersize: {
    question: 'A qué está rectificado el muñón',
    journal: 'Muñón:',
    everywhere: ({ fit }) => `todos los muñones de ${fit}`,
    walls: ({ undersize, walls }) =>
      `Semicojinetes de ${undersize} según lo impreso: ` +
      `${walls.map(({ grade, least, most }) => `${grade}, ${least} a ${most}`).join('; ')}.`,
  },

  clearance: {
    picture: ({ cold, hot }) =>
      `Holgura ${cold} entre sus límites${hot === null ? '' : `; en caliente ${hot}`}`,
    legend: ({ guarded, hot, serviceLimit }) =>
      `Recuadro: límites en nuevo${guarded ? ', rayado donde la incertidumbre los rebasa' : ''}; puntos: valor nominal. ` +
      `Línea fina: caso peor; gruesa: probable; trazo: nominal${hot ? '; a trazos: en caliente' : ''}` +
      `${serviceLimit ? '; línea a la derecha: límite de servicio' : ''}.`,
    worst: ({ worst, likely }) => `Caso peor ${worst}, probable ${likely}.`,
    fromReadings: ({ least, mean, greatest }) =>
      `De las lecturas: mínimo ${least}, media ${mean}, máximo ${greatest}.`,
    notSure:
      'No se conoce la incertidumbre de medida: cerca de los límites, estas lecturas no demuestran nada.',
    sureTo: ({ uncertainty, proved }) =>
      `Incertidumbre ± ${uncertainty}: demostrado dentro solo de ${proved}.`,
    hot: ({ at, clearance: hot }) => `En caliente, a ${at}: ${hot}.`,
    serviceLimit: ({ limit, wear }) => `Límite de servicio ${limit}: ${clearance.wear[wear]}.`,
  },

  measuring,
  tray: trayForm,
}
