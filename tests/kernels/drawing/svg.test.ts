import { describe, expect, it } from "vitest"
import type { Drawing, Shape } from "../../../src/kernels/drawing/shapes.ts"
import { drawingSvg, escaped } from "../../../src/kernels/drawing/svg.ts"

function drawing(...shapes: Shape[]): Drawing {
  return { title: "Plan <A1> & more", description: "A wall of 3,940", shapes }
}
const wall: Shape = {
  kind: "line",
  from: { x: 0, y: 0 },
  to: { x: 3940, y: 0 },
  stroke: { width: 0.7 },
}

describe("a drawing as SVG", () => {
  it("draws a wall of 3,940 as 197 mm of paper at 1:20, in a picture of its own size in mm", () => {
    const { svg, widthMm, heightMm } = drawingSvg(drawing(wall), { scale: 20 })
    expect(svg).toContain(`width="${widthMm}mm" height="${heightMm}mm" viewBox="0 0 ${widthMm} ${heightMm}"`)
    const [, x0, x1] = svg.match(/d="M([\d.]+) [\d.]+L([\d.]+) /)!
    expect(Number(x1) - Number(x0)).toBe(197)
  })

  it("has y up, so that a higher point stands higher on the page", () => {
    const rising: Shape = { ...wall, to: { x: 0, y: 1000 } }
    const [, , from, , to] = drawingSvg(drawing(rising), { scale: 10 }).svg.match(
      /d="M([\d.]+) ([\d.]+)L([\d.]+) ([\d.]+)/,
    )!
    expect(Number(to)).toBeLessThan(Number(from))
  })

  it("names itself for those who cannot see it, with markup shown as text", () => {
    const { svg } = drawingSvg(drawing(wall), { scale: 20, id: "a1" })
    expect(svg).toContain('role="img" aria-labelledby="a1-t" aria-describedby="a1-d"')
    expect(svg).toContain('<title id="a1-t">Plan &lt;A1&gt; &amp; more</title>')
    expect(escaped('<b a="1">\u0000\uFFFE\'x')).toBe("&lt;b a=&quot;1&quot;&gt;&#39;x")
  })

  it("strokes only in black, fills only in black, white and greys, and has the same bytes twice", () => {
    const all = drawing(
      wall,
      { kind: "box", at: { x: 0, y: 0 }, width: 500, height: 300, fill: "mid" },
      {
        kind: "arc",
        centre: { x: 0, y: 0 },
        radius: 762,
        from: 0,
        to: 90,
        stroke: { width: 0.25, dash: "dashed" },
      },
      { kind: "arc", centre: { x: 0, y: 0 }, radius: 20, from: 0, to: 360, stroke: { width: 0.25 } },
      { kind: "text", at: { x: 1 / 3, y: 0 }, text: "2\nB", height: 5, angle: 30, bold: true, masked: true },
      { kind: "dimension", from: { x: 0, y: 0 }, to: { x: 3940, y: 7 }, offset: 8, text: "3,940" },
      { kind: "scale-bar" },
    )
    const { svg } = drawingSvg(all, { scale: 50 })
    expect(new Set(svg.match(/stroke="[^"]*"/g))).toEqual(new Set(['stroke="#000"']))
    for (const fill of svg.match(/fill="[^"]*"/g)!) {
      expect(['fill="none"', 'fill="#fff"', 'fill="#000"', 'fill="#e8e8e8"', 'fill="#c0c0c0"']).toContain(
        fill,
      )
    }
    expect(svg.match(/\d\.\d{4,}/)).toBeNull()
    expect(svg).not.toContain("-0 ")
    expect(drawingSvg(all, { scale: 50 }).svg).toBe(svg)
    expect(svg).toMatch(/<circle [^>]*r="0.4"/)
    expect(svg).toMatch(/A15.24 15.24 0 0 0 /)
    expect(svg).toContain(">1:50</tspan>")
  })

  it("letters at the height it is told, whatever the scale", () => {
    const text: Shape = { kind: "text", at: { x: 0, y: 0 }, text: "1", height: 3.5 }
    for (const scale of [1, 20, 200]) {
      expect(drawingSvg(drawing(text), { scale }).svg).toContain('font-size="5"')
    }
  })
})
