import type { quantityWords as pattern } from '../../en/problems/quantity.ts'
import type { Table } from '../../table.ts'

export const quantityWords: Table<typeof pattern> = {
  'number-missing': (_) => 'Nichts eingetippt. Eine Zahl eintippen, z. B. 12,5.',
  'number-unreadable': ({ typed }) =>
    `„${typed}“ ist keine Zahl. Ziffern mit Komma oder Punkt eintippen, z. B. 12,5 oder 12.5.`,
  'number-ambiguous': ({ typed }) =>
    `„${typed}“ hat mehr als ein Komma oder einen Punkt. Höchstens eines davon eintippen, z. B. 1234,5.`,
  'number-out-of-range': ({ typed }) =>
    `„${typed}“ ist als Messwert zu groß oder zu klein. Skala ablesen und neu eintippen.`,
  'number-negative': ({ typed }) => `„${typed}“ ist kleiner als null. Skala ablesen und neu eintippen.`,
  'unit-unknown': ({ typed, units }) =>
    `Einheit von „${typed}“ hier nicht bekannt. Möglich: ${units.join(', ')}.`,
  'units-disagree': ({ first, second, is }) =>
    `${first} sind ${is}, daneben steht ${second}. Eines ist ein Druckfehler: klären, was stimmt, und dieses eintragen.`,
  'tolerance-class-unknown': ({ typed }) =>
    `„${typed}“ hat keine hier bekannte Toleranzklasse. Buchstabe (D bis H, JS, K, M, N, P, R, S; klein für Wellen) und ` +
    'Grad 5 bis 11 eintragen, z. B. 62 mm H6, oder beide Grenzmaße.',
  'tolerance-class-size': ({ size }) =>
    `${size}: Toleranzklassen gelten für Maße über null bis 500 mm. Beide Grenzmaße eintragen.`,
  'thread-designation-unknown': ({ typed }) =>
    `„${typed}“ ist kein hier bekanntes Gewinde. Bezeichnung eintragen, z. B. M10, M10×1.25, 3/8-16 UNC oder #10-32 UNF, oder ` +
    'Durchmesser und Steigung angeben.',
  'unit-missing': ({ typed, units }) => `„${typed}“ hat keine Einheit. Eine ergänzen: ${units.join(', ')}.`,
}
