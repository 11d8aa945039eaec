import type { JSXElement, JSXNode } from 'satori/jsx'

/**
 * A face's tree with its components replaced by the boxes that they stand for: what is drawn, without all that it was
 * made from. Two such trees are alike exactly when they draw alike.
 */
export function plainTree(node: JSXNode): JSXNode {
  if (Array.isArray(node)) return node.map(plainTree)
  if (!isElement(node)) return node
  const { type } = node
  const props = node.props as { readonly children?: JSXNode }
  if (typeof type === 'function') return plainTree(type(props) as JSXNode)
  return { ...node, props: { ...props, children: plainTree(props.children) } }
}

export function isElement(node: JSXNode): node is JSXElement {
  return typeof node === 'object' && node !== null && 'type' in node && 'props' in node
}
