import type { specWords as english } from '../../en/problems/spec.ts'
import { plain } from '../formats.ts'
import { capital } from '../../formats/index.ts'

/** What may stand at a place in JSON. */
const wantedParts = {
  value: 'un valor',
  'value-or-end': 'un valor o ]',
  key: 'un nombre entre comillas',
  'key-or-end': 'un nombre entre comillas o }',
  colon: 'dos puntos',
  'comma-or-bracket': 'una coma o ]',
  'comma-or-brace': 'una coma o }',
  nothing: 'el final del fichero',
}

/** What has an id, a mark or a grade of its own. */
export const namedParts = {
  'balance-bearing': 'cojinete de equilibrado',
  bead: 'cordón',
  bearing: 'cojinete',
  dowel: 'pasador de centrado',
  face: 'cara',
  'face-part': 'pieza en una cara',
  fastener: 'fijación',
  'fastener-group': 'grupo de fijaciones',
  fit: 'cojinetes',
  grade: 'clase',
  'housing-mark': 'marca del alojamiento',
  'journal-mark': 'marca del muñón',
  'oil-passage': 'conducto de aceite',
  order: 'orden',
  part: 'pieza',
  position: 'posición',
  procedure: 'procedimiento',
  ring: 'segmento',
  'ring-set': 'juego de segmentos',
  rod: 'biela',
  saddle: 'apoyo',
  step: 'paso',
  throw: 'codo del cigüeñal',
  wheel: 'rueda del cigüeñal',
}

/** Of what has a list of its own, where it is named there. */
const namedHere = {
  ...namedParts,
  order: 'orden de este procedimiento',
  position: 'posición de estos cojinetes',
}

export const specWords: typeof english = {
  'spec-too-large': ({ mostCharacters }) =>
    `El fichero tiene más de ${plain(mostCharacters / 1_000_000)} millones de caracteres; ninguna ficha es tan larga. Elegir el fichero correcto.`,
  'spec-not-json': ({ line, column, found, wanted }) =>
    `El fichero no es JSON: en la línea ${line}, columna ${column}, ` +
    `${found === '' ? 'no hay nada más' : `hay «${found}»`} donde debe haber ${wantedParts[wanted]}. Corregirlo ahí.`,
  'spec-key-twice': ({ line, column, key }) =>
    `Línea ${line}, columna ${column}: ${key} figura por segunda vez en un mismo grupo. Quitar una de las dos.`,
  'spec-too-deep': ({ line, column, levels }) =>
    `Línea ${line}, columna ${column}: más de ${levels} niveles de anidamiento; ninguna ficha los tiene. Elegir el fichero correcto.`,
  'spec-part-missing': ({ place, should }) => `Falta: ${place}. ${capital(should)}${stop(should)}`,
  'spec-part-wrong': ({ place, found, should }) =>
    `${place === '' ? 'El fichero' : capital(place)}: se encuentra ${foundIn(found)}. ${capital(should)}${stop(should)}`,
  'spec-keys-unknown': ({ place, keys }) =>
    `${place === '' ? 'El fichero' : capital(place)} tiene ${keys.map((key) => `«${key}»`).join(', ')}, que ninguna ficha lleva ` +
    'ahí. Corregir la grafía o quitarlo.',
  'spec-id-twice': ({ what, of, id }) =>
    `«${id}» figura dos veces como ${namedParts[what]}` +
    `${of === null ? '' : ` (${namedParts[of.what]} «${of.id}»)`}. Dar a cada uno su propio id.`,
  'spec-reference-dangling': ({ place, what, id }) =>
    `${capital(place)} nombra «${id}», y no existe como ${namedHere[what]}. Corregir el nombre, o añadir lo que nombra.`,
  'spec-more-problems': ({ count }) =>
    `Problemas que quedan: ${count}. Arreglar los primeros y leer el fichero de nuevo.`,
}

function foundIn(found: Parameters<(typeof english)['spec-part-wrong']>[0]['found']): string {
  switch (found.kind) {
    case 'list':
      return `una lista de ${found.length}`
    case 'group':
      return 'un grupo entre { }'
    case 'text':
      return `«${found.text}${found.isCut ? '…' : ''}»`
    case 'value':
      return found.json
  }
}

function stop(text: string): string {
  return text.endsWith('.') ? '' : '.'
}
