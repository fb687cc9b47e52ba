import type { Words } from '../../words.ts'
import { plain } from '../formats.ts'

export const wrenches: Words['wrenches'] = {
  title: 'Llaves de este taller',
  back: 'Volver',
  line: ({ least, most, step, unit, made, adapters }) =>
    `${least} a ${most}, divisiones de ${plain(step)} ${unit}` +
    (made ? `, tipo ${made.type} clase ${made.class}` : '') +
    (adapters.length > 0 ? `, con ${adapters.join(', ')}` : ''),
  change: ({ name }) => `Cambiar ${name}`,
  remove: ({ name }) => `Quitar ${name}`,
  add: 'Añadir una llave',
  whatFor:
    'Para cada apriete se elige la llave entre estas: por su alcance, sus divisiones, su clase y sus adaptadores. ' +
    'La que se usa se registra con cada apriete: nombre, número, adaptador y día de calibración.',

  form: {
    title: 'Llave',
    name: 'Nombre',
    number: 'Su número',
    numberExample: 'como en la llave; va en la hoja',
    scaleIn: 'Escala en',
    lowest: ({ unit }) => `Marca más baja, ${unit}`,
    highest: ({ unit }) => `Marca más alta, ${unit}`,
    step: ({ unit }) => `De una marca a la siguiente, ${unit}`,
    minimum: ({ unit }) => `Mínimo indicado, ${unit}`,
    minimumExample: 'un quinto del final de escala',
    made: 'Tipo y clase (ISO 6789)',
    madeExample: 'por ejemplo II A',
    length: 'Del centro de la empuñadura al cuadradillo',
    lengthExample: 'p. ej. 450 mm, con adaptadores',
    calibratedOn: 'Calibrada el',
    pullsSince: 'Aprietes desde entonces',
    adapters: 'Adaptadores que alejan la fijación del cuadradillo',
    adapter: 'Adaptador',
    offset: 'Distancia',
    offsetExample: '40 mm',
    angle: 'Ángulo con el mango',
    angleExample: '0° en línea',
    removeAdapter: ({ name }) => `Quitar el adaptador ${name}`,
    removeThis: 'Quitar',
    addAdapter: 'Añadir un adaptador',
    keep: 'Guardar esta llave',
  },
}
