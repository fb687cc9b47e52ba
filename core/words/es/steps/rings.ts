import type { Words } from '../../words.ts'
import { listed } from '../formats.ts'

export const rings: Words['rings'] = {
  measures: {
    'ring-gap': ({ ring }) => `${ring}, separación entre puntas`,
    'groove-clearance': ({ ring }) => `${ring} en su ranura`,
  },
  file: ({ least, most }) =>
    `! Demasiado estrecha. Limar de las puntas ${least} en total` +
    `${most === null ? '' : `, nunca más de ${most}`}, a escuadra y poco a poco, matar los cantos y medir de nuevo.`,
  replace: ({ by, wider }) =>
    `! Demasiado ancha, por ${by}. Medir el cilindro: un desgaste de ${wider} bastaría para abrir tanto la separación, porque crece π veces ` +
    'lo que crece el diámetro. Si el cilindro está bien, montar otro segmento.',
  sure: 'Está bien escrito',
  confirm: 'Las aberturas están así',
  title: ({ piston }) => `Segmentos de ${piston}`,
  say: 'Girar cada abertura a su sitio, mirando la cabeza del pistón con el lado delantero a la izquierda.',
  up: ({ mark }) => `${mark} hacia arriba`,
  noSide: 'cualquier lado hacia arriba',
  gap: ({ ring, angle }) => `${ring}: ${angle}`,
  clock: ({ piston, gaps }) =>
    gaps.length === 0
      ? `${piston}: segmentos por montar`
      : `${piston}: ${gaps.map(({ ring, angle }) => `${ring} ${angle}`).join(', ')}`,
  done: ({ text }) => `✓ ${text}`,
  allDone: ({ pistons }) =>
    pistons === 1
      ? '✓ Los segmentos del pistón están puestos.'
      : `✓ Los segmentos de los ${pistons} pistones están puestos.`,
  places: 'Todos los pistones',
  otherwise: 'Otro ángulo …',
  asSpec: 'Como en la ficha',
  angleOf: ({ ring }) => `${ring}: su abertura está a, en °`,
  whyOff: ({ piston }) => `${piston}: ¿por qué se quitan los segmentos?`,
  takeOff: 'Quitarlos',
  drawing: ({ piston, gaps }) =>
    `${piston} desde arriba, con el lado delantero a la izquierda. Aberturas en sentido horario desde ahí: ` +
    `${gaps.map(({ ring, angle }) => `${ring} a ${angle}`).join(', ')}.`,
  nose: 'delante',
  pin: 'bulón',
  above: ({ thrust }) => `↑ ${thrust ? 'lado de empuje' : 'lado opuesto al empuje'}`,
  below: ({ thrust }) => `↓ ${thrust ? 'lado de empuje' : 'lado opuesto al empuje'}`,
  sheet: {
    title: 'Segmentos y sus aberturas',
    gaps: 'Aberturas, en sentido horario desde el lado delantero, mirando la cabeza',
    takenOff: ({ text, reason }) => `${text}; quitados: ${reason}`,
  },
  card: {
    open: 'Ficha de segmentos',
    foot: ({ engine, revision, rings: set }) =>
      `Ficha de segmentos Bedplate · ${engine}, revisión ${revision} · ${set}`,
    rules: ({ apart, offPin, offThrust }) =>
      `Aberturas de segmentos contiguos ${listed([
        `a ${apart} como mínimo entre sí`,
        ...(offPin === null ? [] : [`a ${offPin} como mínimo de los extremos del bulón`]),
        ...(offThrust === null ? [] : [`a ${offThrust} como mínimo del centro de los lados de empuje`]),
      ])}.`,
    ring: 'Segmento',
    up: 'Arriba',
    stands: 'Abertura a',
  },
}
