import type { Words } from '../../words.ts'
import type { OfSecondFolder } from '../../en/host/doctor.ts'
import { counted, day, dayAndTime, fixed, plain } from '../formats.ts'

const subjects = {
  program: 'programa',
  host: 'sistema',
  'data-folder': 'carpeta de datos',
  disk: 'disco',
  record: 'registro',
  photos: 'fotos',
  backup: 'copia de seguridad',
  shop: 'taller',
  fonts: 'tipos de letra',
  screen: 'pantalla',
  voices: 'voces',
  instruments: 'instrumentos',
}
const terminalSigns = { good: 'bien ', look: 'mirar', bad: 'MAL  ' }

const builds = (count: number) => counted(count, 'montaje', 'montajes')

export const doctor: Words['doctor'] = {
  subjects,
  terminalLine: ({ subject, state, text }) => `${terminalSigns[state]}  ${subjects[subject]}: ${text}`,
  restInWindow:
    'Los tipos de letra, la pantalla, las voces y los instrumentos solo los puede comprobar la ventana: ver su página «Registro y copias».',
  signs: { good: '✓', look: '? mirar', bad: '! mal' },
  fontsLookedAt: 'Comprobando …',
  fontsLoaded: ({ font }) => `${font} está cargado, en normal y negrita.`,
  fontsMissing: ({ font, weights }) =>
    `${font} no está cargado (${weights.join(', ')}), así que textos y números pueden salir cortados. Arrancar el programa de nuevo; si ` +
    'no sirve, volver a instalarlo.',
  screen: ({ widthPx, heightPx, scale, distance, pxPerMm, measured }) =>
    `La ventana tiene ${widthPx} por ${heightPx} puntos con escala del ${Math.round(scale * 100)} %. ` +
    `Se lee desde ${plain(distance)} m, con ${fixed(pxPerMm, 2)} puntos por milímetro, ` +
    (measured
      ? 'medido con una tarjeta.'
      : 'que es una suposición: medir la pantalla en «Pantalla y teclas».'),
  voices: {
    'cannot-speak': 'Este navegador no puede hablar. Las indicaciones solo se muestran en pantalla.',
    none: 'No hay ninguna voz en español que funcione sin red, así que las indicaciones solo se muestran en pantalla.',
  },
  voiceUsed: ({ voice, on }) =>
    on
      ? `Las indicaciones se dicen con la voz ${voice}.`
      : `Las indicaciones no se dicen en voz alta. La voz ${voice} está disponible: activarla en «Instrumentos y voz».`,
  instruments: {
    none: 'No hay anotado ningún instrumento por puerto serie.',
    'no-serial': 'Este navegador no tiene Web Serial: aquí no se pueden leer instrumentos por puerto serie.',
  },
  instrumentsOpen: ({ open, names }) => `${names.join(', ')}: ${open} de ${names.length} conectados.`,

  lines: {
    program: ({ version, electron, node, platform, arch }) =>
      `Bedplate ${version} con ${electron === null ? '' : `Electron ${electron} y `}` +
      `Node ${node}, ${platform} ${arch}.`,
    host: ({ host, why }) => `Funciona en el host ${host}: ${why}.`,
    'folder-closed': ({ folder }) => `Este usuario no puede escribir en la carpeta de datos ${folder}.`,
    'folder-to-come': ({ folder }) =>
      `La carpeta de datos ${folder} aún no existe; se crea en el primer arranque.`,
    'folder-open-to-others': ({ folder }) =>
      `En la carpeta de datos ${folder} se puede escribir, pero otros usuarios de este ordenador pueden leerla.`,
    'folder-of-this-user': ({ folder }) =>
      `En la carpeta de datos ${folder} puede escribir solo este usuario.`,
    'disk-full': ({ megabytes }) =>
      `En su disco solo quedan libres ${megabytes} MB. Liberar espacio antes de continuar.`,
    'disk-free': ({ megabytes }) => `En su disco hay libres ${megabytes} MB.`,
    'disk-unknown': () => 'No se conoce el espacio libre de su disco.',
    'record-to-come': () => 'Aún no hay registro; se crea en el primer arranque.',
    'record-in-use': () => 'El registro está en uso: Bedplate está en marcha.',
    'record-closed': ({ why }) => why,
    'record-opens': ({ builds: count, megabytes }) =>
      `El registro se abre; contiene ${builds(count)} en ${plain(megabytes)} MB.`,
    'photos-there': ({ photos, megabytes }) =>
      `Los montajes tienen ${counted(photos, 'foto', 'fotos')} en ${plain(megabytes)} MB; todo como se registró.`,
    'photos-not-there': ({ photos, damaged, missing }) =>
      `De ${counted(photos, 'foto', 'fotos')}: ${damaged} dañadas y ${missing} ausentes. A los montajes ` +
      'no les afecta. Verificar todo el archivo para ver cuáles son.',
    'shop-connected': ({ address, entries }) =>
      `Unido en ${address}. ${entries === 0 ? 'Nada espera ser enviado.' : `${counted(entries, 'entrada espera', 'entradas esperan')} ser ${entries === 1 ? 'enviada' : 'enviadas'}.`}`,
    'shop-not-reached': ({ why, since, entries }) =>
      `${why}${since === null ? '' : ` Así desde ${dayAndTime(since)}.`} ${counted(entries, 'entrada espera', 'entradas esperan')} aquí ser ${entries === 1 ? 'enviada' : 'enviadas'}.`,
    'shop-refused': ({ refused, apart }) =>
      `Rechazados: ${counted(refused, 'montaje', 'montajes')}; continuados por separado en dos bancos: ${counted(apart, 'montaje', 'montajes')}. Véase la página «Taller».`,
    'backup-none': (facts) => `No hay copia de seguridad. ${secondFolderText(facts)}`,
    'backup-of-later': (facts) =>
      `La última copia de seguridad lleva fecha ${day(facts.on)}, y el reloj de este ordenador marca ${day(facts.today)}. Uno de los dos ` +
      `está mal. ${secondFolderText(facts)}`,
    'backup-newest': (facts) =>
      `La última copia de seguridad tiene ${ageText(facts.days)} (${builds(facts.builds)}, ` +
      `${counted(facts.entries, 'entrada', 'entradas')}, control ${facts.head}).` +
      (facts.broken === 0
        ? ''
        : ' No todo estaba como se confirmó cuando se hizo; verificar todo el archivo.') +
      ` ${secondFolderText(facts)}`,
  },
}

function secondFolderText({ secondFolder }: OfSecondFolder): string {
  return secondFolder === null ? 'No hay segunda carpeta elegida.' : `La segunda carpeta es ${secondFolder}.`
}

function ageText(days: number): string {
  if (days <= 0) return 'menos de un día'
  return days === 1 ? 'un día' : `${days} días`
}
