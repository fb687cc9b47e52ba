import type { Words } from '../../words.ts'

const sides = { left: 'links', top: 'oben', right: 'rechts', bottom: 'unten' }
const noseAt = (nose: keyof typeof sides | null) => (nose === null ? '' : `, Steuerseite ${sides[nose]}`)

export const mirrorDrill: Words['practice']['mirror'] = {
  printed: 'Wie im Handbuch gedruckt',
  lies: {
    shell: ({ half, nose }) => `Gehäusehälfte ${half}, Trennfläche nach oben${noseAt(nose)}.`,
    fastener: (of) => `${of.face}, Motor ${of.orientation}${noseAt(of.nose)}.`,
  },
  asks: {
    shell: ({ position, half }) => [
      'Wohin gehört die Schale ',
      { strong: `${position} ${half}` },
      '? Antippen.',
    ],
    fastener: ({ number }) => ['Welche ist Schraube ', { strong: number }, '? Antippen.'],
  },
  place: (of) => {
    const asides =
      of.from === 'left'
        ? { low: 'nahe dem oberen Rand', middle: 'in der Mitte', high: 'nahe dem unteren Rand' }
        : { low: 'links', middle: 'in der Mitte', high: 'rechts' }
    const aside = of.aside === 'none' ? '' : `, ${asides[of.aside]}`
    return `Platz ${of.number} von ${of.of}, von ${sides[of.from]}${aside}`
  },
  slips: {
    'other-end': 'Nicht diese: Sie liegt zum anderen Ende hin. Von der Steuerseite zählen.',
    'other-side': 'Nicht diese: Sie liegt auf der anderen Seite.',
    both: 'Nicht diese: Sie liegt zum anderen Ende hin und auf der anderen Seite.',
    elsewhere: 'Nicht diese.',
  },
  whys: {
    mirrored:
      'Hier ist die Fläche von der anderen Seite gesehen als im Handbuch, also spiegelbildlich: Längs der Kurbelwelle bleibt die Zählung ab der Steuerseite, quer dazu tauschen die Seiten.',
    shell: ({ half }) =>
      `Gehäusehälfte ${half}: dafür gewendet, sie läuft umgekehrt wie später am Motor. Lagersitze zählen ab der Steuerseite.`,
    turned:
      'Hier ist das Gehäuse nur gedreht, nicht gespiegelt: Bild drehen, bis beide Steuerseiten in dieselbe Richtung zeigen.',
    end: 'Hier ist der Motor nur gedreht, nicht gespiegelt: Bild drehen, bis die Seiten übereinstimmen.',
  },
  shown: 'Der richtige Platz ist blau.',
}
