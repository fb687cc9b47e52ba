import type { Words } from '../../words.ts'
import { counted, day } from '../formats.ts'
import { drawn } from './drawn.ts'
import { editorCheck } from './editor-check.ts'
import { editorFields } from './editor-fields.ts'
import { editorMore } from './editor-more.ts'
import { editorPicture } from './editor-picture.ts'
import { editorSteps } from './editor-steps.ts'

const things = ({ count }: { readonly count: number }) => counted(count, 'elemento', 'elementos')

export const editor: Words['editor'] = {
  fields: editorFields,
  more: editorMore,
  drawn,
  steps: editorSteps,
  check: editorCheck,
  picture: editorPicture,
  pages: {
    page: 'Página del manual',
    document: 'Documento, si es otro',
    thatOfTheSpec: 'el manual de la ficha',
    enteredBy: ({ by, on }) => `Introducido por ${by} el ${day(on)}`,
  },
  title: ({ name, revision }) => `${name}, revisión ${revision}`,
  nothingToUndo: 'Deshacer',
  nothingToRedo: 'Rehacer',

  face: 'Cara',
  actions: {
    place: 'Colocar',
    move: 'Mover',
    align: 'Alinear',
    mirror: 'Reflejar',
    repeat: 'Repetir',
    order: 'Orden',
    group: 'Grupo',
    position: 'Posición',
    remove: 'Quitar',
    picture: 'Imagen',
  },
  whatToDo: 'Qué hacer en el dibujo',
  selected: (facts) => (facts.count === 0 ? 'No hay nada elegido.' : `${things(facts)} en la selección`),
  fieldPicture: 'Lo que mide el campo',
  chooseByTap:
    'Tocar lo que se va a modificar; tocado de nuevo, sale de la selección. Al arrastrarlo se mueve.',
  clear: 'Anular la selección',
  place: {
    what: 'Qué se coloca',
    kinds: { fastener: 'Fijación', dowel: 'Pasador de centrado', 'oil-passage': 'Conducto de aceite' },
    group: 'Grupo',
    tap: 'Tocar donde va. Los apoyos, el eje y lo que ya hay lo atraen.',
    noGroup: 'Aún no hay grupos de fijaciones: añadir antes uno en «Grupos».',
    oilWay: 'conducto de aceite',
    where: ({ saddle, side }) => (side === '' ? `en ${saddle}` : `en ${saddle}, ${side}`),
    onFace: ({ side }) => (side === '' ? 'en el eje' : side),
    diameter: 'Diámetro',
    sizeAlong: 'Medida a lo largo',
    sizeAcross: 'Medida a lo ancho',
    size: 'La medida la da el manual: no se inventa ninguna. Vacía, vale la del último de esta cara.',
    put: 'Colocarlo ahí',
  },
  paste: {
    title: 'Lugares de una tabla',
    columns: 'x, y y, si los hay, número y grupo: de una hoja de cálculo o un fichero CSV',
    unit: 'Los números sin unidad están en',
    fromFile: 'De un fichero CSV',
  },
  move: {
    step: 'Paso',
    keys: 'Las teclas de flecha mueven este paso.',
    directions: { left: 'A la izquierda', up: 'Arriba', down: 'Abajo', right: 'A la derecha' },
  },
  align: {
    row: 'En fila con el primero',
    column: 'En columna con el primero',
    spread: 'Repartir por igual entre los dos extremos',
    needs: ({ count }) => `Elegir al menos ${count}.`,
  },
  mirror: {
    explained: 'De cada uno pasa una copia al otro lado del eje, con número propio.',
    go: 'Reflejar en el eje',
  },
  repeat: {
    count: 'Cuántos en total',
    along: 'Separación a lo largo del cigüeñal',
    across: 'Separación a lo ancho',
    go: 'Repetir en fila',
    centreAlong: 'Centro, a lo largo',
    centreAcross: 'Centro, a lo ancho',
    circle: 'Repetir en círculo',
  },
  position: {
    along: 'A lo largo, desde el extremo delantero',
    across: 'A lo ancho, desde el eje',
    one: 'Elegir uno para escribir su lugar, o dos para ver a qué distancia están.',
    apart: ({ along, across, straight }) =>
      `A lo largo ${along}, a lo ancho ${across}, en recto ${straight}.`,
    where: 'Su lugar en palabras',
    number: 'Número en el dibujo',
  },
  remove: {
    go: 'Quitar lo elegido',
    losesOrder: ({ order, procedure, count }) =>
      `El orden ${order} de ${procedure} pierde ${counted(count, 'fijación', 'fijaciones')}.`,
    losesPass: ({ procedure, pass }) => `La pasada ${pass} de ${procedure} las nombra.`,
  },
  order: {
    which: 'Orden',
    name: 'Nombre del orden',
    called: ({ number }) => `Orden ${number}`,
    none: 'Ningún procedimiento aprieta aún esta cara.',
    addProcedure: 'Añadir un procedimiento de apriete',
    proposal:
      'El orden va del centro hacia fuera y la primera pasada es a mano, sin valor: ambas son propuestas hasta que se toque el orden del manual y se escriban sus pasadas.',
    procedureName: ({ face }) => `Apretar: ${face}`,
    tap: 'Tocar las fijaciones en el orden del manual. La última, tocada de nuevo, se retira.',
    begin: 'Empezar de nuevo con el próximo toque',
    begun: 'El próximo toque es el número 1.',
    soFar: ({ done, of }) => `${done} de ${of} en el orden`,
    pattern: ({ count }) => `O formarlo con ${counted(count, 'fijación', 'fijaciones')} según un patrón`,
    mend: 'Corregir',
    fastener: 'Fijación',
    toPlace: 'al puesto',
    moveIt: 'Moverla ahí',
    swap: 'Intercambiarla con la que está ahí',
    inPlace: ({ place, number }) => `${place}: fijación ${number}`,
  },
  group: {
    which: 'Grupo que se asigna',
    tap: 'Tocar las fijaciones que le pertenecen.',
  },

  sections: {
    drawing: 'Dibujo',
    case: 'Cárter',
    faces: 'Caras',
    groups: 'Grupos',
    passes: 'Pasadas',
    fits: 'Cojinetes',
    steps: 'Pasos',
    parts: 'Piezas',
    rest: 'Lo demás',
    audit: 'Comprobación',
    check: 'Cotejo',
  },
  sectionWithFindings: ({ section, count }) => (count === 0 ? section : `${section} (${count})`),
  forms: 'Formularios',
  audit: {
    none: 'La comprobación no encuentra nada.',
    faults: ({ count }) => counted(count, 'fallo', 'fallos'),
    doubts: ({ count }) => counted(count, 'duda', 'dudas'),
    weights: { fault: 'Fallo', doubt: 'Duda' },
    show: 'Mostrar',
    accept: 'Aceptar, porque …',
    why: 'Por qué está bien así',
    acceptIt: 'Aceptarla así',
    leave: 'Dejarla abierta',
    accepted: ({ count }) => `Aceptadas: ${counted(count, 'duda', 'dudas')}`,
    because: ({ by, on, reason }) => `Aceptada por ${by} el ${day(on)}, porque: ${reason}`,
    openAgain: 'Volver a dudar',
  },
  passes: {
    none: 'Aún no hay procedimiento. Elegir «Orden» sobre el dibujo y luego «Añadir un procedimiento de apriete».',
    procedure: 'Procedimiento',
    caption: 'Pasadas, como las da el manual',
    table: 'Resumen de las pasadas',
    columns: { number: 'N.º', kind: 'Tipo', value: 'Valor', order: 'Orden' },
    valueExample: '30 ± 3 lbf·ft',
    inAll: 'en total',
    add: 'Añadir una pasada',
    up: ({ pass }) => `Subir la pasada ${pass}`,
    takeOut: ({ pass }) => `Quitar la pasada ${pass}`,
    field: ({ pass, field }) => `Pasada ${pass}: ${field}`,
    grownOrder: ({ order }) =>
      `El orden «${order}» se formó con un patrón y aún no es el del manual: compararlo o tocar el del manual.`,
    new: 'Pasada nueva',
    becomes: ({ pass, kind }) => `La pasada ${pass} pasa a: ${kind}`,
    change: 'Cambiarla',
    leave: 'Dejarla así',
    needs: {
      value: 'Valor, con límites si los da',
      least: 'Alargamiento desde',
      most: 'Alargamiento hasta',
      torqueLeast: 'Par desde',
      torqueMost: 'Par hasta',
      instruction: 'Qué se hace',
    },
  },
  groups: {
    caption: 'Grupos de fijaciones: todas las que son una misma pieza',
    add: 'Añadir un grupo',
    new: 'Grupo nuevo',
    used: ({ count }) => counted(count, 'fijación', 'fijaciones'),
    usual:
      'Un grupo nuevo tiene cabeza hexagonal, va en agujeros roscados y no lleva arandelas mientras no se diga otra cosa.',
    threadMeans: ({ diameter, pitch, toTheInch }) =>
      pitch === null
        ? `diámetro ${diameter}, ${toTheInch} hilos por pulgada`
        : `diámetro ${diameter}, paso ${pitch}`,
    more: 'Más, si el manual lo da',
    shank: 'Vástago rebajado, diámetro',
    frictionClass: 'Clase de rozamiento (VDI 2230)',
    includesPrevailing: 'Los pares incluyen el par de autofrenado',
    pastMost: 'Más allá del máximo de una pasada',
    pastMosts: { replace: 'se sustituye', 'begin-again': 'empieza de nuevo' },
  },
  fits: {
    which: 'Cojinetes',
    none: 'Esta ficha no tiene cojinetes que se elijan por marcas.',
    mark: 'Marca',
    band: 'Medida, desde y hasta',
    bandOf: ({ of }) => `Medida de ${of}`,
    grades: 'Semicojinetes',
    grade: 'Clase',
    wall: 'Pared, desde y hasta',
    chart: 'Tabla de selección',
    cell: ({ housing, journal }) =>
      `Semicojinetes para la marca de alojamiento ${housing} y la de muñón ${journal}`,
    bandsGive: ({ upper, lower }) => `las medidas dan ${upper === lower ? upper : `${upper}/${lower}`}`,
    disagree: ({ count }) =>
      `${counted(count, 'celda sale', 'celdas salen')} de los límites, o las medidas dan otros semicojinetes.`,
    grow: 'Formarla con las medidas',
    paste: 'Pegar una tabla',
    pasteHere: 'La tabla con sus marcas, de una hoja de cálculo o un fichero CSV',
    takeIn: 'Incorporarla',
    noChart: 'Dejar fuera la tabla',
    unknown: ({ count }) =>
      `Para ${counted(count, 'par de marcas', 'pares de marcas')} falta una medida: ahí no se puede formar nada.`,
  },
  asPrinted:
    'Escribir cada valor como lo imprime el manual, en ambas unidades si da ambas: 30 lbf·ft (41 N·m). Dos que no coincidan en sus últimas cifras no se aceptan.',
  lists: {
    takeOut: ({ name }) => `Quitar ${name}`,
  },
}
