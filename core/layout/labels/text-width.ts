import type { TextShape } from '../scene/scene.ts'

/** Capital height of Atkinson Hyperlegible Next as a share of the font size (its own metrics: 672 / 1000). */
export const capitalShare = 0.672

/** Advance widths in thousandths of the font size, of the characters from space to tilde, measured in Chromium. */
const regular = [
  280, 286, 301, 651, 592, 919, 731, 160, 299, 299, 485, 606, 210, 362, 210, 387, 648, 407, 548, 576, 614,
  588, 598, 510, 615, 595, 210, 210, 553, 628, 553, 480, 778, 626, 613, 645, 669, 569, 552, 694, 694, 392,
  512, 631, 541, 824, 693, 714, 592, 724, 614, 592, 558, 690, 593, 856, 623, 575, 607, 317, 387, 344, 552,
  372, 243, 525, 566, 485, 564, 538, 314, 558, 550, 252, 245, 492, 262, 845, 550, 548, 566, 574, 349, 471,
  326, 540, 461, 684, 481, 449, 460, 344, 237, 344, 555,
]
const bold = [
  312, 303, 390, 765, 610, 969, 725, 210, 335, 335, 485, 595, 271, 373, 272, 440, 659, 440, 579, 600, 624,
  607, 626, 537, 624, 571, 272, 272, 569, 612, 569, 547, 781, 678, 643, 658, 688, 597, 566, 718, 701, 424,
  561, 663, 552, 858, 717, 746, 629, 756, 650, 610, 607, 686, 644, 886, 685, 650, 618, 340, 440, 344, 582,
  400, 288, 552, 596, 510, 596, 563, 365, 593, 571, 300, 259, 555, 318, 882, 571, 576, 596, 599, 376, 508,
  376, 567, 530, 740, 539, 521, 505, 381, 254, 381, 537,
]

/** What stands on this program's drawings beside ASCII: µ · ° × − – and the raised 2. */
const others: Readonly<Record<string, number>> = {
  µ: 576,
  '·': 294,
  '°': 394,
  '×': 595,
  '−': 606,
  '–': 501,
  '²': 402,
}

/** Any other character, an accented capital say: no narrower than the widest of them. Ideographs fill the square. */
const widest = 900

/** How wide a text is, in the unit of its capitals' height, without kerning: within 1 % of the browser's own measure. */
export function textWidth(text: string, capital: number, weight: TextShape['weight']): number {
  const table = weight === 'bold' ? bold : regular
  let thousandths = 0
  for (const character of text) {
    const code = character.codePointAt(0) ?? 0
    thousandths += table[code - 32] ?? others[character] ?? (code > 0x2e7f ? 1000 : widest)
  }
  return ((thousandths / 1000) * capital) / capitalShare
}
