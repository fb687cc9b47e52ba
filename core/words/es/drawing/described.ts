import type { Words } from '../../words.ts'
import type { Measured } from '../../en/drawing/described.ts'
import { engineParts } from '../engine-parts.ts'
import { counted } from '../formats.ts'
import { patterns } from '../window/parts.ts'

const sizes = ({ least, most }: Measured) => (most === null ? least : `${least} a ${most}`)

export const described: Words['described'] = {
  // A bearing and its shells
  half: ({ bearing, position, half }) =>
    `${engineParts.bearings[bearing]} ${position}, mitad ${engineParts.halves[half]}`,
  notChosen: 'Semicojinete aún sin elegir',
  shell: ({ isChosen, grade, undersize, pattern }) =>
    `${isChosen ? 'Clase' : 'Propuesto: clase'} ${grade}${undersize === null ? '' : `, ${undersize}`}, ` +
    `trama: ${pattern === null ? 'desconocida' : patterns[pattern]}`,
  toBeOrdered: 'Por pedir',
  fromTray: ({ label }) => `De la bandeja: ${label}`,
  clearanceAllowed: ({ limits }) => `Holgura de aceite: admisible ${limits}`,
  clearance: ({ clearance, verdict, limits }) =>
    `Holgura de aceite ${clearance}, ${verdict}; admisible ${limits}`,
  judged: ({ verdict, limits }) => `${verdict}, admisible ${limits}`,
  countsAs: ({ size, reason }) => `Se toma como ${size ?? engineParts.standardSize}: ${reason}`,
  decided: ({ by, reason }) => `Valen las ${by === 'marks' ? 'marcas' : 'lecturas'}: ${reason}`,
  marks: ({ housing, journal }) =>
    `Marcas: alojamiento ${housing ?? 'sin anotar'}, muñón ${journal ?? 'sin anotar'}`,
  boreMeasured: (measured) => `Alojamiento medido: ${sizes(measured)}`,
  journalMeasured: (measured) => `Muñón medido: ${sizes(measured)}`,
  notInPlace: 'No está en su sitio',
  toBeFitted: 'Por montar',
  inPlace: 'En su sitio',
  fit: ({ grade }) => `montar ${grade}`,
  bearingFlags: {
    'sizes-differ': 'la medida declarada y la lectura difieren',
    'mark-differs': 'la marca y las lecturas difieren',
    'out-of-shape': 'fuera de forma',
  },

  // A main journal
  journal: ({ position }) => `Muñón de bancada ${position}`,
  mark: ({ mark }) => `Marca ${mark ?? 'sin anotar'}`,
  groundTo: ({ undersize }) => `Rectificado a ${undersize}`,
  measured: (measured) => `Medido: ${sizes(measured)}`,

  // A fastener
  fastener: ({ number, where }) => `Fijación ${number}, ${where}`,
  ofProcedure: ({ procedure }) => `${procedure}:`,
  group: ({ group, thread, grip, hasWasher }) =>
    `${group}: ${thread}, longitud de apriete ${grip}${hasWasher ? ', sobre su arandela' : ''}`,
  reusable: 'Reutilizable',
  onceOnly: 'De un solo uso: nueva cada vez',
  declaredNew: 'De un solo uso: declarada nueva',
  pass: ({ pass, kind, limits }) => `Pasada ${pass}, ${kind}${limits === null ? '' : `: ${limits}`}`,
  passDone: ({ pass, read, verdict, beforeTurn }) =>
    [
      pass,
      read === null ? 'hecha' : `lectura ${read}`,
      ...(verdict === null
        ? []
        : [{ under: 'insuficiente', over: 'demasiado', moved: 'ha girado' }[verdict]]),
      ...(beforeTurn === null ? [] : [`antes de que le tocara: ${beforeTurn}`]),
    ].join(' · '),
  answered: ({ flag, answer }) => `${flag} · respondido: ${answer}`,

  // The crank, and parts in a face
  pin: ({ rods }) => `Muñequilla de ${rods.join(' y ')}`,
  pinAngle: ({ angle }) =>
    `Está a ${angle} al colocar el cigüeñal: a 0° queda arriba, hacia quien mira desde arriba`,
  throwRadius: ({ radius }) => `${radius} desde el eje del cigüeñal`,
  wheelSize: ({ diameter, width }) => `${diameter} de diámetro, ${width} de ancho`,
  partSize: ({ diameter }) => `${diameter} de diámetro`,
  stands: ({ depth }) => (depth === null ? 'A ras de la cara' : `${depth} por debajo de la cara`),
  lips: { inwards: 'Labio hacia el aceite, adentro', outwards: 'Labio hacia fuera' },
  flows: { inwards: 'El aceite entra en la cara', outwards: 'El aceite sale de la cara' },
  sealedEnds: 'Sellador en las puntas de ambas mitades',
  gasketWidth: ({ width }) => `${width} de ancho a lo largo del borde`,
  newEachTime: 'Nueva cada vez',

  // Other places
  thrust: ({ saddle }) => `Arandelas de empuje en el apoyo ${saddle}`,
  endFloat: ({ least, most }) => `Juego axial del cigüeñal: ${least} a ${most}`,
  dowel: 'Pasador de centrado',
  dowelSize: ({ diameter, face }) => `${diameter} de diámetro, ${face}`,
  passage: ({ name }) => `Conducto de aceite: ${name}`,
  passageSize: ({ along, across }) => `${along} a lo largo, ${across} a lo ancho`,
  passageFree: 'No debe entrar sellador',
  sealant: ({ sealant, width }) => `Sellador: ${sealant}, ${width} de ancho`,
  openTime: ({ minutes }) => `Cerrar la unión en los ${minutes} minutos siguientes a su aplicación`,
  keepsOut: ({ name }) => `Zona prohibida: ${name}`,
  notLaid: 'Aún sin aplicar',
  laid: 'Aplicado',
  noSealant: ({ bead }) => `Aquí sin sellador: «${bead}» pasa al lado`,
  bore: ({ number }) => `Cilindro ${number}`,
  boreSize: ({ diameter }) => `${diameter}, detrás de esta cara`,
  ofRods: ({ rods }) => `Cabeza de su biela: ${rods.join(', ')}`,
  onFace: ({ fasteners, dowels, beads }) =>
    [
      counted(fasteners, 'fijación', 'fijaciones'),
      counted(dowels, 'pasador', 'pasadores'),
      counted(beads, 'cordón', 'cordones'),
    ].join(', '),
  workedFrom: ({ from }) => `Se trabaja desde ${from === 'above' ? 'arriba' : 'abajo'}`,
  check: ({ name, isGood, read, note }) =>
    `${name}: ` +
    [
      isGood ? 'bien' : 'no está bien',
      ...(read === null ? [] : [`lectura ${read}`]),
      ...(note === '' ? [] : [note]),
    ].join(', '),
  opening: 'Hueco',
  openThrough: 'Abierto a través de esta cara: aquí nada sella ni aprieta',
  nose: 'Extremo delantero',
  ofNose: 'El extremo delantero del cigüeñal: todo se cuenta desde aquí',
  drive: 'Extremo de salida',
  ofDrive: 'El extremo del cigüeñal que arrastra, opuesto al delantero',

  // Notes beside the drawing, and the callout at what is next
  gap: ({ reading, limits }) => `abertura ${reading}, ${limits}`,
  checkNote: ({ name, said }) => `${name}: ${said.length === 0 ? 'no está bien' : said.join(', ')}`,
  byHand: 'a mano',
  runDown: 'enroscar',
  loosen: 'aflojar',
  measure: 'medir',
  tighten: 'apretar',
}
