import type { Words } from '../../words.ts'
import { counted, fixed, plain } from '../formats.ts'

export const shopSetup: Words['shopSetup'] = {
  usage: `npm run shop -- ORDEN DIRECCIÓN   instalar en PostgreSQL el archivo que comparten los bancos de un taller

  init      crear los roles, el esquema y las tablas, e indicar lo que necesita cada banco; repetido con un número
            mayor, se añaden los accesos que falten
              --benches N   cuántos bancos reciben acceso (1)
  migrate   llevar las tablas a la versión de este programa
  status    decir qué contiene y cuánto ocupa
  lists     decir si las personas y las llaves dinamométricas son una lista para todos los bancos o cada banco tiene
            la suya; elegirlo
              --people one|own    --wrenches one|own    (one: una para todos, own: una por banco)
  rebuild   hacer de nuevo la lista de montajes y las palabras con que se encuentran a partir de las entradas; los
            bancos siguen trabajando mientras tanto

La dirección es la del propietario, como postgres://owner@server/database, con ?shop=NOMBRE si una base de datos tiene
varios talleres y ?sslrootcert=FICHERO para la autoridad que emitió el certificado. La contraseña puede ir en PGPASSWORD.`,
  ready: ({ shop, database, roles }) =>
    [
      `El archivo del taller «${shop}» está listo en la base de datos «${database}».`,
      ...(roles.length === 0
        ? [
            'Todos los accesos existen ya. Nadie guarda sus contraseñas: para tener otras, eliminar antes el rol (DROP ROLE).',
          ]
        : ['Estas contraseñas se muestran una sola vez y no se guardan. Dar a cada banco la suya:']),
      ...roles.map(
        ({ kind, address, password }) =>
          `\n  ${kind === 'bench' ? 'Un banco' : 'Solo lectura'}\n    dirección   ${address}\n    contraseña  ${password}`,
      ),
    ].join('\n'),
  lists: ({ shop, people, wrenches }) =>
    [
      `En el taller «${shop}»`,
      people
        ? '  las personas son una lista para todos los bancos'
        : '  cada banco tiene su propia lista de personas',
      wrenches
        ? '  las llaves dinamométricas son una lista para todos los bancos'
        : '  cada banco tiene su propia lista de llaves dinamométricas',
    ].join('\n'),
  rebuilt: ({ shop, builds, changed, unread }) =>
    [
      `La lista del taller «${shop}» se hizo de nuevo a partir de las entradas de ${counted(builds, 'montaje', 'montajes')}.`,
      changed === 0
        ? '  era tal como dicen las entradas'
        : `  ${counted(changed, 'montaje figuraba', 'montajes figuraban')} de otro modo que en las entradas; corregido`,
      ...(unread === 0
        ? []
        : [
            `  ${counted(unread, 'montaje', 'montajes')} sin cambio: este programa no puede leer las entradas o la ficha`,
          ]),
    ].join('\n'),
  migrated: ({ shop, from, to }) =>
    from === to
      ? `Las tablas del taller «${shop}» son ya de la versión ${to}.`
      : `Las tablas del taller «${shop}» pasaron de la versión ${from} a la ${to}.`,
  status: ({ shop, server, version, builds, entries, photos, forks, benches, tables }) => {
    const bytes = tables.reduce((sum, table) => sum + table.bytes, 0)
    return [
      `Taller «${shop}» en PostgreSQL ${server}, tablas de la versión ${version}`,
      `  ${counted(builds, 'montaje', 'montajes')}, ${counted(entries, 'entrada', 'entradas')}, ${counted(photos, 'foto', 'fotos')}`,
      forks === 0
        ? '  ninguna bifurcación abierta'
        : `  ${counted(forks, 'montaje', 'montajes')} con bifurcación sin resolver`,
      `  ${fixed(bytes / 1e6, 1, 'MB')} en total${builds === 0 ? '' : `, ${plain(Math.round(bytes / builds))} bytes por montaje`}`,
      ...tables.map(({ table, bytes: its }) => `    ${table}: ${fixed(its / 1e6, 2, 'MB')}`),
      ...benches.map(
        ({ name, program, seenAtUtc }) => `  ${name}: visto por última vez ${seenAtUtc}, Bedplate ${program}`,
      ),
    ].join('\n')
  },
}
