import type { OfSetup, wrenchForPull as english } from '../../en/tightening/wrench-for-pull.ts'
import { plain } from '../formats.ts'

const setup = ({ wrench, adapter, angle }: OfSetup) =>
  adapter === null ? wrench : `${wrench} con ${adapter} a ${plain(angle)}°`

export const wrenchForPull: typeof english = {
  title: 'Llave',
  offer: 'Llaves …',
  set: ({ wrench, adapter, setting, torque }) => [
    `${wrench}${adapter === null ? '' : ` con ${adapter}`}: ajustar a `,
    { strong: setting },
    ...(torque === null ? [] : [`, que dan ${torque} en la fijación`]),
  ],
  another: 'Otra llave, sin adaptador: su escala muestra lo que recibe la fijación.',
  noneListed: 'La lista de llaves está vacía.',

  forThisPull: 'Llave para este apriete',
  usable: 'Llaves utilizables',
  setup,
  setTo: ({ best, setting, ...of }) => `${best ? 'La mejor: ' : ''}${setup(of)}: ajustar a ${setting}`,
  gives: ({ torque, rounding, deviation, least, most, exact }) =>
    `Da ${torque}, ${rounding === null ? 'justo el valor nominal' : `un ${rounding} % de diferencia por redondear a una marca`}` +
    `; con el ±${deviation} % de la llave, ${least} a ${most}.` +
    (exact === null ? '' : ` Con el adaptador, el ajuste exacto es ${exact}.`),
  inUse: '✓ En uso: las lecturas se toman con esta.',
  take: (of) => `Usar ${setup(of)}`,
  takeAnother: 'Usar otra llave, sin adaptador',
  notThese: 'No utilizables',
  notUsable: 'Llaves no utilizables',
}
