// The office's list: rows come from jobs.js beside the page; every word typed must be found, and the day must lie in the work.
const rows = globalThis.officeRows
const box = document.getElementById("words")
const day = document.getElementById("day")
const list = document.getElementById("found")
const count = document.getElementById("count")
const more = document.getElementById("more")
const shownAtOnce = 40
let found = rows
let shown = 0

function element(name, text, attributes = {}) {
  const made = document.createElement(name)
  made.textContent = text
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value)
  return made
}

function item(row) {
  const made = document.createElement("li")
  const head = element("h2", "")
  head.append(element("a", row.title, { href: `${row.ref}/job.pdf` }))
  made.append(head, element("p", `${row.ref}, ${row.site}. ${row.client}. Work: ${row.workText}. Revision: ${row.revision}, ${row.onText}.`))
  const files = element("p", "", { class: "files" })
  for (const { file, title } of row.packs) files.append(element("a", title, { href: `${row.ref}/${file}` }), " ")
  for (const file of row.records) files.append(element("a", file, { href: `${row.ref}/${file}` }), " ")
  made.append(files)
  return made
}

function showMore() {
  const next = found.slice(shown, shown + shownAtOnce)
  list.append(...next.map(item))
  shown += next.length
  more.hidden = shown >= found.length
}

function search() {
  const words = box.value.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase().split(/\s+/).filter(Boolean)
  const on = day.value
  found = rows.filter(
    (row) => words.every((word) => row.find.includes(word)) && (on === "" || (row.from <= on && on <= row.to)),
  )
  count.textContent = `${found.length} of ${rows.length} ${rows.length === 1 ? "job" : "jobs"}`
  list.replaceChildren()
  shown = 0
  showMore()
}

document.getElementById("search").hidden = false
box.addEventListener("input", search)
day.addEventListener("input", search)
more.addEventListener("click", showMore)
search()
