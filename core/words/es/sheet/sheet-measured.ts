import type { sheetMeasured as english } from '../../en/sheet/sheet-measured.ts'
import { engineParts } from '../engine-parts.ts'

export const sheetMeasured: typeof english = {
  title: 'Medido y decidido',
  reground: ({ undersize }) => `Muñón rectificado: ${undersize}.`,
  sizeDecided: ({ undersize, reason, stamp }) =>
    `Decidido: el muñón se toma como ${undersize ?? engineParts.standardSize}: ${reason} (${stamp}).`,
  readings: ({ part, cells, partAt, gaugeAt, sureTo, sure, ...found }) =>
    `${part}: ${cells}; pieza a ${partAt}` +
    (gaugeAt === null ? '' : `, instrumento a ${gaugeAt}`) +
    (sureTo === null ? '' : `, incertidumbre ± ${sureTo}`) +
    `. A 20 °C: ${found.least}, ${found.mean}, ${found.greatest} (mínimo, media, máximo); ` +
    `ovalización ${found.outOfRound}, conicidad ${found.taper}.` +
    (sure ? ' Se preguntó por una lectura apartada de las demás: tomada de nuevo, y correcta.' : ''),
  basisDecided: ({ by, reason, stamp }) =>
    `Decidido: valen las ${by === 'marks' ? 'marcas' : 'lecturas'}: ${reason} (${stamp}).`,
  byReadings: 'Elegido por las lecturas.',
  pinned: ({ reason }) => `Elegido a mano: ${reason}`,
  thread: ({ typed, verdict }) => `Hilo calibrado ${typed}: ${verdicts[verdict]}.`,
  tray: ({ stamp, lines }) => `Bandeja (${stamp}): ${lines.join(', ')}.`,
  trayLine: ({ count, label, wall }) => `${count} × ${label}${wall === null ? '' : ` (pared ${wall})`}`,
}

const verdicts = {
  agrees: 'coincide',
  'says-tighter': '! menos de lo calculado',
  'says-looser': '! más de lo calculado',
  'not-compared': 'sin comparar',
}
