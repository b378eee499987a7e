// Says in words what waits on this phone and why, above every page. The sentences come from the language file, through the page.

const place = document.getElementById("waiting");
const texts = Object.fromEntries(place.dataset.texts.split("|").map((t) => t.split(/=(.*)/s)));
const plural = new Intl.PluralRules(document.documentElement.lang || "en");

const say = (key, ...parts) => texts[key].replace(/\{(\d)\}/g, (_, i) => parts[i]);
const counted = (key, count, ...parts) => say(plural.select(count) === "one" ? `${key}.one` : `${key}.many`, ...parts);

document.addEventListener("plumbmark:text", ({ detail }) => (detail.text = say(detail.key, ...detail.parts)));

/** "3 readings and 1 photo". */
function things(items) {
  const counts = new Map();
  items.forEach((i) => counts.set(i.kind ?? "reading", (counts.get(i.kind ?? "reading") ?? 0) + 1));
  const named = [...counts].map(([kind, count]) => counted(kind, count, count));
  return named.length < 2 ? named.join("") : say("and", named.slice(0, -1).join(", "), named.at(-1));
}

document.addEventListener("plumbmark:waiting", (event) => {
  const detail = event.detail;
  const { items } = detail;
  const refused = items.filter((i) => i.refused);
  const words = place.querySelector("[role=status]");
  const text = wordsOf(detail, items.filter((i) => !i.refused), refused);
  if (words.textContent !== text) {
    words.textContent = text;
  }

  place.hidden = text === "";
  place.classList.toggle("is-away", detail.away || detail.shut);
  const list = place.querySelector("details");
  list.hidden = items.length === 0;
  list.open ||= refused.length > 0;
  place.querySelector("ul").replaceChildren(...items.map(line));
  markOlder(items);
});

function wordsOf({ sent, away, shut, trouble, unsent, full, stays }, waiting, refused) {
  const parts = [];
  if (shut) {
    parts.push(say("shut"));
  } else if (trouble) {
    parts.push(say("trouble", trouble));
  } else if (away) {
    parts.push(say(stays ? "no-page" : "away"));
  }

  if (full) {
    parts.push(say("full"));
  }

  if (waiting.length > 0) {
    parts.push(counted(shut ? "waits-shut" : away ? "waits-away" : "waits", waiting.length, things(waiting)));
  } else if (unsent) {
    parts.push(say("unsent"));
  } else if (away && !full) {
    parts.push(say("go-on"));
  } else if (sent.length > 0) {
    parts.push(say(refused.length > 0 ? "back-else" : "back", things(sent)));
  }

  if (refused.length > 0) {
    parts.push(counted("refused", refused.length, things(refused)));
  }

  return parts.join(" ");
}

function line(item) {
  const entry = document.createElement("li");
  const words = document.createElement("p");
  const at = new Date(item.at).toLocaleTimeString([], { hour: "2-digit", minute: "2-digit" });
  words.textContent = `${item.words || say("empty-form")} (${at})`;
  entry.append(words);
  if (item.refused) {
    const why = document.createElement("p");
    why.className = "fault";
    why.textContent = say("not-taken", item.refused.join(" "));
    entry.append(
      why,
      button("send-again", item, () => tell("plumbmark:send-again", item)),
      button("throw-away", item, () => (confirm(say("confirm", item.words)) ? tell("plumbmark:throw-away", item) : null)),
    );
  }

  return entry;
}

const tell = (name, detail) => document.dispatchEvent(new CustomEvent(name, { detail }));

function button(key, item, press) {
  const made = document.createElement("button");
  made.type = "button";
  made.className = "plain";
  made.textContent = say(key);
  made.setAttribute("aria-label", say("about", say(key), item.words));
  made.addEventListener("click", press);
  return made;
}

/** What the page says was worked out before something that waits: where that could hurt somebody, the page says so itself. */
let actions = [];

function markOlder(items) {
  actions = items.map((i) => i.action);
  for (const older of document.querySelectorAll("main [data-older-than]")) {
    older.hidden = !actions.includes(older.dataset.olderThan);
  }
}

document.addEventListener("plumbmark:shown", () => markOlder(actions.map((action) => ({ action }))));
