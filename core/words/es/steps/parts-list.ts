import type { OfPart } from '../../en/steps/parts-list.ts'
import type { Words } from '../../words.ts'
import { counted } from '../formats.ts'

const inBuilds = (count: number) => counted(count, 'montaje', 'montajes')

const reuse: Words['partsList']['reuse'] = (rule) => {
  if (rule === 'new-each-time') return 'de un solo uso'
  const limits = [
    ...(rule.limit === undefined ? [] : [rule.limit]),
    ...(rule.uses === undefined ? [] : [`en ${inBuilds(rule.uses)} en total`]),
  ]
  return `reutilizable: ${limits.join('; ')}`
}
/** The count stands after the name, which is that of one: `Pistón (4)`. */
const times = ({ name, count }: OfPart) => (count === 1 ? name : `${name} (${count})`)

export const partsList: Words['partsList'] = {
  title: 'Piezas de este paso',
  order: 'Lista de pedido',
  times,
  part: ({ name, count, place }) => [{ strong: times({ name, count }) }, `, ${place}`],
  reuse,
  isInNew: (part) => `${times(part)}: ${part.count === 1 ? 'pieza nueva montada' : 'piezas nuevas montadas'}`,
  inNew: ({ count }) => (count === 1 ? 'Pieza nueva montada' : `Las ${count} piezas nuevas montadas`),
  otherwise: 'Otra cosa …',
  tickLater: 'Está montado, marcar piezas después',
  later: 'Marcar piezas después',
  takeBack: 'Quitar la marca',
  whyTakenBack: ({ name }) => `${name}: ¿por qué no cuenta como pieza montada?`,
  tick: ({ count, condition, before, reason, number }) =>
    `${reason === null ? '✓' : '!'} ${count} ${condition === 'new' ? (count === 1 ? 'nueva' : 'nuevas') : count === 1 ? 'reutilizada' : 'reutilizadas'}` +
    `${before === null ? '' : `, antes en ${inBuilds(before)}`}` +
    `${number === null ? '' : `, n.º ${number}`}` +
    `${reason === null ? '' : `, contra la ficha: ${reason}`}`,
  form: {
    condition: 'Son',
    conditions: { new: 'nuevas', 'used-again': 'reutilizadas' },
    count: ({ left }) => `Cuántas de ${left}`,
    before: 'En cuántos montajes estuvieron antes',
    number: 'Número del proveedor, si lo hay',
    why: {
      'new-each-time': 'La ficha las pide nuevas cada vez. ¿Por qué se reutilizan estas?',
      'used-up': 'Han llegado a su límite. ¿Por qué se reutilizan?',
    },
    limit: ({ limit }) => `Solo: ${limit}.`,
    tick: 'Anotarlo así',
    countWrong: ({ left }) => `Escribir un número entero de 1 a ${left}.`,
    beforeWrong: 'Escribir en cuántos montajes estuvieron, un número entero desde 1.',
  },
  count: {
    whatFor:
      'Cada pieza de la lista está en el motor, o se indica dónde está. Mirar en todas las bandejas y debajo del banco.',
    accounted: ({ parts }) => `✓ Lista completa: ${counted(parts, 'pieza', 'piezas')}, nada por aclarar.`,
    left: ({ name, left, step }) => `${times({ name, count: left })} de «${step}»: sin marcar.`,
    where: ({ name, left, step }) =>
      `${times({ name, count: left })} de «${step}»: sin marcar. Si está en el motor, indicarlo arriba. Si no: ¿dónde, y por qué?`,
    usual: ['Sobra, no hace falta', 'Se quedó la pieza vieja'],
    noteLeftOver: 'Anotar como sobrante',
    leftOver: (facts) => `${times(facts)}, sobrante: ${facts.reason}`,
    done: 'El recuento es correcto',
    isDone: '✓ Contado.',
  },
  orderList: {
    title: 'Piezas por pedir',
    whatFor:
      'Lo que aún no está montado. Lo reutilizable se compra solo si la pieza vieja ha pasado su límite.',
    nothing: 'Todas las piezas de la lista están montadas.',
    part: 'Pieza',
    place: 'Lugar',
    count: 'Cantidad',
    when: 'Cuándo',
    number: 'Número del proveedor',
    for: 'Para',
    csv: 'Todo lo que hay que pedir, en CSV',
    shellsOf: ({ fit }) => `semicojinete, ${fit}`,
    grade: ({ grade, size }) => `clase ${grade}${size === null ? '' : `, ${size}`}`,
  },
  sheet: {
    title: 'Piezas',
    replaced: 'Nuevas',
    usedAgain: 'Reutilizadas',
    against: 'REUTILIZADAS CONTRA LA FICHA',
    againstOne: (facts) => `! ${times(facts)} (${facts.step}): ${facts.reason}`,
    left: 'Sobrante',
    open: 'Sin aclarar',
    part: 'Pieza',
    fitted: 'Montada',
    whenWho: 'Cuándo, quién',
    notFitted: ({ count }) => `! ${count} sin aclarar`,
    leftOver: ({ count, reason }) => `${count} sobrante${count === 1 ? '' : 's'}: ${reason}`,
  },
}
