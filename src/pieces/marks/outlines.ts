import { polygon, rectangle } from '../art/path-text.js'
import { quarterCircle } from './broken-lines.js'
import type { FrameStyle, LetterStyle, OutlineFrame } from './outline-style.js'

export const boxOutline: FrameStyle = {
  kind: 'frame',
  name: 'box',
  summary: 'a box with sharp corners',
  bulgeEm: 0,
  insetOf: () => ({ at: () => 0, atMost: () => 0 }),
  draw: ({ left, top, right, bottom }) => rectangle(left, top, right, bottom),
}

const cornerEm = 0.19

function cornerRadius({ left, right, top, bottom, sizeMm }: OutlineFrame): number {
  return Math.min(cornerEm * sizeMm, (right - left) / 2, (bottom - top) / 2)
}

export const roundedOutline: FrameStyle = {
  kind: 'frame',
  name: 'rounded',
  summary: 'a box with round corners',
  bulgeEm: 0,
  insetOf: frame => {
    const radius = cornerRadius(frame)
    const at = (y: number): number => {
      const fromEnd = Math.min(y - frame.top, frame.bottom - y)
      if (fromEnd >= radius) return 0
      return radius - Math.sqrt(Math.max(0, radius ** 2 - (radius - fromEnd) ** 2))
    }
    return { at, atMost: at }
  },
  draw: frame => {
    const { left, top, right, bottom } = frame
    const radius = cornerRadius(frame)
    const k = radius * (1 - quarterCircle)
    return [
      { type: 'M', values: [left + radius, top] },
      { type: 'L', values: [right - radius, top] },
      { type: 'C', values: [right - k, top, right, top + k, right, top + radius] },
      { type: 'L', values: [right, bottom - radius] },
      { type: 'C', values: [right, bottom - k, right - k, bottom, right - radius, bottom] },
      { type: 'L', values: [left + radius, bottom] },
      { type: 'C', values: [left + k, bottom, left, bottom - k, left, bottom - radius] },
      { type: 'L', values: [left, top + radius] },
      { type: 'C', values: [left, top + k, left + k, top, left + radius, top] },
      { type: 'Z', values: [] },
    ]
  },
}

/**
 * The ends follow |x/a|^n + |y/b|^n = 1. A true ellipse (n = 2) around letters as tall as b and h would need half their
 * width again on either side; the fuller curve needs a twentieth of an em. Around many letters the ends keep their
 * roundness and the middle runs straight.
 */
const fullness = 2.4
const roundEndEm = 0.66

function endWidth({ left, right, sizeMm }: OutlineFrame): number {
  return Math.min((right - left) / 2, roundEndEm * sizeMm)
}

export const ovalOutline: FrameStyle = {
  kind: 'frame',
  name: 'oval',
  summary: 'an oval',
  bulgeEm: 0.055,
  insetOf: frame => {
    const width = endWidth(frame)
    const heightAt = (y: number): number =>
      Math.min(1, Math.abs((2 * y - frame.top - frame.bottom) / (frame.bottom - frame.top)))
    return {
      at: y => width * (1 - (1 - heightAt(y) ** fullness) ** (1 / fullness)),
      // A true ellipse's, which lies within the fuller curve.
      atMost: y => width * (1 - Math.sqrt(1 - heightAt(y) ** 2)),
    }
  },
  draw: frame => {
    const { left, right, top, bottom } = frame
    const [a, b, y] = [endWidth(frame), (bottom - top) / 2, (top + bottom) / 2]
    const count = 96
    const power = (value: number): number => Math.sign(value) * Math.abs(value) ** (2 / fullness)
    return polygon(
      Array.from({ length: count }, (_, index) => {
        const turn = (2 * Math.PI * (index + 0.5)) / count
        const x = Math.cos(turn) > 0 ? right - a : left + a
        return [x + a * power(Math.cos(turn)), y + b * power(Math.sin(turn))] as const
      }),
    )
  },
}

const peakEm = 0.24

function peakHeight({ top, bottom, left, right, sizeMm }: OutlineFrame): number {
  return Math.min(peakEm * sizeMm, (bottom - top) / 2, 0.45 * (right - left))
}

export const hexagonOutline: FrameStyle = {
  kind: 'frame',
  name: 'hexagon',
  summary: 'six straight sides, pointed above and below',
  bulgeEm: 0,
  insetOf: frame => {
    const [peak, half] = [peakHeight(frame), (frame.right - frame.left) / 2]
    const at = (y: number): number => {
      const fromEnd = Math.min(y - frame.top, frame.bottom - y)
      return Math.max(0, 1 - fromEnd / peak) * half
    }
    return { at, atMost: at }
  },
  draw: frame => {
    const { left, top, right, bottom } = frame
    const [middle, peak] = [(left + right) / 2, peakHeight(frame)]
    return polygon([
      [middle, top],
      [right, top + peak],
      [right, bottom - peak],
      [middle, bottom],
      [left, bottom - peak],
      [left, top + peak],
    ])
  },
}

export const hollowLetters: LetterStyle = {
  kind: 'letters',
  name: 'hollow',
  summary: 'the letters as outlines, white inside',
  paint: 'hollow',
}

export const heavyLetters: LetterStyle = {
  kind: 'letters',
  name: 'heavy',
  summary: 'the letters in heavier strokes',
  paint: 'heavy',
}
