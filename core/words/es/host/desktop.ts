import type { Words } from '../../words.ts'

export const desktop: Words['desktop'] = {
  menus: { file: 'Fichero', edit: 'Edición', view: 'Ver' },

  pageFaults: {
    gone: 'La página de la ventana se ha cerrado.',
    hung: 'La página de la ventana ya no respondía.',
    'not-loaded': 'No se pudo cargar la página de la ventana.',
    'no-bridge': 'No se pudo conectar la página de la ventana con el programa.',
    'no-graphics': 'Se ha cerrado la parte del programa que dibuja en pantalla.',
  },
  pageFaultAgain: ({ fault }) => `${fault} Se cargó de nuevo una vez, y no sirvió.`,
  confirmedIsKept: 'Lo confirmado está en el disco.',
  inBrowser: ({ address }) =>
    `Se puede continuar en un navegador de este equipo mientras este mensaje esté abierto, en ${address}`,
  addressCopied: 'La dirección está copiada: pegarla en un navegador.',
  loadAgain: 'Cargar de nuevo la página',
  copyAddress: 'Copiar la dirección',
  end: 'Cerrar Bedplate',

  serial: {
    which: '¿En qué puerto está el instrumento?',
    none: 'No hay ningún puerto serie. Enchufar el instrumento y conectarlo de nuevo.',
    others: 'Otros …',
    cancel: 'Cancelar',
  },

  saving: {
    isThere: ({ name }) => `${name} ya existe. ¿Sustituirlo?`,
    otherName: 'Elegir otro nombre',
    replace: 'Sustituir',
    // Kinds of files
    pdf: 'PDF',
    table: 'Tabla (CSV)',
    drawing: 'Dibujo (SVG)',
    spec: 'Ficha de motor',
    exported: 'Montaje exportado',
    nameless: 'hoja de montaje',
    notDevice: ({ name }) => `fichero ${name}`,
  },
}
