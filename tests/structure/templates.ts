/** What a template holds between its marks: `{{ ... }}` and `{% ... %}`, strings blanked. */
export function expressionsOf(template: string): string[] {
  const marks = [...template.matchAll(/\{\{-?([\s\S]*?)-?\}\}|\{%-?([\s\S]*?)-?%\}/g)]
  return marks.map(([, shown, done]) => (shown ?? done ?? "").trim())
}

/** Expressions of a template that calculate with a written figure: constants belong in code, not in layout. */
export function calculations(template: string): string[] {
  return expressionsOf(template).filter((expression) => {
    const bare = expression.replace(/"[^"]*"|'[^']*'/g, '""')
    return /\d\s*(?:[+*/%]|-(?!%))|(?:[+*/%]|(?<![\w)\]]\s*)-|[\w)\]]\s*-)\s*\d/.test(bare)
  })
}

/** Expressions of a template that are written out without escaping, the filter left off. */
export function unescaped(template: string): string[] {
  return expressionsOf(template)
    .filter((expression) => /\|\s*safe\b/.test(expression))
    .map((expression) => expression.replace(/\|\s*safe\b/, "").trim())
}
