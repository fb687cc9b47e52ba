import type { auditRingWords as englishOfAudit, ringWords as english } from '../../en/problems/rings.ts'

const badPlaces = { 'over-pin': 'del extremo del bulón', 'on-thrust': 'del centro de un lado de empuje' }

export const auditRingWords: typeof englishOfAudit = {
  'piston-without-cylinder': ({ piston, cylinder, cylinders }) =>
    `${piston} es del cilindro ${cylinder}, y el motor tiene ${cylinders}. Corregir uno de los dos.`,
  'cylinder-with-two-ring-sets': ({ cylinder }) =>
    `El cilindro ${cylinder} tiene dos juegos de segmentos. Quitarlo de uno de ellos.`,
  'cylinder-without-rings': ({ cylinder }) =>
    `El cilindro ${cylinder} no tiene segmentos y otros sí. Añadir su pistón al juego de sus segmentos.`,
  'rings-out-of-order': ({ first, second }) =>
    `«${second}» figura después de «${first}» y va en una ranura más alta. Enumerar los segmentos desde la cabeza hacia abajo.`,
  'groove-not-whole': ({ groove }) =>
    `La ranura ${groove} no tiene un segmento, ni dos láminas con un expansor entre ellas. Corregir lo que va en ella.`,
  'ring-without-gap': ({ ring }) =>
    `«${ring}» no tiene separación entre puntas. Indicar sus límites, o la regla según el diámetro del cilindro.`,
  'ring-gaps-in-line': ({ first, second, apart, least }) =>
    `Las aberturas de «${first}» y «${second}» están a ${apart}, y hacen falta ${least} como mínimo: el gas pasaría por las dos. ` +
    'Corregir uno de los ángulos.',
  'ring-gap-over-pin': ({ ring, apart, least }) =>
    `La abertura de «${ring}» está a ${apart} del extremo del bulón, y hacen falta ${least} como mínimo. Corregir su ángulo.`,
  'ring-gap-on-thrust': ({ ring, apart, least }) =>
    `La abertura de «${ring}» está a ${apart} del centro de un lado de empuje, y hacen falta ${least} como mínimo. Corregir su ángulo.`,
  'rings-never-measured': ({ rings }) =>
    `«${rings}»: ningún paso mide la separación entre puntas. Añadir uno antes de montar los segmentos.`,
  'hot-part-without-caution': ({ step, place, temperature }) =>
    `«${step}»: ${place} se calienta a ${temperature}, que quema la piel, y el paso no lo advierte. ` +
    'Añadir «hot-part» a sus peligros.',
}

export const ringWords: typeof english = {
  'ring-gap-zero': ({ place }) =>
    `${place}: una separación de 0 no es una lectura, porque las puntas de un segmento no deben tocarse nunca. Medir con la galga más fina; si ` +
    'ni esa entra, limar el segmento o montar otro, y medir de nuevo.',
  'ring-gap-other-unit': ({ name, typed, is, meant, inMillimetres }) =>
    `${name}: ${typed} son ${is}, lejos de sus límites, y ${meant} (${inMillimetres}) estaría dentro de ` +
    'ellos. Escribirlo con la unidad de la galga; si está bien escrito, confirmarlo.',
  'ring-gap-impossible': ({ name, typed, is, bore, widest }) =>
    `${name}: ${typed} son ${is}, y ningún segmento en un cilindro de ${bore} abre más de ${widest}. Leer de nuevo ` +
    'la galga y su unidad; si está bien escrito, confirmarlo.',
  'ring-too-tight': ({ name, place }) =>
    `${name}, ${place}: una separación insuficiente no se acepta nunca, porque las puntas se tocarían con el segmento caliente. Limar las puntas y ` +
    'medir de nuevo.',
  'piston-unknown': ({ step, cylinder }) =>
    `«${step}» no tiene pistón para el cilindro ${cylinder}. Elegir uno de sus pistones.`,
  'ring-unknown': ({ piston, ring }) =>
    `${piston} no tiene ningún segmento «${ring}». Elegir uno de los suyos.`,
  'rings-fitted-already': ({ piston }) =>
    `Los segmentos de ${piston} ya están puestos. Si fue un error, deshacerlo.`,
  'rings-not-fitted': ({ piston }) =>
    `Los segmentos de ${piston} no están puestos: no hay nada que deshacer.`,
  'angle-past-turn': ({ ring }) =>
    `${ring}: un ángulo en el pistón va de 0° hasta 360°, en sentido horario desde el lado delantero. Escribir dónde está la abertura.`,
  'gaps-lie-in-line': ({ piston, first, second, apart, least }) =>
    `${piston}: las aberturas de ${first} y ${second} están a ${apart}, y hacen falta ${least} como mínimo. ` +
    'Girar uno de los segmentos.',
  'gap-badly-placed': ({ piston, ring, apart, where, least }) =>
    `${piston}: la abertura de ${ring} está a ${apart} ${badPlaces[where]}, y hacen falta ${least} como mínimo. ` +
    'Girar el segmento.',
}
