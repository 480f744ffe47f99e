import { createHash } from "node:crypto"

/** What a hosted page may load: its own style sheet and scripts, and nothing from anywhere else. */
const directives = {
  "default-src": "'none'",
  "style-src": "'self'",
  "script-src": "'self'",
  "img-src": "'self' data:",
  "connect-src": "'self'",
  "worker-src": "'self'",
  "form-action": "'self'",
  "base-uri": "'none'",
}

/** Texts of a page that stand in it rather than in a file of their own. */
export interface Inline {
  style: string
  script: string
}

/** The content security policy of hosted pages; with the sums of texts that stand in a page itself. */
export function contentPolicy(inline?: Inline): string {
  const own = { ...directives }
  if (inline) {
    own["style-src"] += ` ${sumOf(inline.style)}`
    own["script-src"] += ` ${sumOf(inline.script)}`
  }
  return Object.entries(own)
    .map(([name, value]) => `${name} ${value}`)
    .join("; ")
}

function sumOf(text: string): string {
  return `'sha256-${createHash("sha256").update(text).digest("base64")}'`
}

/** Headers for every answer, beside what the pages say of themselves: only a header can forbid framing. */
function headersOf(inline: Inline): [string, string][] {
  return [
    ["Content-Security-Policy", `${contentPolicy(inline)}; frame-ancestors 'none'`],
    ["X-Robots-Tag", "noindex, nofollow"],
    ["Referrer-Policy", "no-referrer"],
    ["X-Content-Type-Options", "nosniff"],
    ["Cache-Control", "no-cache"],
  ]
}

/** The files that tell a host which headers to send, by name: one form for static hosts, one for a folder on a web server. */
export function headerFiles(inline: Inline): Record<string, string> {
  const headers = headersOf(inline)
  const lines = (form: (name: string, value: string) => string) =>
    headers.map(([name, value]) => form(name, value)).join("\n")
  return {
    _headers: `/*\n${lines((name, value) => `  ${name}: ${value}`)}\n`,
    ".htaccess": `<IfModule mod_headers.c>\n${lines((name, value) => `Header always set ${name} "${value}"`)}\n</IfModule>\n`,
  }
}
