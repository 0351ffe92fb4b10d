// Asks the program; every answer is JSON unless said.
export class Refused extends Error {
  constructor(status, what) {
    super(what);
    this.status = status;
  }
}

export async function ask(address, { method = "GET", json, body, type, headers = {}, raw = false } = {}) {
  const sent = { method, headers: { ...headers } };
  if (json !== undefined) {
    sent.body = JSON.stringify(json);
    sent.headers["Content-Type"] = "application/json";
  } else if (body !== undefined) {
    sent.body = body;
    sent.headers["Content-Type"] = type;
  }
  const answer = await fetch(address, sent);
  if (answer.status === 401) location.assign("/join");
  if (!answer.ok) {
    let what = `The program answered ${answer.status}.`;
    try {
      what = (await answer.json()).what ?? what;
    } catch { /* no words came with it */ }
    throw new Refused(answer.status, what);
  }
  return raw ? answer : answer.json();
}
