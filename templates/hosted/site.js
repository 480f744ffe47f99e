// Sharpens pages that are complete without it: kept copies for no signal, ticks kept on this phone, today, the check of a paper.
;(() => {
  const page = document.documentElement.dataset
  if (page.job === undefined) return
  const job = new URL(page.job, location.href)
  const clock = (when) =>
    new Intl.DateTimeFormat("en-GB", { timeZone: page.zone, weekday: "short", day: "numeric", month: "short", year: "numeric", hour: "2-digit", minute: "2-digit" }).format(when)
  const byId = (id) => document.getElementById(id)

  // Kept copies: one worker a job; a copy opened from a folder or a stick has none.
  const served = location.protocol === "https:" || location.protocol === "http:"
  if (served && "serviceWorker" in navigator && window.isSecureContext)
    navigator.serviceWorker.register(new URL("worker.js", job)).catch(() => {})

  // What says "current" holds at the moment it was fetched; without an answer now it says when that was.
  const dated = (when) => {
    for (const part of document.querySelectorAll("[data-fetched]")) part.textContent = part.dataset.fetched.replace("@when@", when)
  }
  const check = byId("check")
  const fromKept = byId("kept-copy")
  async function checkNow() {
    if (!served) return dated(`with the job as it stood: ${page.copy}`)
    if (fromKept.textContent) return
    try {
      const answer = await fetch(new URL("copy.json", job), { cache: "no-store" })
      const now = await answer.json()
      if (!check) return
      const stale = now.sheets[page.sheet] !== page.now
      check.textContent = stale ? "A later revision has been published since this page was fetched: load it again." : `Checked just now, ${clock(Date.now())}.`
    } catch {
      dated("at a time this phone does not know")
      fromKept.textContent = "No signal. This page may be old."
    }
  }
  checkNow()

  // The hub says how old the copy on this phone is.
  const kept = byId("kept")
  async function tellKept() {
    if (!served || !("caches" in window)) return
    const names = (await caches.keys()).filter((name) => name.startsWith(`job ${page.code} `))
    for (const name of names) {
      const stamp = await (await caches.open(name)).match(new URL("fetched", job).href)
      if (stamp) {
        kept.textContent = `This phone keeps the whole job for places without signal, as fetched ${clock(Number(await stamp.text()))}. PDFs are kept once opened.`
        return
      }
    }
    kept.textContent = "Fetching the whole job for places without signal…"
    setTimeout(tellKept, 1000)
  }
  if (kept) tellKept().catch(() => {})

  // Ticks are kept on this phone only, by what the line says: a line that changes loses its tick.
  const store = `ticks ${page.code} `
  const readTicks = (sheet) => {
    try {
      return JSON.parse(localStorage.getItem(store + sheet)) ?? {}
    } catch {
      return {}
    }
  }
  const boxes = [...document.querySelectorAll("input[data-tick]")]
  const bar = byId("ticks")
  function linesOf(sheet) {
    return Object.values(readTicks(sheet)).sort((a, b) => a.at - b.at).map(({ at, says }) => `done ${clock(at)}: ${says}`)
  }
  function count() {
    byId("ticked").textContent = `${boxes.filter((box) => box.checked).length} of ${boxes.length} ticked, kept on this phone only.`
  }
  if (boxes.length > 0) {
    const ticks = readTicks(page.sheet)
    for (const box of boxes) {
      box.checked = box.dataset.tick in ticks
      box.addEventListener("change", () => {
        const now = readTicks(page.sheet)
        if (box.checked) now[box.dataset.tick] = { at: Date.now(), says: box.dataset.says }
        else delete now[box.dataset.tick]
        try {
          localStorage.setItem(store + page.sheet, JSON.stringify(now))
        } catch {
          byId("ticked").textContent = "This phone keeps no ticks: its store is shut or full."
          return
        }
        count()
      })
    }
    bar.hidden = false
    count()
    carry(() => [`${document.title}, revision ${page.now === "0" ? "draft" : page.now}`, ...linesOf(page.sheet), ...boxes.filter((box) => !box.checked).map((box) => `not done: ${box.dataset.says}`)])
    byId("clear").addEventListener("click", () => {
      if (!confirm("Take away all ticks of this sheet on this phone?")) return
      localStorage.removeItem(store + page.sheet)
      for (const box of boxes) box.checked = false
      count()
    })
  }
  if (page.hub !== undefined && bar) {
    const sheets = Object.keys(localStorage).filter((key) => key.startsWith(store)).map((key) => key.slice(store.length)).sort()
    if (sheets.length > 0) {
      bar.hidden = false
      byId("ticked").textContent = `Ticks on this phone: ${sheets.map((sheet) => sheet.toUpperCase()).join(", ")}.`
      carry(() => [document.title, ...sheets.flatMap((sheet) => [`Sheet ${sheet.toUpperCase()}`, ...linesOf(sheet)])])
    }
  }
  function carry(lines) {
    const out = byId("as-text")
    byId("carry").addEventListener("click", async () => {
      out.value = lines().join("\n")
      out.hidden = false
      out.focus()
      out.select()
      if (navigator.share) await navigator.share({ title: document.title, text: out.value }).catch(() => {})
      else await navigator.clipboard?.writeText(out.value).catch(() => {})
    })
  }

  // The list of days opens at today.
  const days = [...document.querySelectorAll("[data-day]")]
  if (days.length > 0) {
    const today = new Intl.DateTimeFormat("en-CA", { timeZone: page.zone }).format(Date.now())
    const next = days.find((day) => day.dataset.day >= today)
    const is = byId("today")
    if (!next) is.textContent = "Today is after the last day planned."
    else {
      const link = document.createElement("a")
      link.href = `#${next.id}`
      link.textContent = next.dataset.day === today ? "Today" : `Next day of work: ${next.querySelector("h2").textContent}`
      is.replaceChildren(...(next.dataset.day === today ? [] : ["No work is planned for today. "]), link)
      if (next.dataset.day === today) next.setAttribute("aria-current", "date")
      if (!location.hash) next.scrollIntoView()
    }
  }
})()
