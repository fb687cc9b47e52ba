import type { TextShape } from '../scene/scene.ts'

/** Capital height of Atkinson Hyperlegible Next as a share of the font size (its own metrics: 672 / 1000). */
export const capitalShare = 0.672

/** Advance widths of the font's own `hmtx`, in thousandths of its size, of characters that follow one another. */
interface AdvanceRun {
  readonly from: number
  readonly regular: readonly number[]
  readonly bold: readonly number[]
}

/** From space to tilde, and Latin-1 from the no-break space on, without the soft hyphen, which takes no room. */
const runs: readonly AdvanceRun[] = [
  {
    from: 0x20,
    regular: [
      280, 286, 301, 651, 592, 919, 731, 160, 299, 299, 485, 606, 210, 362, 210, 387, 648, 407, 548, 576, 614,
      588, 598, 510, 615, 595, 210, 210, 553, 628, 553, 480, 778, 626, 613, 645, 669, 569, 552, 694, 694, 392,
      512, 631, 541, 824, 693, 714, 592, 724, 614, 592, 558, 690, 593, 856, 623, 575, 607, 317, 387, 344, 552,
      372, 243, 525, 566, 485, 564, 538, 314, 558, 550, 252, 245, 492, 262, 845, 550, 548, 566, 574, 349, 471,
      326, 540, 461, 684, 481, 449, 460, 344, 237, 344, 555,
    ],
    bold: [
      312, 303, 390, 765, 610, 969, 725, 210, 335, 335, 485, 595, 271, 373, 272, 440, 659, 440, 579, 600, 624,
      607, 626, 537, 624, 571, 272, 272, 569, 612, 569, 547, 781, 678, 643, 658, 688, 597, 566, 718, 701, 424,
      561, 663, 552, 858, 717, 746, 629, 756, 650, 610, 607, 686, 644, 886, 685, 650, 618, 340, 440, 344, 582,
      400, 288, 552, 596, 510, 596, 563, 365, 593, 571, 300, 259, 555, 318, 882, 571, 576, 596, 599, 376, 508,
      376, 567, 530, 740, 539, 521, 505, 381, 254, 381, 537,
    ],
  },
  {
    from: 0xa0,
    regular: [
      280, 286, 485, 610, 580, 575, 237, 528, 368, 798, 371, 562, 602, 0, 798, 356, 352, 579, 382, 383, 243,
      555, 509, 240, 265, 256, 380, 562, 816, 820, 867, 450, 626, 626, 626, 626, 626, 626, 891, 645, 569, 569,
      569, 569, 392, 392, 392, 392, 689, 693, 714, 714, 714, 714, 714, 532, 714, 690, 690, 690, 690, 575, 592,
      582, 525, 525, 525, 525, 525, 525, 866, 485, 538, 538, 538, 538, 252, 252, 252, 266, 565, 550, 548, 548,
      548, 548, 548, 606, 548, 540, 540, 540, 540, 449, 566, 449,
    ],
    bold: [
      312, 303, 510, 634, 593, 650, 254, 555, 432, 798, 390, 649, 615, 0, 798, 383, 394, 611, 402, 407, 288,
      591, 521, 294, 297, 284, 403, 649, 846, 852, 921, 526, 678, 678, 678, 678, 678, 678, 966, 658, 597, 597,
      597, 597, 424, 424, 424, 424, 708, 717, 746, 746, 746, 746, 746, 536, 746, 686, 686, 686, 686, 650, 629,
      621, 552, 552, 552, 552, 552, 552, 878, 510, 563, 563, 563, 563, 300, 300, 300, 314, 588, 571, 576, 576,
      576, 576, 576, 595, 576, 567, 567, 567, 567, 521, 596, 521,
    ],
  },
]

/** Signs of print beyond Latin-1, regular and bold. */
const others: Readonly<Record<string, readonly [regular: number, bold: number]>> = {
  '–': [504, 501],
  '—': [824, 832],
  '‘': [236, 269],
  '’': [236, 269],
  '‚': [236, 269],
  '“': [399, 479],
  '”': [399, 479],
  '„': [399, 479],
  '…': [670, 780],
  '−': [606, 595],
}

/** Any other character, such as an arrow from another font: no narrower than the widest of them. Ideographs fill the square. */
const widestAdvance = 900

/** How wide a text is, in the unit of its capitals' height, without kerning: within 1 % of the browser's own measure. */
export function textWidth(text: string, capital: number, weight: TextShape['weight']): number {
  let thousandths = 0
  for (const character of text) thousandths += widthOf(character, weight)
  return ((thousandths / 1000) * capital) / capitalShare
}

function widthOf(character: string, weight: TextShape['weight']): number {
  const code = character.codePointAt(0)!
  for (const run of runs) {
    const width = run[weight][code - run.from]
    if (width !== undefined) return width
  }
  return others[character]?.[weight === 'bold' ? 1 : 0] ?? (code > 0x2e7f ? 1000 : widestAdvance)
}
