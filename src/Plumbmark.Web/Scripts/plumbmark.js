// Everything works without this file. With it, picks and kept readings do not load the page anew, and a form is sent once.
// Links and forms that may be handled this way carry data-quiet. Forms that carry data-waits too are kept on the phone first: see waiting.js.

const patienceMilliseconds = 15000;

const main = () => document.getElementById("main");

/** The laptop cannot be reached, as against one that answers something unexpected. */
class Away extends Error {}

async function reach(request) {
  try {
    const answer = await fetch(request, { redirect: "follow", credentials: "same-origin", signal: AbortSignal.timeout(patienceMilliseconds) });
    return [answer, await answer.text()];
  } catch {
    throw new Away();
  }
}

const away = (detail) => document.dispatchEvent(new CustomEvent("plumbmark:away", { detail }));

async function show(request, address, isWanted = () => true) {
  const [answer, html] = await reach(request);
  if (!isWanted()) {
    return null; // meanwhile something was typed, which the page would take away
  }

  if (!(answer.headers.get("content-type") ?? "").startsWith("text/html")) {
    throw new Error("not a page");
  }

  put(html);
  // A form shown again with its faults keeps the address it was sent from: reloading must not ask for a noun.
  return answer.redirected || answer.ok ? (answer.redirected ? answer.url : address) : location.href;
}

function put(html) {
  const page = new DOMParser().parseFromString(html, "text/html");
  if (!page.getElementById("main")) {
    throw new Error("not a page of ours");
  }

  const open = openDetails();
  // The top line and the rooms too: they name the car, and a new car has just come.
  for (const part of [".top", "main", ".rooms"]) {
    document.querySelector(part).replaceWith(document.adoptNode(page.querySelector(part)));
  }

  reopen(open);
  reveal();
  document.title = page.title;
}

// What a person has unfolded stays unfolded.
const openDetails = () => [...document.querySelectorAll("main details[open] > summary")].map((s) => s.textContent.trim());

function reopen(summaries) {
  for (const summary of document.querySelectorAll("main details > summary")) {
    if (summaries.includes(summary.textContent.trim())) {
      summary.parentElement.open = true;
    }
  }
}

// On the round the next value is typed at once; fetch does not tell the fragment of a redirect.
const onward = (address) => (document.querySelector(".floor-compact") ? address.split("#")[0] + "#value" : address);

function settle(address, keepPlace, x, y) {
  const wrong = document.querySelector("main [aria-invalid=true]");
  const target = wrong ?? document.getElementById(decodeURIComponent(new URL(address, location.href).hash.slice(1)));
  if (target?.matches("input, select, textarea")) {
    target.focus({ preventScroll: true });
    // On the round what is asked for stands above the field, and the keys below it: all of them are to be seen.
    const compact = target.closest(".floor-compact form");
    (compact ?? target).scrollIntoView({ block: compact ? "start" : "center" });
  } else if (keepPlace) {
    scrollTo(x, y);
  } else {
    scrollTo(0, 0);
    main().focus({ preventScroll: true });
  }
}

document.addEventListener("click", async (event) => {
  const link = event.target.closest?.("a[data-quiet]");
  if (!link || event.defaultPrevented || event.button !== 0 || event.metaKey || event.ctrlKey || event.shiftKey || event.altKey) {
    return;
  }

  event.preventDefault();
  const address = link.getAttribute("href");
  const label = link.getAttribute("aria-label") ?? link.textContent;
  const [x, y] = [scrollX, scrollY];
  try {
    await show(address, address);
    // Picking ends is one step of a form, not a page to go back to.
    history.replaceState(null, "", address);
    settle(address, true, x, y);
    refocus(label);
  } catch (fault) {
    if (fault instanceof Away) {
      away({ link });
    } else {
      location.assign(address);
    }
  }
});

// The keyboard stays where it was, on the same point or kind of the new drawing.
function refocus(label) {
  if (document.activeElement && document.activeElement !== document.body) {
    return;
  }

  const name = label.split(",")[0].trim();
  const same = [...document.querySelectorAll("main a[data-quiet]")].find(
    (a) => (a.getAttribute("aria-label") ?? a.textContent).split(",")[0].trim() === name,
  );
  same?.focus({ preventScroll: true });
}

document.addEventListener("submit", async (event) => {
  const form = event.target;
  if (form.method !== "post" || event.defaultPrevented) {
    return;
  }

  const button = event.submitter;
  if (form.dataset.sending) {
    event.preventDefault(); // a second press while the first is on its way
    return;
  }

  form.dataset.sending = "yes";
  button?.setAttribute("aria-busy", "true");
  if (!("quiet" in form.dataset) || form.enctype === "multipart/form-data") {
    return;
  }

  event.preventDefault();
  const body = new URLSearchParams(new FormData(form, button));
  try {
    const address = await show(new Request(form.action, { method: "POST", body }), location.href);
    history.pushState(null, "", address);
    settle(onward(address), false);
  } catch (fault) {
    if (fault instanceof Away) {
      // The page stays with what was typed. The form has a name of its own: pressed again, it is kept once even if it did arrive.
      delete form.dataset.sending;
      button?.removeAttribute("aria-busy");
      away({ unsent: true });
    } else {
      form.submit();
    }
  }
});

// What only script can do is hidden until it is there.
function reveal() {
  for (const button of document.querySelectorAll("[data-print]")) {
    button.hidden = false;
    button.onclick = () => print();
  }

  // For what other scripts add to a page.
  document.dispatchEvent(new Event("plumbmark:shown"));
}

addEventListener("pageshow", () => {
  reveal();
  for (const form of document.querySelectorAll("form[data-sending]")) {
    delete form.dataset.sending;
    form.querySelector("[aria-busy]")?.removeAttribute("aria-busy");
  }
});

// What waiting.js has sent, or found back in order, is shown by the same hand as everything else.
document.addEventListener("plumbmark:show", async (event) => {
  const { html, address, kept, isWanted } = event.detail;
  try {
    if (html) {
      put(html);
      settle(onward(location.href), false);
      return;
    }

    const there = await show(address, address, isWanted);
    if (there === null) {
      return;
    }

    if (new URL(there, location.href).href !== location.href) {
      history.pushState(null, "", there);
    }

    settle(onward(there), false);
  } catch (fault) {
    if (fault instanceof Away) {
      away({ kept });
    } else {
      location.assign(address);
    }
  }
});

addEventListener("popstate", () => location.reload());
