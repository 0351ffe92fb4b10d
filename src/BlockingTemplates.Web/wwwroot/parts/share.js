// Other screens: the code that lets one more in.
import { html, nothing, svg } from "/vendor/lit-html/lit-html.js";
import { ask } from "/api.js";

let shared = null;

export async function toggleShare(page) {
  try {
    shared = shared ? null : await ask("/api/share");
  } catch (e) {
    page.say(e.message);
  }
  page.draw();
}

export function shareCard(page) {
  if (!shared) return nothing;
  return html`<section class="card share" aria-labelledby="share-head"><h2 id="share-head">Other screens</h2>
    ${shared.addresses.length ? html`
      <p>On the tablet or phone, in the same network, read this code with the camera, or open <b>${shared.addresses[0]}</b> and write <b class="code">${shared.code}</b>.</p>
      <svg class="qr" viewBox="0 0 ${shared.qrSize} ${shared.qrSize}" role="img" aria-label="QR code of the address with the code">${svg`<path d=${shared.qrPath}></path>`}</svg>
      <p class="hint">The code lets one screen in, then the next one takes its place. Only people on this network can reach the page, and nothing is encrypted on the way: share it at home, not in a public network.</p>`
      : html`<p>This machine is on no network, so no other screen can reach it.</p>`}
    <p><button type="button" @click=${async () => { shared = null; await toggleShare(page); }}>Show the next code</button> <button type="button" @click=${() => toggleShare(page)}>Close</button></p></section>`;
}
