import type { Words } from '../../words.ts'
import { day, fixed, plain } from '../formats.ts'

const parityLetters = { none: 'N', even: 'E', odd: 'O' }

export const instruments: Words['instruments'] = {
  title: 'Instrumentos y voz',
  onCable: 'Instrumentos por puerto serie',
  about:
    'Un medidor o una llave con puerto serie (USB o RS-232) envía su lectura al campo que la pide, igual que uno que escribe. Un instrumento que escribe como un teclado no necesita figurar aquí.',
  cannot:
    'Este navegador no tiene Web Serial, así que aquí no se pueden leer instrumentos por puerto serie. Usar Chromium, Chrome, Edge o el programa de escritorio, o un instrumento que escriba como un teclado.',
  add: 'Añadir un instrumento',
  none: 'Aún no hay anotado ningún instrumento.',
  connect: 'Conectar …',
  disconnect: 'Desconectar',
  remove: 'Quitar',
  keep: 'Guardar',
  cancel: 'Cancelar',
  change: 'Cambiar',

  // What is written down of one
  name: 'Nombre',
  number: 'Número que lleva (opcional)',
  unit: 'Mide en',
  feeds: 'Sirve para',
  fields: {
    torque: 'par de un apriete',
    angle: 'ángulo de un apriete',
    length: 'longitud de un tornillo, abertura de una unión',
    sizes: 'medidas de alojamientos y muñones',
    limits: 'mediciones con límites',
    checks: 'comprobaciones',
  },
  baudRate: 'Velocidad en baudios',
  dataBits: 'Bits de datos',
  parity: 'Paridad',
  parities: { none: 'ninguna', even: 'par', odd: 'impar' },
  stopBits: 'Bits de parada',
  deviation: ({ unit, isShare }) =>
    isShare ? 'Error posible, en % de la lectura (opcional)' : `Error posible, en ${unit} (opcional)`,
  calibratedOn: 'Calibrado el (opcional)',
  nameMissing: 'Darle un nombre que lo distinga de los demás.',
  deviationWrong: 'El error es un número de 0 a 100.',
  inShort: ({ unit, baudRate, dataBits, parity, stopBits }) =>
    `${unit} · ${baudRate} ${dataBits}${parityLetters[parity]}${stopBits}`,
  offBy: ({ deviation, unit, isShare }) =>
    isShare ? `error posible ±${fixed(deviation, 1)} %` : `error posible ±${plain(deviation)} ${unit}`,
  deviationUnknown: 'nadie ha anotado su error posible',
  calibrated: ({ on }) => `calibrado el ${day(on)}`,
  calibrationOld: ({ on }) => `calibrado el ${day(on)}, hace más de un año: hacerlo calibrar`,
  calibrationToCome: ({ on }) =>
    `calibrado el ${day(on)}, fecha que aún no ha llegado: corregir la fecha, o el reloj de este ordenador`,
  calibrationUnknown: 'no consta ninguna calibración',

  readWith: ({ name, number }) => `leído con ${name}${number === '' ? '' : ` ${number}`}`,
  sentTyped: 'enviado por un instrumento que escribe',

  // How its line stands
  states: {
    closed: 'Sin conectar.',
    opening: 'Conectando …',
    open: '✓ Conectado.',
    unplugged: '! Desenchufado. Se vuelve a leer en cuanto se enchufe.',
    busy: '! El puerto no se puede abrir. Puede que lo use otro programa, o que los ajustes no sean posibles: cerrar el otro programa y conectar de nuevo.',
    garbled:
      '! Lo que llega no es una lectura. Comparar velocidad, bits de datos, paridad y bits de parada con el manual del instrumento y conectar de nuevo.',
    streams:
      '! Envía todo el tiempo, así que no se sabe qué lectura es la buena. Ajustarlo para que envíe al pulsar su botón.',
    'not-chosen': 'No se eligió ningún puerto.',
    refused: '! El sistema no deja que el programa lea puertos serie.',
  },
  lastSent: ({ sent }) => `Última lectura: ${sent}`,

  // In the panel of a build
  unplugged: ({ name }) => `${name}: desenchufado. Lo que mide se puede escribir, o enchufarlo de nuevo.`,
  unpluggedMidLine: ({ name }) =>
    `${name}: desenchufado a media lectura. Lo recibido se ha descartado: enchufarlo y enviarla de nuevo.`,
  pluggedIn: ({ name }) => `✓ ${name}: conectado de nuevo.`,
  unitUnknown: ({ name, unit }) =>
    `${name} envió un número en «${unit}», que aquí no es unidad de ninguna lectura. Se ha descartado: poner el instrumento en otra unidad.`,
  otherField: ({ name, sent }) => `${name} envió ${sent}, que no va en este campo. Se conserva.`,
  streams: ({ name }) =>
    `${name} envía todo el tiempo: no se toma nada. Ajustarlo para que envíe al pulsar su botón.`,
  garbled: ({ name }) =>
    `Lo que envía ${name} no es una lectura. Comparar sus ajustes en «Instrumentos y voz».`,
  seen: 'Visto',
}
