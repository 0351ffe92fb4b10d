// Says the code of the other screen and, let in, goes to the page.
const code = document.getElementById("code");
const said = document.getElementById("said");
code.value = decodeURIComponent(location.hash.slice(1));
history.replaceState(null, "", "/join");

document.getElementById("join").addEventListener("submit", async event => {
  event.preventDefault();
  said.textContent = "";
  try {
    const answer = await fetch("/api/join", { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify({ code: code.value }) });
    if (answer.ok) location.replace("/");
    else said.textContent = (await answer.json()).what;
  } catch {
    said.textContent = "The program does not answer. Is it still running?";
  }
});
