// Everything works without this file. With it, picks and kept readings do not load the page anew, and a form is sent once.
// Links and forms that may be handled this way carry data-quiet.

const main = () => document.getElementById("main");

async function show(request, address) {
  const answer = await fetch(request, { redirect: "follow", credentials: "same-origin" });
  if (!(answer.headers.get("content-type") ?? "").startsWith("text/html")) {
    throw new Error("not a page");
  }

  const page = new DOMParser().parseFromString(await answer.text(), "text/html");
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
  // A form shown again with its faults keeps the address it was sent from: reloading must not ask for a noun.
  return answer.redirected || answer.ok ? (answer.redirected ? answer.url : address) : location.href;
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
  } catch {
    location.assign(address);
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
  // On the round the next value is typed at once; fetch does not tell the fragment of a redirect.
  const onward = form.elements.round?.value ? "#value" : "";
  try {
    const address = await show(new Request(form.action, { method: "POST", body }), location.href);
    history.pushState(null, "", address + onward);
    settle(address + onward, false);
  } catch {
    // Sent in the ordinary way: the form has a name of its own, so if it did arrive it is kept once.
    form.submit();
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

addEventListener("popstate", () => location.reload());
