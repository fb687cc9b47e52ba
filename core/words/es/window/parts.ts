import type { Words } from '../../words.ts'
import type { patterns as english } from '../../en/window/parts.ts'
import { clock, minutesAndSeconds } from '../../formats/index.ts'

/** How an area is filled, so that colour is never alone. */
export const patterns: typeof english = {
  plain: 'lisa',
  bars: 'barras',
  dots: 'puntos',
  slant: 'rayas inclinadas',
  grid: 'cuadrícula',
  waves: 'ondas',
  crosses: 'cruces',
  steps: 'escalones',
  rings: 'anillos',
}

export const parts: Words['parts'] = {
  close: 'Cerrar',
  cancel: 'Cancelar',

  savedAs: ({ path }) => `Guardado como ${path}`,
  noPlaceChosen: 'No guardado: no se eligió dónde.',
  savedByBrowser: ({ fileName }) =>
    `El navegador guarda ${fileName}. Su lista de descargas dice cuándo y dónde.`,

  day: {
    day: 'Día',
    month: 'Mes',
    year: 'Año',
    incomplete: 'Elegir día, mes y año, o dejar los tres vacíos.',
  },
  enginesAndBuilds: 'Motores y montajes',
  grade: ({ grade, pattern }) => `clase ${grade}, ${patterns[pattern]}`,
  openTimeLeft: ({ bead, seconds }) =>
    `Sellador, ${bead}: quedan ${minutesAndSeconds(seconds)} de tiempo abierto`,
  openTimeOver: ({ bead, seconds }) =>
    `! Sellador, ${bead}: tiempo abierto vencido hace ${minutesAndSeconds(seconds)}. Abrir la unión, limpiarla y aplicar un cordón nuevo.`,
  openTimeInShort: ({ seconds }) =>
    seconds > 0 ? `Sellador ${clock(seconds)}` : `! Vencido +${clock(-seconds)}`,
  qrCode: ({ text }) => `Código QR: ${text}`,
}
