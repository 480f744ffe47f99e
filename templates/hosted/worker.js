// Keeps one job on this phone for places without signal. The build writes above this line what it keeps: `job`.
// A copy is taken whole or not at all: every file is held against the sum the build gives for it.
const name = `job ${job.code} ${job.hash}`
const here = self.registration.scope
const at = (path) => new URL(path, here).href
const stamp = at("fetched")
const sums = new Map(job.files.map(([path, sum]) => [at(path), sum]))
const hex = (bytes) => [...new Uint8Array(bytes)].map((byte) => byte.toString(16).padStart(2, "0")).join("")

self.addEventListener("install", (event) => event.waitUntil(takeAll().then(() => self.skipWaiting())))
self.addEventListener("activate", (event) => event.waitUntil(dropOld().then(() => self.clients.claim())))
self.addEventListener("fetch", (event) => {
  const { request } = event
  const address = request.url.split("#")[0].replace(/index\.html$/, "")
  if (request.method !== "GET" || !request.url.startsWith(self.location.origin) || address.endsWith("/copy.json")) return
  if (address.endsWith(".pdf")) event.respondWith(paper(event))
  else if (request.mode === "navigate") event.respondWith(page(event, address))
  else if (sums.has(address)) event.respondWith(asset(request, address))
})

async function takeAll() {
  const cache = await caches.open(name)
  const others = await Promise.all((await oldNames()).map((each) => caches.open(each)))
  const queue = [...sums]
  const take = async () => {
    for (let next = queue.shift(); next; next = queue.shift()) await takeOne(cache, others, next)
  }
  await Promise.all(Array.from({ length: 6 }, take))
  await cache.put(stamp, new Response(String(Date.now())))
}

/** One file: from what this phone has of it already, by its sum, else from the host. */
async function takeOne(cache, others, [address, sum]) {
  for (const each of [cache, ...others]) {
    const had = await each.match(address)
    if (had?.headers.get("x-sum") !== sum) continue
    if (each !== cache) await cache.put(address, had)
    return
  }
  const answer = await fetch(address, { cache: "no-cache" })
  const bytes = await answer.arrayBuffer()
  if (!answer.ok || hex(await crypto.subtle.digest("SHA-256", bytes)).slice(0, sum.length) !== sum)
    throw new Error(`${address} is not what the build made`)
  const type = answer.headers.get("content-type") ?? "text/html; charset=utf-8"
  await cache.put(address, new Response(bytes, { headers: { "content-type": type, "x-sum": sum } }))
}

async function oldNames() {
  return (await caches.keys()).filter((each) => each.startsWith(`job ${job.code} `) && each !== name)
}

async function dropOld() {
  await Promise.all((await oldNames()).map((each) => caches.delete(each)))
}

/** A page from the host; where it does not answer in time, the kept one, with its age in its words. */
async function page(event, address) {
  const cache = await caches.open(name)
  const kept = await cache.match(address)
  try {
    const answer = await Promise.race([fetch(event.request), ...(kept ? [late()] : [])])
    if (answer.status < 500) {
      event.waitUntil(confirm(cache).catch(() => {}))
      return answer
    }
  } catch {}
  return kept ? withAge(cache, kept) : sorry()
}

function late() {
  return new Promise((_, fail) => setTimeout(fail, job.patience))
}

/** The host has the same copy: it is as fresh as now. It has another: fetch that. */
async function confirm(cache) {
  const now = await (await fetch(at("copy.json"), { cache: "no-store" })).json()
  if (now.hash === job.hash) await cache.put(stamp, new Response(String(Date.now())))
  else await self.registration.update()
}

async function withAge(cache, kept) {
  const when = Number(await (await cache.match(stamp)).text())
  const date = new Intl.DateTimeFormat("en-GB", { timeZone: job.zone, weekday: "short", day: "numeric", month: "short", year: "numeric", hour: "2-digit", minute: "2-digit" }).format(when)
  const html = (await kept.text())
    .replace(/<(p|span|a)( [^>]*)?data-fetched="([^"]*)"([^>]*)>[^<]*<\/\1>/g, (_, tag, before, words, after) => `<${tag}${before}data-fetched="${words}"${after}>${words.replace("@when@", date)}</${tag}>`)
    .replace('<p id="kept-copy" role="status"></p>', `<p id="kept-copy" role="status">No signal. This is the copy fetched ${date}.</p>`)
  return new Response(html, { headers: { "content-type": "text/html; charset=utf-8" } })
}

async function asset(request, address) {
  return (await (await caches.open(name)).match(address)) ?? fetch(request)
}

/** A PDF is kept once it was opened. */
async function paper(event) {
  const cache = await caches.open(name)
  try {
    const answer = await fetch(event.request)
    if (answer.status === 200) event.waitUntil(cache.put(event.request.url, answer.clone()).catch(() => {}))
    return answer
  } catch {
    return (await cache.match(event.request.url)) ?? sorry()
  }
}

function sorry() {
  const html = `<!doctype html><html lang="en-GB"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>No signal</title></head><body><main><h1>No signal</h1><p>This page is not kept on this phone.</p><p><a href="${here}index.html">All sheets of this job</a></p></main></body></html>`
  return new Response(html, { status: 503, headers: { "content-type": "text/html; charset=utf-8" } })
}
