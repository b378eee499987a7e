// A reading waits on this phone until the laptop has said that it keeps it. It is written here first, then sent; each has a name of its own, so
// that one sent twice is kept once. Closing the tab, an empty battery or a laptop that was switched off lose nothing.
//
// Over plain http a browser offers neither service workers nor locks: two tabs may send the same reading, and the laptop keeps it once.

const patienceMilliseconds = 6000; // longer than the slowest answer; a person under a frame does not wait longer
const pausesMilliseconds = [1000, 2000, 3000, 5000];
const other = "BroadcastChannel" in self ? new BroadcastChannel("plumbmark-waiting") : null;
const state = { away: false, shut: false, trouble: "", unsent: false, sent: 0, tries: 0, timer: 0, sending: null };

// ---- what it says, in the language of the page

const texts = JSON.parse(document.getElementById("waiting").dataset.texts);
const say = (key, ...parts) => texts[key].replace(/\{(\d)\}/g, (_, part) => parts[part]);
const count = (key, number) => say(`${key}.${number === 1 ? "one" : "many"}`, number);

// ---- what is kept on the phone

let opened = null;

function database() {
  opened ??= new Promise((resolve, reject) => {
    const request = indexedDB.open("plumbmark", 1);
    request.onupgradeneeded = () =>
      request.result.createObjectStore("waiting", { keyPath: "place", autoIncrement: true }).createIndex("name", "name", { unique: true });
    request.onerror = () => reject(request.error);
    request.onsuccess = () => {
      request.result.onclose = request.result.onversionchange = () => (opened = null);
      resolve(request.result);
    };
  });
  opened.catch(() => (opened = null));
  return opened;
}

async function inStore(mode, work) {
  const db = await database();
  return new Promise((resolve, reject) => {
    const transaction = db.transaction("waiting", mode, { durability: "strict" });
    const request = work(transaction.objectStore("waiting"));
    transaction.oncomplete = () => resolve(request.result);
    transaction.onerror = transaction.onabort = () => reject(transaction.error ?? request.error);
  });
}

const all = () => inStore("readonly", (store) => store.getAll());
const remove = (item) => inStore("readwrite", (store) => store.delete(item.place));
const rewrite = (item) => inStore("readwrite", (store) => store.put(item));

/** Keeps what a form says. The same form pressed twice is there once. */
async function keep(item) {
  try {
    return { ...item, place: await inStore("readwrite", (store) => store.add(item)) };
  } catch (fault) {
    const same = fault?.name === "ConstraintError" ? (await all()).find((i) => i.name === item.name) : null;
    if (same) {
      return same;
    }

    throw fault;
  }
}

// ---- sending, oldest first

const send = () => (state.sending ??= sendAll().finally(() => (state.sending = null)));

async function sendAll() {
  clearTimeout(state.timer);
  const outcomes = new Map();
  let past = -1;
  for (;;) {
    const item = (await all()).find((i) => !i.refused && i.place > past);
    if (!item) {
      break;
    }

    past = item.place;
    const outcome = await post(item);
    outcomes.set(item.place, outcome);
    state.away = outcome.is === "away";
    state.shut = outcome.is === "shut";
    state.trouble = outcome.trouble ?? "";
    if (outcome.is === "kept") {
      state.sent += waited ? 1 : 0;
      await remove(item);
    } else if (outcome.is === "refused") {
      await rewrite({ ...item, refused: outcome.sentences });
    } else {
      break; // in order: nothing overtakes a reading that could not be sent
    }
  }

  await tell();
  return outcomes;
}

/** kept, refused with sentences, away (no connection, or a laptop in trouble), or shut (this phone is not let in). */
async function post(item) {
  try {
    let answer = await attempt(item, token());
    if (answer.status === 400) {
      // The page is older than the app: the form is good, its token is not.
      answer = await attempt(item, await freshToken());
    }

    if (answer.status === 204 && answer.headers.has("plumbmark-show")) {
      return { is: "kept", show: answer.headers.get("plumbmark-show") };
    }

    if (answer.status === 401 || answer.status === 403) {
      return { is: "shut" };
    }

    if ([400, 404, 409, 413, 422].includes(answer.status)) {
      const html = await answer.text();
      return { is: "refused", html, sentences: sentences(html) };
    }

    return { is: "away", trouble: answer.status === 503 ? sentences(await answer.text()).join(" ") : "" };
  } catch {
    return { is: "away" };
  }
}

function attempt(item, formToken) {
  const body = new URLSearchParams(item.fields);
  body.set("token", formToken);
  return fetch(item.action, {
    method: "POST",
    body,
    headers: { "plumbmark-waiting": item.car },
    redirect: "manual",
    credentials: "same-origin",
    signal: AbortSignal.timeout(patienceMilliseconds),
  });
}

const token = () => document.querySelector("main input[name=token]")?.value ?? "";

async function freshToken() {
  const answer = await fetch("/form-token", { credentials: "same-origin", cache: "no-store", signal: AbortSignal.timeout(patienceMilliseconds) });
  if (!answer.ok) {
    return "";
  }

  const fresh = await answer.text();
  document.querySelectorAll("input[name=token]").forEach((field) => (field.value = fresh));
  return fresh;
}

/** What the laptop found wrong, from the page it answered with. */
function sentences(html) {
  const page = new DOMParser().parseFromString(html, "text/html");
  const faults = [...page.querySelectorAll("main .fault")];
  return (faults.length > 0 ? faults : [...page.querySelectorAll("main h1 ~ p:not(:has(a))")]).map((f) => f.textContent.trim());
}

function again() {
  clearTimeout(state.timer);
  state.timer = setTimeout(retry, pausesMilliseconds[Math.min(state.tries++, pausesMilliseconds.length - 1)]);
}

async function retry() {
  const outcomes = await send();
  if (state.away && outcomes.size === 0 && (await freshToken().catch(() => ""))) {
    state.away = state.unsent = false;
    tell();
  }

  if (!state.away && !state.shut && [...outcomes.values()].some((o) => o.is === "kept") && isUntouched()) {
    show(addressHere());
  }
}

/** Nothing is typed that would be lost when the page is shown anew. */
const isUntouched = () =>
  [...document.querySelectorAll("main form :is(input:not([type=hidden]):not([type=file]), textarea)")].every((f) => f.value === f.defaultValue || f.value === "");

/** This page with what is picked in its form. */
function addressHere() {
  const form = document.querySelector("main form[data-waits]");
  if (!form) {
    return location.href;
  }

  const picked = [...new FormData(form)].filter(([name, value]) => !["token", "form"].includes(name) && typeof value === "string" && value);
  return `${location.pathname}?${new URLSearchParams(picked)}`;
}

const show = (address, kept) => document.dispatchEvent(new CustomEvent("plumbmark:show", { detail: { address, kept } }));

// ---- saying so

let saying = null;
const tell = () => (saying = (saying ?? Promise.resolve()).then(draw, draw));

async function draw() {
  const place = document.getElementById("waiting");
  const items = await all().catch(() => []);
  const waiting = items.filter((i) => !i.refused);
  const refused = items.filter((i) => i.refused);
  if ((waiting.length > 0 || state.away) && !state.shut) {
    again();
  } else {
    state.tries = 0;
  }

  const words = place.querySelector("[role=status]");
  const text = wordsOf(waiting.length, refused.length);
  if (words.textContent !== text) {
    words.textContent = text;
  }

  place.hidden = text === "";
  place.classList.toggle("is-away", state.away || state.shut);
  const list = place.querySelector("details");
  list.hidden = items.length === 0;
  list.open ||= refused.length > 0;
  place.querySelector("ul").replaceChildren(...items.map(line));
}

function wordsOf(waiting, refused) {
  const parts = [];
  if (state.shut) {
    parts.push(say("waiting.shut"));
  } else if (state.trouble) {
    parts.push(say("waiting.trouble", state.trouble));
  } else if (state.away) {
    parts.push(say("waiting.away"));
  }

  if (waiting > 0) {
    parts.push(count(state.shut ? "waiting.waits-shut" : state.away ? "waiting.waits-away" : "waiting.waits", waiting));
  } else if (state.unsent) {
    parts.push(say("waiting.unsent"));
  } else if (state.away) {
    parts.push(say("waiting.go-on"));
  } else if (state.sent > 0 && waited) {
    parts.push(count(refused > 0 ? "waiting.back-else" : "waiting.back", state.sent));
  }

  if (refused > 0) {
    parts.push(count("waiting.refused", refused));
  }

  return parts.join(" ");
}

let waited = false; // whether anything has waited since this page was opened

function line(item) {
  const entry = document.createElement("li");
  const words = document.createElement("p");
  words.textContent = `${item.words} (${new Date(item.at).toLocaleTimeString([], { hour: "2-digit", minute: "2-digit" })})`;
  entry.append(words);
  if (item.refused) {
    const why = document.createElement("p");
    why.className = "fault";
    why.textContent = say("waiting.not-taken", item.refused.join(" "));
    entry.append(
      why,
      button(say("waiting.send-again"), item, () => rewrite({ ...item, refused: null }).then(retry)),
      button(say("waiting.throw-away"), item, () => throwAway(item)),
    );
  }

  return entry;
}

function button(words, item, press) {
  const made = document.createElement("button");
  made.type = "button";
  made.className = "plain";
  made.textContent = words;
  made.setAttribute("aria-label", say("waiting.about", words, item.words));
  made.addEventListener("click", press);
  return made;
}

async function throwAway(item) {
  if (confirm(say("waiting.confirm", item.words))) {
    await remove(item);
    changed();
  }
}

function changed() {
  other?.postMessage("changed");
  return tell();
}

// ---- a form

/** What a person would say of the form: the ends and what was typed. */
function wordsOfForm(form) {
  const fields = [...form.elements].filter((f) => f.name && !["hidden", "submit", "button"].includes(f.type) && f.name !== "tool" && f.value.trim());
  const value = (name) => fields.find((f) => f.name === name)?.value ?? "";
  const ends = value("from") && value("to") ? [say("waiting.ends", value("from"), value("to"))] : [value("from"), value("to")];
  const rest = fields.filter((f) => !["point", "from", "to"].includes(f.name) && !(["checkbox", "radio"].includes(f.type) && !f.checked));
  return [value("point"), ...ends, ...rest.map((f) => f.value.trim())].filter(Boolean).join(", ") || say("waiting.empty-form");
}

/** crypto.randomUUID is not there over plain http. */
const newName = () => Array.from(crypto.getRandomValues(new Uint8Array(16)), (b) => b.toString(16).padStart(2, "0")).join("");

document.addEventListener(
  "submit",
  async (event) => {
    const form = event.target;
    if (!form.matches?.("form[data-waits]") || form.dataset.atOnce || !("indexedDB" in self)) {
      return;
    }

    event.preventDefault();
    if (form.dataset.keeping) {
      return; // a second press while the first is being written
    }

    form.dataset.keeping = "yes";
    try {
      await keepAndSend(form, event.submitter);
    } finally {
      delete form.dataset.keeping;
    }
  },
  true,
);

async function keepAndSend(form, submitter) {
  const fields = [...new FormData(form, submitter)].filter(([name]) => name !== "token");
  const name = form.elements.namedItem("form").value;
  let item;
  try {
    item = await keep({ name, action: new URL(form.action).pathname, car: form.dataset.waits, fields, words: wordsOfForm(form), at: Date.now() });
  } catch {
    // No room on the phone, or a window that keeps nothing: sent in the ordinary way.
    form.dataset.atOnce = "yes";
    form.requestSubmit(submitter);
    return;
  }

  if (state.away || state.shut) {
    waits(form); // the person goes on at once; sending tries by itself
    retry();
    return;
  }

  waited = false;
  state.sent = 0;
  submitter?.setAttribute("aria-busy", "true");
  const outcome = await outcomeOf(item);
  submitter?.removeAttribute("aria-busy");
  if (outcome?.is === "kept") {
    show(outcome.show, form);
  } else if (outcome?.is === "refused") {
    // It goes back into the form, where the faults stand beside their fields.
    await remove(item);
    document.dispatchEvent(new CustomEvent("plumbmark:show", { detail: { html: outcome.html, address: location.href } }));
    changed();
  } else {
    waits(form);
  }
}

/** A sending that was under way may have looked past this item already; then another one follows it. */
async function outcomeOf(item) {
  return (await send()).get(item.place) ?? (state.away || state.shut ? null : (await send()).get(item.place));
}

function waits(form) {
  waited = true;
  ready(form);
  changed();
}

/** What the form said is kept, here or there: ready for the next one, with its next line filled in where a round is walked. */
function ready(form) {
  form.elements.namedItem("form").value = newName();
  const done = lineIn(form);
  for (const field of form.elements) {
    // Where the tape starts and which tool it is stay as they are, as they do when the laptop shows the form anew.
    const isTyped = field.matches("textarea, input:not([type])") || ["text", "search", "number"].includes(field.type);
    if ((isTyped && field.name !== "startAt") || ["point", "from", "to"].includes(field.name)) {
      field.value = "";
    }
  }

  const round = form.querySelector("[data-round]");
  if (round) {
    const left = round.dataset.round.split("!").filter((l) => l && l !== done);
    round.dataset.round = left.join("!");
    fill(form, left[0]);
  }

  form.dispatchEvent(new CustomEvent("plumbmark:waits", { bubbles: true }));
  if (endsOf(form).length > 0) {
    markPicks(form);
  }

  const value = form.elements.namedItem("value") ?? form.querySelector("input:not([type=hidden])");
  value?.focus({ preventScroll: true });
}

const endsOf = (form) => ["point", "from", "to"].map((name) => form.elements.namedItem(name)).filter(Boolean);
const lineIn = (form) => (form.elements.namedItem("point")?.value ? form.elements.namedItem("point").value : `${form.elements.namedItem("from")?.value}~${form.elements.namedItem("to")?.value}`);

function fill(form, next) {
  if (next) {
    next.split("~").forEach((id, i) => (endsOf(form)[i] ? (endsOf(form)[i].value = id) : null));
  }
}

// ---- picking without the laptop

/** A tap on a point of the drawing goes into the lists beside it: the first empty one, or a new beginning when all are full. */
function pick(form, id) {
  const ends = endsOf(form);
  if (ends.every((e) => e.value)) {
    ends.forEach((e) => (e.value = ""));
  }

  const same = ends.find((e) => e.value === id);
  const empty = ends.find((e) => !e.value);
  (same ?? empty).value = same ? "" : id;
  markPicks(form);
  if (ends.every((e) => e.value)) {
    form.elements.namedItem("value")?.focus();
  }
}

function markPicks(form) {
  const picked = endsOf(form).map((e) => e.value);
  for (const point of document.querySelectorAll("main [data-point]")) {
    point.classList.toggle("is-picked", picked.includes(point.dataset.point));
  }
}

document.addEventListener(
  "click",
  async (event) => {
    const link = event.target.closest?.("a[href]");
    if (!state.away || !link || link.origin !== location.origin || link.target || event.defaultPrevented || event.button !== 0) {
      return;
    }

    event.preventDefault();
    if (!pickedHere(link) && (await isBack())) {
      state.away = false;
      location.assign(link.href);
    }
  },
  true,
);

function pickedHere(link) {
  const form = document.querySelector("main form[data-waits]");
  if (!("point" in link.dataset) || !form) {
    return false;
  }

  pick(form, link.dataset.point);
  return true;
}

async function isBack() {
  const fresh = await freshToken().catch(() => "");
  if (!fresh) {
    const words = document.querySelector("#waiting [role=status]");
    words.textContent = say("waiting.no-page");
  }

  return fresh !== "";
}

// The rest of the page could not reach the laptop.
document.addEventListener("plumbmark:away", (event) => {
  state.away = true;
  waited = true;
  state.unsent = event.detail?.unsent ?? false;
  const { link, kept } = event.detail ?? {};
  if (link) {
    pickedHere(link);
  }

  if (kept?.isConnected) {
    ready(kept); // the laptop has it, only its next page did not come through
  }

  tell();
});

addEventListener("online", retry);
addEventListener("pageshow", retry);
document.addEventListener("visibilitychange", () => (document.hidden ? null : retry()));
other?.addEventListener("message", tell);
