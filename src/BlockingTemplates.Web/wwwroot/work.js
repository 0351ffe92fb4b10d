// One project that is worked on: its text, sent to the program version by version, and the answers that come back.
import { ask, Refused } from "/api.js";

export class Work {
  constructor(id, changed) {
    Object.assign(this, { id, changed, text: "", base: 0, answer: null, pins: null, progress: null, isOnline: true, unsent: null, trouble: "", part: 0, plans: [] });
    this.steps = [];
    this.sending = false;
    this.timer = 0;
    this.ended = false;
  }

  get key() {
    return `blocking-templates:${this.id}`;
  }

  get isSent() {
    return this.steps.length === 0 && !this.sending;
  }

  async begin() {
    await this.fetchText();
    const kept = JSON.parse(localStorage.getItem(this.key) ?? "null");
    if (kept && kept.text !== this.text) {
      if (kept.base === this.base) this.edit(() => kept.text);
      else this.unsent = kept.text;
    } else {
      localStorage.removeItem(this.key);
    }
    if (this.isSent) await this.fetchAnswer();
    this.listen();
    document.addEventListener("visibilitychange", this.seen = () => (document.hidden ? this.deafen() : this.listen()));
  }

  end() {
    this.ended = true;
    this.deafen();
    clearTimeout(this.timer);
    document.removeEventListener("visibilitychange", this.seen);
  }

  useUnsent(use) {
    const text = this.unsent;
    this.unsent = null;
    localStorage.removeItem(this.key);
    if (use) this.edit(() => text);
    this.changed();
  }

  async fetchText() {
    const answer = await ask(`/api/copies/${this.id}/text`, { raw: true });
    this.base = Number(answer.headers.get("ETag").replaceAll('"', ""));
    this.text = await answer.text();
  }

  async fetchAnswer() {
    this.take((await ask(`/api/copies/${this.id}/answer`)).answer);
  }

  // An answer never takes the place of one of a newer version or a later stage.
  take(answer) {
    if (!answer) return;
    const now = this.answer;
    if (now && (now.version > answer.version || (now.version === answer.version && now.stage > answer.stage))) return;
    this.answer = answer;
    this.choose(this.part);
    this.changed();
  }

  // Which of the project's plans is shown, where it has several sizes or a pair.
  choose(part) {
    const plans = this.answer?.plan ? [this.answer.first ?? this.answer.plan, ...this.answer.others] : [];
    this.part = Math.min(part, Math.max(plans.length - 1, 0));
    if (plans.length) [this.answer.first, this.answer.plan] = [plans[0], plans[this.part]];
    this.plans = plans;
  }

  // A step makes a new text of the old one; it is made again if another screen was first.
  edit(step) {
    const next = step(this.text);
    if (next === this.text) return;
    this.text = next;
    this.steps.push(step);
    localStorage.setItem(this.key, JSON.stringify({ base: this.base, text: next }));
    // At once, before anything is drawn; what is typed while an answer is under way goes together after it.
    clearTimeout(this.timer);
    queueMicrotask(() => this.send());
    this.changed();
  }

  async send() {
    if (this.sending || this.steps.length === 0 || this.ended) return;
    this.sending = true;
    const count = this.steps.length;
    let wait = 0;
    try {
      const edit = await ask(`/api/copies/${this.id}/text`, { method: "PUT", body: this.text, type: "text/plain", headers: { "If-Match": `"${this.base}"` } });
      this.base = edit.version;
      this.steps.splice(0, count);
      [this.isOnline, this.trouble] = [true, ""];
      if (this.steps.length === 0) localStorage.removeItem(this.key);
      else localStorage.setItem(this.key, JSON.stringify({ base: this.base, text: this.text }));
      this.take(edit.answer);
    } catch (e) {
      if (e instanceof Refused && e.status === 412) {
        await this.fetchText().catch(() => { wait = 1500; });
        if (!wait) this.text = this.steps.reduce((text, step) => step(text), this.text);
      } else if (e instanceof Refused) {
        this.trouble = e.message;
        this.steps.splice(0, count);
      } else {
        this.isOnline = false;
        wait = 1500;
      }
    }
    this.sending = false;
    this.changed();
    if (this.steps.length > 0) this.timer = setTimeout(() => this.send(), wait);
  }

  // Waits until everything typed has been sent.
  async settled() {
    while (!this.isSent) await new Promise(done => setTimeout(done, 30));
  }

  listen() {
    if (this.events || this.ended || document.hidden) return;
    this.events = new EventSource(`/api/copies/${this.id}/events`);
    this.events.onmessage = e => this.heard(JSON.parse(e.data));
    this.events.onopen = () => {
      if (!this.isOnline) [this.isOnline] = [true];
      this.changed();
    };
    this.events.onerror = () => {
      this.isOnline = false;
      this.changed();
    };
  }

  deafen() {
    this.events?.close();
    this.events = null;
  }

  async heard(change) {
    const before = [this.progress, this.pins];
    if (this.progress?.part !== change.part || this.progress?.words !== change.words) this.progress = change.part === null ? null : { part: change.part, words: change.words };
    if (change.pins && (!this.pins || change.pins.change > this.pins.change)) this.pins = change.pins;
    try {
      if (this.isSent && change.version > this.base) {
        await this.fetchText();
        await this.fetchAnswer();
        this.changed();
      } else if (this.isSent && (this.answer?.version !== change.answeredVersion || this.answer?.stage !== change.answeredStage) && change.answeredVersion === this.base) {
        await this.fetchAnswer();
      }
    } catch { /* heard again with the next change */ }
    if (this.progress !== before[0] || this.pins !== before[1]) this.changed();
  }
}
