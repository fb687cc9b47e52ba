import type { jointWords as english } from '../../en/problems/joint.ts'
import { plain } from '../formats.ts'

export const jointWords: typeof english = {
  'thread-diameter-out-of-range': ({ diameterMm }) =>
    `No existe la rosca de ${plain(diameterMm)} mm: ISO 261 va de 1 mm a 300 mm. Comprobar el diámetro y su unidad.`,
  'thread-pitch-out-of-range': ({ diameterMm, pitchMm }) =>
    `Un paso de ${plain(pitchMm)} mm no se puede tallar en un diámetro de ${plain(diameterMm)} mm. ` +
    'Indicar la distancia de un filete al siguiente, que es como máximo un tercio del diámetro.',
  'property-class-unknown': ({ propertyClass, diameterMm, known }) =>
    `No hay clase de calidad (ISO 898-1) ni grado (SAE J429, ASTM A574) «${propertyClass}» para una rosca de ${plain(diameterMm)} mm. ` +
    `Leer otra vez la marca de la cabeza: es una de estas: ${known.join(', ')}.`,
  'bearing-face-out-of-range': ({ outerMm, holeMm }) =>
    `Una superficie de apoyo de ${plain(outerMm)} mm no tiene dónde apoyar alrededor de un agujero de ${plain(holeMm)} mm. ` +
    'Comprobar los dos diámetros: el de la superficie es el mayor.',
}
