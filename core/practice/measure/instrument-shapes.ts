import type { CircleShape, LineShape, Role, TextShape } from '../../layout/index.ts'

/**
 * Shapes of drawn instruments, in mm at the instrument's own size. All marks of an instrument lie in one plane, so that there is
 * nothing to look past: it has no parallax.
 */

export function segment(id: string, role: Role, points: readonly number[], width?: number): LineShape {
  return {
    ...{ kind: 'line', id, layer: 'parts', role, points, closed: false },
    ...(width !== undefined && { width }),
  }
}

export function area(id: string, role: Role, points: readonly number[]): LineShape {
  return { kind: 'line', id, layer: 'ground', role, points, closed: true }
}

export function rectangle(
  id: string,
  role: Role,
  left: number,
  top: number,
  width: number,
  height: number,
): LineShape {
  const [right, foot] = [left + width, top + height]
  return area(id, role, [left, top, right, top, right, foot, left, foot])
}

export function disc(id: string, role: Role, x: number, y: number, radius: number): CircleShape {
  return { kind: 'circle', id, layer: 'ground', role, x, y, radius }
}

export function writing(
  id: string,
  text: string,
  x: number,
  y: number,
  capital: number,
  anchor: TextShape['anchor'] = 'middle',
): TextShape {
  return {
    kind: 'text',
    id,
    layer: 'parts',
    role: 'gauge-number',
    x,
    y,
    text,
    capital,
    anchor,
    weight: 'regular',
  }
}
