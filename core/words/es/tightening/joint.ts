import type { Words } from '../../words.ts'
import type { Layer } from '../../en/tightening/joint.ts'
import { thread } from '../formats.ts'

const threadClasses = {
  oiled: 'roscas aceitadas: VDI 2230 parte 1, tabla A5, clase B y su centro',
  dry: 'roscas en seco: VDI 2230 parte 1, tabla A5, clase C y su centro',
  sealant: 'sellador en las roscas: VDI 2230 parte 1, tabla A5, clases B y C juntas',
  'thread-lock': 'fijador en las roscas: VDI 2230 parte 1, tabla A5, clases B y C juntas',
}

function layersText(layers: readonly Layer[]): string {
  return layers
    .map(({ material, modulus, thickness }) =>
      thickness === null ? `${material} de ${modulus}` : `${thickness} de ${material} de ${modulus}`,
    )
    .join(' sobre ')
}

export const pullInputs: Words['pullInputs'] = {
  names: {
    thread: 'Rosca',
    class: 'Clase de calidad',
    face: 'Apoyo de la cabeza',
    friction: 'Rozamiento',
    prevailing: 'Par de autofrenado',
    torque: 'Par y precarga',
    yield: 'Dónde cede',
    bolt: 'Cuánto se alarga el tornillo',
    parts: 'Cuánto ceden las piezas',
    turn: 'Giro y precarga',
  },
  values: {
    thread: ({ designation }) => thread(designation),
    class: ({ name, proof, yield: yields }) => `${name}: carga de prueba ${proof}, límite elástico ${yields}`,
    face: ({ outer, hole }) => `Ø ${outer} con un agujero de Ø ${hole}`,
    friction: ({ usual, least, most }) =>
      `${usual}, entre ${least} y ${most}; de ahí salen los límites de la precarga`,
    prevailing: ({ torque, isIncluded }) =>
      isIncluded === false
        ? `hasta ${torque}, que se mide y se suma al par; el par aprieta entero`
        : `de nada a ${torque}, normalmente la mitad, que se resta del par antes de que apriete` +
          (isIncluded === null ? '; la ficha no lo dice, y no se suma nada' : ''),
    torque: () => 'M = F·(0,16·P + 0,58·d2·µ + D_Km/2·µ)',
    yield: () => 'tracción y torsión juntas alcanzan el límite elástico',
    resilience: ({ perKilonewton }) => `${perKilonewton} por cada kN`,
    turn: () => 'ΔF = θ/360° · P/(δ_S + δ_P), horizontal desde donde cede',
  },
  sources: {
    'metric-thread': () => 'la ficha; sus demás medidas según ISO 724',
    'unified-thread': () => 'la ficha; sus demás medidas según ASME B1.1',
    'sae-class': () => 'la ficha; SAE J429, tabla 1',
    'astm-class': () => 'la ficha; ASTM A574, requisitos mecánicos',
    'iso-class': () => 'la ficha; ISO 898-1, tabla 3',
    spec: () => 'la ficha',
    'socket-head': () => 'por el diámetro de una cabeza Allen, según ISO 4762 e ISO 273',
    'inch-socket-head': () => 'por el diámetro de una cabeza Allen, según ASME B18.3',
    'hexagon-head': () => 'por la distancia entre caras, según ISO 4014 e ISO 273',
    'threads-state': ({ state }) => threadClasses[state],
    'friction-class': ({ name }) => `clase ${name} de la ficha: VDI 2230 parte 1, tabla A5, y su centro`,
    prevailing: () => 'la ficha; ISO 2320',
    torque: () => 'VDI 2230 parte 1, ISO 16047',
    yield: () => 'VDI 2230 parte 1, 2001 y posteriores',
    bolt: ({ head, grip, shank, into }) =>
      `VDI 2230 parte 1, 5.1.1; un tornillo de acero ${head === 'socket' ? 'ISO 4762' : 'ISO 4014'} con una longitud de apriete de ` +
      `${grip}${shank === null ? '' : `, vástago de ${shank}`}, ` +
      (into === 'nut' ? 'con tuerca' : 'con un diámetro roscado'),
    parts: ({ into, layers }) =>
      into === 'nut'
        ? `dos conos de 30° bajo la cabeza y la tuerca (Shigley's Mechanical Engineering Design, 8-5), en ${layersText(layers)}`
        : `un cono de 30° bajo la cabeza (Shigley's Mechanical Engineering Design, 8-5), en ${layersText(layers)}, en un agujero roscado`,
    turn: () => 'VDI 2230 parte 1',
  },
}

export const flangeAssumptions: Words['flangeAssumptions'] = {
  caps:
    'Cada sombrerete es una barra a través de su cojinete, tan ancha como el cojinete y tan alta como la longitud de apriete de sus fijaciones; ' +
    'dentro del alojamiento no hay nada debajo, y ningún sombrerete nota a otro.',
  walls:
    'En cada apoyo una pared cruza de borde a borde, tan ancha como el apoyo y tan alta como la longitud de apriete de sus ' +
    'fijaciones; dentro del alojamiento no hay nada debajo.',
  rail:
    'La brida corre por el borde de la cara como una barra, el doble de ancha que la distancia de sus fijaciones al ' +
    'borde y tan alta como su longitud de apriete media.',
  'nearest-place': 'Cada fijación tira del punto más cercano del borde o de una pared.',
  metal: 'Metal sobre metal, como mucho con una película de sellador.',
  gasket: 'Entre las caras hay una junta plana de fibra de 0,5 mm, que recupera; una real además se asienta.',
  bed:
    'Lo que hay debajo cede como un lecho uniforme, igual que una barra de la misma altura al comprimirse. El ' +
    'lecho empuja y nunca tira: donde la brida se levanta, la unión está abierta.',
  flat:
    'Las caras son planas y se tocan antes del primer apriete, y cada fijación se ha enroscado a ' +
    'mano hasta tocar.',
  elastic:
    'El tornillo es un muelle elástico con la rigidez de su vástago, rosca y cabeza. No cede, y ' +
    'nada se asienta.',
  teaching:
    'Es un modelo didáctico. Muestra cómo las fijaciones se quitan carga unas a otras, no lo que aguanta una fijación de este ' +
    'motor.',
}
