import type { trayForm as english } from '../../en/bearings/tray-form.ts'
import { listed } from '../formats.ts'
import { capital } from '../../formats/index.ts'
import { namesOf } from '../halves.ts'

export const trayForm: typeof english = {
  heading: 'la bandeja',
  choose: 'Elegir de esta bandeja',
  count: 'Contar lo que hay en la estantería; dejar vacía la clase que no haya.',
  bothAre: ({ split }) => `${capital(listed(namesOf(split)))} son`,
  halves: { alike: 'la misma pieza', differ: 'distintas' },
  shellsOf: ({ label }) => `Semicojinetes de ${label}`,
  wall: ({ unit }) => `Pared, ${unit}`,
  worn: ({ undersize, wall }) =>
    `Un semicojinete usado${undersize === null ? '' : ` de ${undersize}`} se puede volver a montar desde una pared de ${wall}. Medirlo en el centro.`,
  takeAway: ({ label }) => `Quitar ${label}`,
  addSingle: 'Un semicojinete suelto con la pared medida',
  back: '← Volver a los semicojinetes',
  withoutTray: 'Elegir sin bandeja',
}
