import type { measureDrill as english } from '../../en/practice/measure-drill.ts'

const gaugeUnits = { mm: 'mm', in: 'pulgadas' }

export const measureDrill: typeof english = {
  instruments: {
    feelers: 'Galgas de espesores',
    strip: 'Hilo calibrado',
    micrometer: 'Micrómetro',
    'bore-gauge': 'Alexómetro',
  },
  drawn: ({ instrument, unit }) => `${instrument}, en ${gaugeUnits[unit]}`,
  asks: {
    feelers: 'Estas láminas entran justas juntas. ¿Cuánto mide la abertura?',
    strip: 'Mover la escala hasta que una banda sea tan ancha como el hilo. ¿Cuál era la holgura?',
    micrometer: '¿Qué marca el micrómetro?',
    'bore-gauge':
      'El alexómetro se puso a 0 en el anillo y ahora está en el alojamiento, en su punto de inversión. ¿Cuánto mide el alojamiento?',
  },
  hints: {
    feelers: null,
    strip: null,
    micrometer:
      'Leer el cilindro graduado hasta el borde, después el tambor en la línea larga, después la línea del cilindro por encima de ella que coincide con una del tambor.',
    'bore-gauge': 'Un alojamiento menor empuja el palpador hacia dentro, y la aguja va en sentido horario.',
  },
  zoom: 'Dos dedos, la rueda, o + y − lo muestran más grande.',
  range: ({ from, to, unit }) => `${from} a ${to} ${unit}`,
  dial: {
    count: ({ count, unit }) => `${count} ${unit}`,
    ring: ({ ring, unit }) => `anillo ${ring} ${unit}`,
  },
  moveScale: { up: 'Subir la escala', down: 'Bajar la escala' },
  reads: ({ unit }) => `Lectura, en ${gaugeUnits[unit]}`,
  unreadable: 'Escribir un número, con coma o punto.',
  seen: {
    range: ({ range }) => `Micrómetro de ${range}`,
    sleeve: ({ at, unit }) => `Cilindro graduado: la última línea a la vista es la de ${at} ${unit}`,
    thimble: ({ line }) => `Tambor: la línea larga está en ${line} o la ha pasado`,
    vernier: ({ line }) => `Nonio: la línea ${line} coincide con una del tambor`,
    ring: ({ ring, unit }) => `Alexómetro, puesto a 0 en un anillo de ${ring} ${unit}`,
    pointer: ({ lines, count, unit, way }) =>
      way === 'none'
        ? 'Aguja en 0'
        : `Aguja a ${lines} ${lines === 1 ? 'división' : 'divisiones'} de ${count} ${unit} del 0, en sentido ${way === 'clockwise' ? 'horario' : 'antihorario'}`,
  },
  strip: {
    beside: ({ band, unit, fit }) => {
      const fits = {
        alike: 'tan ancha como el hilo',
        narrower: 'más estrecha que el hilo',
        wider: 'más ancha que el hilo',
      }
      return `Junto al hilo: la banda de ${band} ${unit}, ${fits[fit]}`
    },
  },
  feeler: {
    blade: ({ blade, unit }) => `Lámina de ${blade} ${unit}`,
  },
  off: ({ by, unit, way }) => `${by} ${unit} de ${way === 'more' ? 'más' : 'menos'}.`,
  misreads: {
    turn: ({ turn, unit }) =>
      `Una vuelta del tambor son ${turn} ${unit}: mirar qué línea del cilindro graduado es la última a la vista.`,
    base: ({ range }) => `Este micrómetro es de ${range}: lo que marca se suma al extremo inferior.`,
    vernier:
      'Cilindro graduado y tambor están bien. La última cifra es el número de la línea por encima de la larga que coincide con una del tambor.',
    thimble:
      'El cilindro graduado está bien. En el tambor cuenta la última línea que ha pasado la línea larga.',
    sign: 'Sentido equivocado: en sentido horario el palpador se empujó hacia dentro, y el alojamiento es menor que el anillo.',
    ring: 'Eso es lo que marca el reloj: se suma al anillo, o se le resta.',
    lines: 'El sentido está bien. Contar las líneas desde el último número que ha pasado la aguja.',
    blade: 'Falta sumar una de las láminas.',
    band: 'Es otra banda de la escala. Cuanto más ancho el hilo, menor la holgura.',
    other: 'Leerlo parte por parte, y sumar.',
  },
}
