import type { measuring as english } from '../../en/bearings/measuring.ts'

function planesInWords(planes: number): string {
  return planes === 1
    ? 'Un plano, en el centro.'
    : `${planes} planos a lo largo del eje, contados desde delante.`
}

function directionsInWords(directions: readonly number[]): string {
  const where = directions.map((degrees, index) => {
    const turned = Math.abs(Math.round(degrees))
    if (turned === 0) return `${index + 1} vertical`
    return `${index + 1} a ${turned}° a la ${degrees < 0 ? 'izquierda' : 'derecha'} de la vertical`
  })
  return `Direcciones a través, vistas desde delante: ${where.join(', ')}.`
}

const threadVerdicts = {
  agrees: 'coincide con la holgura calculada',
  'says-tighter': 'muestra menos de lo calculado',
  'says-looser': 'muestra más de lo calculado',
}

export const measuring: typeof english = {
  heading: ({ position }) => `medir ${position}`,
  what: 'Qué se mide',
  parts: { housing: 'Alojamiento', journal: 'Muñón', thread: 'Hilo calibrado' },
  noteReadings: 'Anotar estas lecturas',
  noteThread: 'Anotar este ancho',

  expected: ({ part, position, capTight, least, most }) =>
    `${part}, ${position}${capTight ? ', sombrerete apretado' : ''}: se espera de ${least} a ${most}.`,
  byMark: ({ mark, least, most }) => `Marca ${mark}: ${least} a ${most}.`,
  picture: ({ part, planes, directions }) =>
    `${planesInWords(planes)} ${directionsInWords(directions)}` +
    (part === 'housing' ? ' Ninguna cae en la partición del sombrerete.' : ''),
  alongAxis: 'desde delante',
  acrossAxis: 'visto desde delante',
  bareNumbersIn: 'Los números sin unidad están en',
  direction: ({ direction }) => `dirección ${direction}`,
  plane: ({ plane }) => `plano ${plane}`,
  cell: ({ plane, direction }) => `plano ${plane}, dirección ${direction}`,
  partAt: 'Temperatura de la pieza',
  gaugeAt: 'Temperatura del instrumento',
  gaugeTrue: 'sin corrección',
  sureTo: 'Incertidumbre ±',

  least: 'Mínimo',
  mean: 'Media',
  greatest: 'Máximo',
  outOfRound: 'Ovalización',
  taper: 'Conicidad',
  taperPer: ({ taper, per, apart, allowed }) =>
    `Conicidad: ${taper} por cada ${per}. Con el primer plano a ${apart} del último, son ${allowed} en total.`,
  suspect: ({ plane, direction, size, middle }) =>
    `Plano ${plane}, dirección ${direction}: lectura ${size}, las demás en torno a ${middle}. ` +
    'Medir de nuevo.',

  allRight: 'Tomada de nuevo y correcta: guardar estas lecturas',
  withdraw: 'Retirar estas lecturas',
  whyWithdraw: '¿Por qué no valen estas lecturas?',
  withdrawThem: 'Retirarlas',
  usualReasons: ['Tomadas en otro cojinete', 'El instrumento estaba mal ajustado'],

  thread: {
    how: ({ position }) =>
      `Hilo calibrado en ${position}: con los semicojinetes puestos, colocarlo a lo largo del muñón, apretar el sombrerete, quitarlo ` +
      'otra vez y leer el ancho en la tarjeta. Nunca elige un semicojinete; descubre suciedad, un sombrerete flojo o una lectura errónea.',
    read: 'Leído en la tarjeta',
    step: 'Graduación de la tarjeta',
    nothingToCompare: ({ width }) => `${width}: aún no hay holgura calculada con que compararlo.`,
    compared: ({ width, verdict, off }) =>
      `${width}: ${threadVerdicts[verdict]}` +
      (verdict === 'agrees'
        ? '.'
        : `, en ${off}. Buscar suciedad, un sombrerete flojo o una lectura errónea.`),
  },
}
