// Opens the sheet typed in: letters are made small; o is read as 0, i and l as 1, since codes have none of these.
const form = document.getElementById("find")
form.addEventListener("submit", (event) => {
  event.preventDefault()
  const typed = new FormData(form)
  const code = String(typed.get("job")).trim().toLowerCase().replaceAll("o", "0").replace(/[il]/g, "1")
  const sheet = String(typed.get("sheet")).trim().toLowerCase()
  location.href = sheet ? `${code}/${encodeURIComponent(sheet)}/` : `${code}/`
})
