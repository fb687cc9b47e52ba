import type { Words } from '../../words.ts'

export const signals: Words['signals'] = {
  DANGER: 'PELIGRO',
  WARNING: 'ADVERTENCIA',
  CAUTION: 'PRECAUCIÓN',
  NOTICE: 'AVISO',
}

export const dangers: Words['dangers'] = {
  'heavy-lift':
    'Una pieza pesada que resbale puede aplastar una mano o un pie. Levantarla con polipasto o entre dos personas, sin poner las manos debajo.',
  'turning-crank':
    'Las bielas y los contrapesos de un cigüeñal que gira pueden aplastar los dedos. Girarlo por su extremo, despacio, sin manos de nadie dentro del cárter.',
  'hot-part':
    'Una pieza caliente puede quemar gravemente las manos. Usar guantes térmicos y no dejarla donde alguien la toque.',
  'spring-load':
    'Un muelle o un anillo de retención bajo tensión puede saltar a un ojo. Usar protección ocular y cubrirlo con una mano hasta que asiente.',
  'press-load':
    'Una pieza que resbale bajo la prensa puede salir disparada. Usar protección ocular, colocarla a escuadra y apartar las manos.',
  'compressed-air':
    'El aire comprimido puede lanzar virutas a un ojo. Usar protección ocular y no apuntar nunca a nadie.',
  solvent:
    'El disolvente puede inflamarse, y su vapor puede causar desmayo. Abrir una puerta, alejar llamas y usar guantes.',
  'sealant-on-skin':
    'El sellador sin curar irrita la piel y los ojos. Usar guantes; retirarlo en seco y lavar después con jabón.',
  'sharp-edge': 'Las puntas de los segmentos y los cantos mecanizados cortan. Usar guantes al manipularlos.',
  'sealant-in-oil-way':
    'El sellador en un conducto de aceite deja sin aceite un cojinete. Hacer el cordón estrecho y lejos de todos los agujeros.',
  'journal-scratch':
    'Un tornillo o una biela que toque un muñón lo raya. Poner fundas en las roscas y guiar las bielas con la mano.',
  'dirt-in-joint':
    'Una viruta o un hilo de trapo bajo un semicojinete o en la unión altera la holgura. Limpiar las dos caras y mirar otra vez.',
}
