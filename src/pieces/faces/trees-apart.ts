import type { JSXNode } from 'satori/jsx'
import type { Size } from '../../geometry.js'
import { isElement } from './plain-tree.js'

/** What a box has in a face's tree as `data-apart` whose size is its own, whatever stands in it and around it. */
export type ApartSize = Size

interface MaybeApart {
  readonly children?: JSXNode
  readonly 'data-apart'?: ApartSize
}

/** A tree whose layout depends on nothing but the size of its box. */
export interface TreeApart {
  readonly tree: JSXNode
  readonly size: ApartSize
}

/** A plain tree without what stands in boxes that say so, which have numbers instead; and what stood in each of them. */
export function treesApart(node: JSXNode): { readonly rest: JSXNode; readonly apart: readonly TreeApart[] } {
  const apart: TreeApart[] = []
  const without = (of: JSXNode): JSXNode => {
    if (Array.isArray(of)) return of.map(without)
    if (!isElement(of)) return of
    const props = of.props as MaybeApart
    const size = props['data-apart']
    if (size === undefined) return { ...of, props: { ...props, children: without(props.children) } }
    const number = apart.push({ tree: filled(props.children), size }) - 1
    return { ...of, props: { ...props, children: undefined, 'data-apart': number } }
  }
  return { rest: without(node), apart }
}

/** As what stands in the box stands in it there. */
function filled(children: JSXNode): JSXNode {
  return {
    type: 'div',
    key: null,
    props: { style: { display: 'flex', width: '100%', height: '100%' }, children },
  }
}
