// Opens the sheet typed in, and helps an address that leads nowhere: what was mistyped is held against the sheets the job has.
// Codes and the figures of sheet numbers have no o, i or l: those are read as 0 and 1.
;(() => {
  const plain = (text) => text.trim().toLowerCase().replaceAll("o", "0").replace(/[il]/g, "1")
  const bare = (text) => plain(text).replace(/[^0-9a-z]/g, "")
  const isCode = (text) => /^[0-9a-hjkmnp-tv-z]{8}$/.test(text)

  /** The sheet of a job that was meant: its address below the job, "" for the job itself, null where none is like it. */
  async function meant(jobAddress, typed) {
    const answer = await fetch(jobAddress + "index.html")
    if (!answer.ok) return null
    if (bare(typed) === "") return ""
    const hub = new DOMParser().parseFromString(await answer.text(), "text/html")
    const paths = [...hub.querySelectorAll("a[data-sheet]")].map((link) => link.dataset.sheet)
    return paths.find((path) => bare(path) === bare(typed)) ?? null
  }

  const form = document.getElementById("find")
  const said = document.getElementById("said")
  form?.addEventListener("submit", async (event) => {
    event.preventDefault()
    const typed = new FormData(form)
    const code = bare(String(typed.get("job")))
    const sheet = String(typed.get("sheet"))
    if (!isCode(code)) {
      said.textContent = "A job code has 8 figures and letters. Look again at the line under the square code."
      return
    }
    const job = new URL(`${form.dataset.top || base()}${code}/`, location.href).href
    const asTyped = sheet.trim() ? `${encodeURIComponent(sheet.trim().toLowerCase().replace(/[\s_]+/g, "-"))}/` : ""
    const found = await meant(job, sheet).catch(() => undefined)
    if (found === null) said.textContent = "There is no such job or sheet here. Look again at the line under the square code."
    else location.href = `${job}${found === undefined ? asTyped : found && `${found}/`}index.html`
  })

  /** Where the site begins, as far as an address that leads nowhere tells: before the part that could be a job's code. */
  function base() {
    const parts = location.pathname.split("/")
    const at = parts.findIndex((part) => isCode(bare(part)) && part.length === 8)
    return at < 0 ? "/" : `${parts.slice(0, at).join("/")}/`
  }

  async function mend() {
    const parts = location.pathname.slice(base().length).split("/").filter((part) => part && part !== "index.html").map(decodeURIComponent)
    const [code = "", sheet = "", letter = ""] = parts
    document.getElementById("home").href = `${base()}index.html`
    if (!isCode(bare(code))) return
    const job = `${base()}${bare(code)}/`
    const path = await meant(job, sheet)
    if (path === null && !(await fetch(`${job}index.html`)).ok) return
    const revision = /^([a-z]{1,2}|0)$/i.test(letter) ? letter.toLowerCase() : ""
    const below = path ? `${path}/${revision && `${revision}/`}` : ""
    let target = `${job}${below}index.html`
    if (revision && path && !(await fetch(target)).ok) target = `${job}${path}/index.html`
    const link = document.createElement("a")
    link.href = target
    link.textContent = path ? `Open sheet ${path.toUpperCase()}` : "Open the list of this job’s sheets"
    said.replaceChildren(path === null ? `There is no sheet “${sheet}” in this job. ` : "You probably meant: ", link)
  }
  if (document.documentElement.dataset.lost !== undefined) mend().catch(() => {})
})()
