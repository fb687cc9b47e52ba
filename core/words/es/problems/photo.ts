import type { OfPhoto, photoWords as english } from '../../en/problems/photo.ts'

const anotherPicture = 'Elegir una imagen JPEG, PNG o WebP.'
const whose = ({ step }: OfPhoto) => (step === null ? 'La foto del montaje' : `La foto del paso ${step}`)
const untouched =
  'Al montaje no le afecta. Importar una exportación que tenga la foto, o restaurar una copia de seguridad.'

export const photoWords: typeof english = {
  'photo-withdrawn': () =>
    'Esta foto está retirada: ya no se muestra. Su entrada y su hash siguen en el registro.',
  'photo-too-large': ({ name, megabytes, most }) =>
    `${name} ocupa ${megabytes} MB, y una foto puede ocupar ${most}. Hacer una más pequeña, o guardarla antes reducida.`,
  'photo-empty': ({ name }) => `${name} es un fichero vacío. ${anotherPicture}`,
  'photo-no-picture': ({ name }) => `${name} no es una imagen. ${anotherPicture}`,
  'photo-kind-unread': ({ name, kind }) =>
    `${name} es un fichero ${kind}, que aquí no se puede abrir. Guardarlo como JPEG; un teléfono lo hace si su cámara está en el formato ` +
    'más compatible.',
  'photo-too-many-pixels': ({ name, megapixels, most }) =>
    `${name} tiene ${megapixels} millones de píxeles, y se pueden abrir ${most}. Guardarla antes reducida.`,
  'photo-damaged-file': ({ name }) =>
    `${name} empieza como una imagen y no se puede abrir: está cortada o dañada. Copiarla de nuevo, o elegir otra.`,
  'photo-not-prepared': () =>
    'No es una foto preparada por la ventana de Bedplate: un JPEG entero, reducido, con nada más que la imagen. Añadirla ' +
    'en la ventana.',
  'photo-several': () => 'Es más de un fichero. Añadir las fotos de una en una.',
  'photo-too-many': ({ most }) =>
    `Este montaje tiene ${most} fotos, y no se guardan más por montaje. Escribir una nota en su lugar.`,
  'photo-there-already': () => 'Esta misma foto ya está aquí. Añadir otra.',
  'photo-at-no-step': () =>
    'Con el montaje abierto, una foto pertenece a uno de sus pasos. Elegir antes el paso.',
  'photo-without-bytes': () => 'Una foto va con su imagen. Añadirla en la ventana.',
  'photo-damaged': (facts) => `${whose(facts)} está dañada: sus bytes no son los registrados. ${untouched}`,
  'photo-missing': (facts) => `${whose(facts)} falta: sus bytes no están en el registro. ${untouched}`,
  'photo-unknown': () => 'Esta entrada no es una foto. Mirar otra vez el montaje.',
  'picture-points-near': (_) =>
    'Los dos puntos de la imagen son uno. Elegir dos muy separados: cuanto más lejos, más exacta queda la imagen.',
  'picture-places-same': (_) =>
    'Los dos puntos de la imagen caerían en el mismo lugar. Elegir dos cosas distintas del dibujo.',
  'picture-distance-none': (_) =>
    'La distancia debe ser mayor que 0. Escribirla como la da el manual: 120 mm.',
  'picture-missing': (_) => 'Ya no hay imagen bajo esta cara: otra ventana la retiró. Poner una de nuevo.',
  'picture-damaged': (_) =>
    'La imagen bajo esta cara está dañada: sus bytes no son los guardados. La ficha del motor no se ve afectada. Retirar la ' +
    'imagen y ponerla de nuevo.',
  'camera-refused': () =>
    'Aquí no se permite usar la cámara. Permitirla para esta página en el navegador o en los ajustes del sistema y pulsar ' +
    'de nuevo; o hacer la foto con otro aparato y añadirla como fichero.',
  'camera-none': () =>
    'No se ha encontrado ninguna cámara. Conectar una y pulsar de nuevo, o hacer la foto con otro aparato y añadirla como fichero.',
  'camera-in-use': () =>
    'La cámara no arranca; puede que la use otro programa. Cerrarlo y pulsar de nuevo, o añadir la foto como fichero.',
  'camera-stopped': () =>
    'La cámara se ha parado. Mirar el cable y pulsar de nuevo, o añadir la foto como fichero.',
  'note-empty': () => 'Aún no hay nada que anotar. Escribirlo antes.',
}
