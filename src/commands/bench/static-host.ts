import { existsSync, readFileSync, statSync } from "node:fs"
import { createServer, type Server } from "node:http"
import type { AddressInfo } from "node:net"
import { extname, join, normalize } from "node:path"
import { gzipSync } from "node:zlib"
import puppeteer, { type Browser } from "puppeteer"
import { unpackBrowser } from "../../press/browser/packaged.ts"

const types: Record<string, string> = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css",
  ".js": "text/javascript",
  ".json": "application/json",
}

/** A folder served as a plain static host does: folders by their index page, packed, a page of its own for what is not there. */
export interface StaticHost {
  address: string
  /** Paths asked for, in order. */
  asked: string[]
  stop(): Promise<void>
  start(): Promise<void>
}

/**
 * Serves a folder on this machine.
 * @param under  path the site lies under, `/` or `/folder/`
 * @param headers sent with every answer
 */
export async function staticHost(
  folder: string,
  { under = "/", headers = {} }: { under?: string; headers?: Record<string, string> } = {},
): Promise<StaticHost> {
  const asked: string[] = []
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? "/", "http://host").pathname)
    asked.push(path)
    const below = normalize(join("/", path.startsWith(under) ? path.slice(under.length) : "missing"))
    const named = join(folder, below)
    const file = existsSync(named) && statSync(named).isDirectory() ? join(named, "index.html") : named
    const found = existsSync(file)
    const given = found ? file : join(folder, "404.html")
    const type = types[extname(given)]
    const packed = type !== undefined && /\bgzip\b/.test(request.headers["accept-encoding"] ?? "")
    response.writeHead(found ? 200 : 404, {
      ...headers,
      ...(packed ? { "content-encoding": "gzip" } : {}),
      "content-type": type ?? "application/octet-stream",
    })
    const bytes = existsSync(given) ? readFileSync(given) : Buffer.from("nothing here")
    response.end(packed ? gzipSync(bytes) : bytes)
  })
  const port = await listen(server, 0)
  return {
    address: `http://127.0.0.1:${port}${under}`,
    asked,
    stop: () =>
      new Promise((done) => {
        server.close(() => done())
        server.closeAllConnections()
      }),
    start: async () => void (await listen(server, port)),
  }
}

function listen(server: Server, port: number): Promise<number> {
  return new Promise((done) =>
    server.listen(port, "127.0.0.1", () => done((server.address() as AddressInfo).port)),
  )
}

/** The packaged browser, with nothing to be reached but this machine. */
export async function siteBrowser(): Promise<Browser> {
  const unpacked = await unpackBrowser()
  const started = (withLibraries: boolean) =>
    puppeteer.launch({
      executablePath: unpacked.path,
      headless: "shell",
      env: unpacked.env(withLibraries),
      args: [
        ...(process.getuid?.() === 0 ? ["--no-sandbox"] : []),
        "--disable-gpu",
        "--disable-background-networking",
        "--no-first-run",
        "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1",
      ],
    })
  return started(false).catch(() => started(true))
}
