import { describe, expect, it } from 'vitest'
import type { Shape } from '../../../core/layout/index.ts'
import { Reconciler } from '../../../renderer/canvas/reconcile.ts'

interface Node {
  text: string
}

/** A layer that is only a list, and what was done to it. */
function listLayer() {
  const nodes: Node[] = []
  const done: string[] = []
  const reconciler = new Reconciler<Node>({
    create(shape) {
      const node = { text: textOf(shape) }
      nodes.push(node)
      done.push(`create ${shape.id}`)
      return node
    },
    change(node, shape) {
      node.text = textOf(shape)
      done.push(`change ${shape.id}`)
    },
    remove(node) {
      nodes.splice(nodes.indexOf(node), 1)
      done.push(`remove ${node.text}`)
    },
    settle(node, index) {
      if (nodes[index] === node) return
      nodes.splice(nodes.indexOf(node), 1)
      nodes.splice(index, 0, node)
      done.push(`settle ${node.text}`)
    },
  })
  return {
    show: (shapes: readonly Shape[], redrawAll = false) => {
      done.length = 0
      const touched = reconciler.show(shapes, redrawAll)
      return { touched, done: [...done], nodes: nodes.map(({ text }) => text) }
    },
  }
}

const textOf = (shape: Shape): string => (shape.kind === 'text' ? shape.text : '')

function text(id: string, content = id): Shape {
  return {
    ...({ kind: 'text', id, layer: 'parts', role: 'label', x: 0, y: 0 } as const),
    ...({ text: content, capital: 10, anchor: 'start', weight: 'regular' } as const),
  }
}

describe('the reconciler', () => {
  const [a, b, c] = [text('a'), text('b'), text('c')]

  it('makes a node for each shape, in their order', () => {
    expect(listLayer().show([a, b, c])).toMatchObject({ touched: true, nodes: ['a', 'b', 'c'] })
  })

  it('does nothing for shapes that are the same objects: the layer need not be drawn', () => {
    const layer = listLayer()
    layer.show([a, b, c])
    expect(layer.show([a, b, c])).toEqual({ touched: false, done: [], nodes: ['a', 'b', 'c'] })
  })

  it('changes one node for one new shape of a known id', () => {
    const layer = listLayer()
    layer.show([a, b, c])
    expect(layer.show([a, text('b', 'B'), c])).toEqual({
      touched: true,
      done: ['change b'],
      nodes: ['a', 'B', 'c'],
    })
  })

  it('puts a new shape where it stands in the order of drawing', () => {
    const layer = listLayer()
    layer.show([a, c])
    expect(layer.show([a, b, c]).nodes).toEqual(['a', 'b', 'c'])
  })

  it('takes away what is gone', () => {
    const layer = listLayer()
    layer.show([a, b, c])
    expect(layer.show([a, c])).toEqual({ touched: true, done: ['remove b'], nodes: ['a', 'c'] })
    expect(layer.show([])).toMatchObject({ touched: true, nodes: [] })
  })

  it('follows a change of order', () => {
    const layer = listLayer()
    layer.show([a, b, c])
    expect(layer.show([c, a, b])).toMatchObject({ touched: true, nodes: ['c', 'a', 'b'] })
  })

  it('renews every look when asked, as for another theme', () => {
    const layer = listLayer()
    layer.show([a, b])
    expect(layer.show([a, b], true).done).toEqual(['change a', 'change b'])
  })
})
