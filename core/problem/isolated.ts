const turnsAround =
  /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}\u200E\u200F\u061C\u202A-\u202E\u2066-\u2069]/u

/**
 * A name as it stands in the midst of other text: written from right to left, it is set apart (Unicode Standard Annex 9),
 * so that what stands beside it keeps its order. Any other is given as it is.
 */
export function isolated(name: string): string {
  return turnsAround.test(name) ? `\u2068${name}\u2069` : name
}
