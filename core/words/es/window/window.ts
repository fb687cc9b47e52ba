import type { Words } from '../../words.ts'

export const window: Words['window'] = {
  skip: 'Ir al contenido de la página',
  help: 'Ayuda',
  openingRecord: 'Abriendo el registro …',
  pageNotLoaded:
    'No se pudo cargar esta página. Comprobar que Bedplate sigue en marcha y volver a cargar la ventana.',
}
