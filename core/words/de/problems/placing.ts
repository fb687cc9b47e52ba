import type { placingWords as english } from '../../en/problems/placing.ts'
import { capital } from '../../formats/index.ts'
import { counted } from '../formats.ts'
import { namedParts } from './spec.ts'

const faceUses = {
  fasteners: (count: number) => counted(count, 'Schraube', 'Schrauben'),
  procedures: (count: number) => counted(count, 'Anziehvorgang', 'Anziehvorgänge'),
  beads: (count: number) => counted(count, 'Dichtraupe', 'Dichtraupen'),
  steps: (count: number) => counted(count, 'Schritt', 'Schritte'),
}

const stop = (text: string): string => (text.endsWith('.') ? '' : '.')

export const placingWords: typeof english = {
  'draft-value-unfit': ({ place, should }) => `${capital(place)}: ${should}${stop(should)}`,
  'draft-too-large': ({ mostCharacters }) =>
    `Damit hätte das Datenblatt mehr als ${mostCharacters / 1_000_000} Millionen Zeichen. Nichts ist geändert: weniger eingeben.`,
  'draft-part-needed': ({ what, name, place }) =>
    `${namedParts[what]} „${name}“ wird noch gebraucht: ${place}. Zuerst das ändern, dann entfernen.`,
  'draft-off-face': ({ what }) =>
    `Dort läge ${what} außerhalb ihrer Fläche. Nichts ist geändert: eine Stelle auf der Fläche wählen oder zuerst den Umriss ändern.`,
  'draft-order-left-empty': ({ order, procedure }) =>
    `In der Reihenfolge „${order}“ des Anziehvorgangs „${procedure}“ bliebe keine Schraube. Zuerst andere aufnehmen oder den Anziehvorgang entfernen.`,
  'draft-thing-in-step': ({ what, step }) =>
    `Der Schritt „${step}“ arbeitet an ${what}. Zuerst den Schritt ändern.`,
  'draft-face-without-fasteners': ({ face }) =>
    `Auf der Fläche „${face}“ ist noch keine Schraube. Zuerst ihre Schrauben setzen, dann anziehen.`,
  'draft-step-uses-part': ({ step, part }) =>
    `Im Schritt „${step}“ wird „${part}“ eingebaut. Zuerst unter „Teile“ sagen, in welchem Schritt stattdessen, oder das Teil aus der Liste nehmen.`,
  'draft-step-has-caution': ({ step }) =>
    `Eine Warnung steht allein neben dem Schritt „${step}“. Sie zuerst neben einen anderen Schritt stellen oder entfernen.`,
  'draft-size-unsaid': () =>
    'Auf dieser Fläche ist noch keiner, dessen Maß gelten könnte. Zuerst das Maß aus dem Handbuch eingeben, dann setzen.',
  'draft-way-unsaid': () =>
    'Angeben, wohin die Lippe zeigt oder das Öl fließt, wie es im Handbuch steht. Dann setzen.',
  'draft-no-outline': () =>
    'Der Rand dieser Fläche wächst noch um das, was auf ihr liegt. „Umriss neu zeichnen“ wählen und seine Ecken antippen.',
  'draft-face-in-use': ({ face, what, count }) =>
    `Auf der Fläche „${face}“ ${count === 1 ? 'ist' : 'sind'} noch ${faceUses[what](count)}. Zuerst entfernen.`,
}
