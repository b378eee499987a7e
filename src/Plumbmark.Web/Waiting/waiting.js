// A reading waits on this phone until the laptop has said that it keeps it. It is written here first, then sent; each has a name of its own, so
// that one sent twice is kept once. Closing the tab, an empty battery or a laptop that was switched off lose nothing.
//
// Over plain http a browser offers neither service workers nor locks: two tabs may send the same reading, and the laptop keeps it once.

const patienceMilliseconds = 6000; // longer than the slowest answer; a person under a frame does not wait longer
const slowestBytesInAMillisecond = 50; // a photo may take as long as it needs over poor Wi-Fi
const pausesMilliseconds = [1000, 2000, 3000, 5000];
const other = "BroadcastChannel" in self ? new BroadcastChannel("plumbmark-waiting") : null;
const state = { away: false, shut: false, trouble: "", unsent: false, full: false, stays: false, sent: [], tries: 0, timer: 0, sending: null };

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
      if (waited) {
        state.sent.push(item);
      }

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
  const files = item.files ?? []; // there are none in what an older page has kept
  const body = files.length > 0 ? new FormData() : new URLSearchParams();
  item.fields.forEach(([name, value]) => body.append(name, value));
  files.forEach((file) => body.append(file.name, file.blob, file.fileName));
  body.set("token", formToken);
  const bytes = files.reduce((sum, file) => sum + file.blob.size, 0);
  return fetch(item.action, {
    method: "POST",
    body,
    headers: { "plumbmark-waiting": item.car },
    redirect: "manual",
    credentials: "same-origin",
    signal: AbortSignal.timeout(patienceMilliseconds + bytes / slowestBytesInAMillisecond),
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
    show(addressHere(), null, isUntouched);
  }
}

/** Nothing is typed, ticked or chosen that would be lost when the page is shown anew. */
const isUntouched = () =>
  [...document.querySelectorAll("main form :is(input:not([type=hidden]), textarea)")].every((f) =>
    ["checkbox", "radio"].includes(f.type) ? f.checked === f.defaultChecked : f.value === f.defaultValue || f.value === "",
  );

/** This page with what is picked in its form. */
function addressHere() {
  const form = document.querySelector("main form.floor-entry[data-waits]");
  if (!form) {
    return location.href;
  }

  const picked = [...new FormData(form)].filter(([name, value]) => !["token", "form"].includes(name) && typeof value === "string" && value);
  return `${location.pathname}?${new URLSearchParams(picked)}`;
}

const show = (address, kept, isWanted) => document.dispatchEvent(new CustomEvent("plumbmark:show", { detail: { address, kept, isWanted } }));

// ---- saying so: see saying.js

let saying = null;
const tell = () => (saying = (saying ?? Promise.resolve()).then(say, say));

async function say() {
  const items = await all().catch(() => []);
  if ((items.some((i) => !i.refused) || state.away) && !state.shut) {
    again();
  } else {
    state.tries = 0;
  }

  state.stays &&= state.away;
  const { away, shut, trouble, unsent, full, stays } = state;
  const sent = waited ? state.sent : [];
  document.dispatchEvent(new CustomEvent("plumbmark:waiting", { detail: { items, sent, away, shut, trouble, unsent, full, stays } }));
}

let waited = false; // whether anything has waited since this page was opened

document.addEventListener("plumbmark:send-again", (event) => rewrite({ ...event.detail, refused: null }).then(retry));
document.addEventListener("plumbmark:throw-away", (event) => remove(event.detail).then(changed));

function changed() {
  other?.postMessage("changed");
  return tell();
}

// ---- a form

/** A sentence of the language file: saying.js has them all. */
function text(key, ...parts) {
  const asked = { key, parts, text: "" };
  document.dispatchEvent(new CustomEvent("plumbmark:text", { detail: asked }));
  return asked.text;
}

/** What a person would say of the form: what it is about, the ends and what was typed, ticked or chosen. */
function wordsOfForm(form) {
  const fields = [...form.elements].filter((f) => f.name && !["hidden", "submit", "button"].includes(f.type) && f.name !== "tool" && f.value.trim());
  const value = (name) => fields.find((f) => f.name === name)?.value ?? "";
  const ends = value("from") && value("to") ? [text("ends", value("from"), value("to"))] : [value("from"), value("to")];
  const rest = fields.filter((f) => !["point", "from", "to"].includes(f.name) && !(["checkbox", "radio"].includes(f.type) && !f.checked));
  const said = [value("point"), ...ends, ...rest.map(wordsOfField)].filter(Boolean).join(", ");
  return form.dataset.says && said ? text("about", form.dataset.says, said) : form.dataset.says || said;
}

function wordsOfField(field) {
  if (field.type === "file") {
    return field.files[0].name;
  }

  return (field.selectedOptions?.[0]?.text ?? (field.type === "checkbox" ? field.closest("label")?.textContent : null) ?? field.value).trim();
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
  if (tooLarge(form)) {
    return;
  }

  let item;
  try {
    item = await keep(await itemOf(form, submitter));
    state.full = state.stays = false;
  } catch (fault) {
    if (state.away && fault?.name === "QuotaExceededError") {
      state.full = true; // it stays on the page, and the words say so
      tell();
      return;
    }

    // A window that keeps nothing: sent in the ordinary way.
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
  state.sent = [];
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

/** What is kept of a form. A file is read to its end now: the one that was chosen may be gone when the connection is back. */
async function itemOf(form, submitter) {
  const entries = [...new FormData(form, submitter)].filter(([name]) => name !== "token");
  const files = [];
  for (const [name, file] of entries) {
    if (file instanceof File && file.size > 0) {
      files.push({ name, fileName: file.name, blob: new Blob([await file.arrayBuffer()], { type: file.type }) });
    }
  }

  return {
    name: form.elements.namedItem("form").value,
    action: new URL(form.action).pathname,
    car: form.dataset.waits,
    kind: form.dataset.what,
    fields: entries.filter(([, value]) => typeof value === "string"),
    files,
    words: wordsOfForm(form),
    at: Date.now(),
  };
}

/** A file that the laptop would refuse anyway is told at once, where another can still be taken. */
function tooLarge(form) {
  for (const input of form.querySelectorAll("input[type=file][data-most]")) {
    const bytes = input.files[0]?.size ?? 0;
    input.parentElement.querySelector(".fault")?.remove();
    if (bytes > Number(input.dataset.most)) {
      const fault = document.createElement("p");
      fault.className = "fault";
      fault.role = "alert";
      fault.textContent = input.dataset.tooLarge.replace("{0}", (bytes / 1048576).toFixed(1));
      input.after(fault);
      input.focus();
      return true;
    }
  }

  return false;
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
    empty(field, form.matches(".floor-entry"));
  }

  const round = form.querySelector("[data-round]");
  if (round) {
    const left = round.dataset.round.split("!").filter((l) => l && l !== done);
    round.dataset.round = left.join("!");
    fill(form, left[0]);
  }

  form.dispatchEvent(new CustomEvent("plumbmark:waits", { bubbles: true }));
  const value = form.elements.namedItem("value") ?? form.querySelector("input:not([type=hidden], [type=file])");
  value?.focus({ preventScroll: true });
}

/** As the laptop shows the form anew: on the floor, where the tape starts and which tool it is stay as they are. */
function empty(field, isOnFloor) {
  const isTyped = field.matches("textarea, input:not([type])") || ["text", "search", "number", "file"].includes(field.type);
  if ((isTyped && field.name !== "startAt") || (isOnFloor && ["point", "from", "to"].includes(field.name))) {
    field.value = "";
  } else if (field.type === "checkbox") {
    field.checked = false;
  } else if (field.matches("select") && !isOnFloor) {
    field.selectedIndex = Math.max(0, [...field.options].findIndex((o) => o.defaultSelected));
  }
}

const endsOf = (form) => ["point", "from", "to"].map((name) => form.elements.namedItem(name)).filter(Boolean);
const lineIn = (form) => (form.elements.namedItem("point")?.value ? form.elements.namedItem("point").value : `${form.elements.namedItem("from")?.value}~${form.elements.namedItem("to")?.value}`);

function fill(form, next) {
  if (next) {
    next.split("~").forEach((id, i) => (endsOf(form)[i] ? (endsOf(form)[i].value = id) : null));
  }
}

// ---- links without the laptop

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

/** A tap on a point of the drawing: see picking.js. */
const pickedHere = (link) => !document.dispatchEvent(new CustomEvent("plumbmark:pick", { detail: link, cancelable: true }));

async function isBack() {
  const fresh = await freshToken().catch(() => "");
  if (!fresh) {
    state.stays = true;
    tell();
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
