// The keys for a value, and reading it back aloud. The field keeps working without them: they only write into it.

const wantsKeys = () => (localStorage.getItem("keypad") ?? (matchMedia("(any-pointer: coarse)").matches ? "on" : "off")) === "on";
const wantsVoice = () => localStorage.getItem("voice") === "on";
const hasVoice = "speechSynthesis" in window && "SpeechSynthesisUtterance" in window;

function value() {
  return document.querySelector(".floor-entry input[name=value]");
}

function press(key, unit) {
  const field = value();
  const text = field.value;
  const bare = text.replace(/\s*(mm|in)$/, "");
  const tail = text.slice(bare.length);
  switch (key) {
    case "back":
      // A fraction's denominator, a foot mark and a unit go in one piece, as they came.
      return tail ? bare : text.replace(/(\/\d+|' | |.)$/, "");
    case "clear":
      return "";
    case "minus":
      return /^[-−]/.test(text) ? text.slice(1) : "-" + text;
    case "unit":
      return tail.trim() === unit ? bare : bare + " " + unit;
    case "foot":
      return bare && !bare.includes("'") ? bare.trimEnd() + "' " : text;
    case "and":
      return bare && !/[\s/]$/.test(bare) && !bare.includes("/") ? bare + " " + tail : text;
    case ".":
      return /[./]\d*$/.test(bare) ? text : bare + "." + tail;
    default:
      // One denominator only: another one takes its place.
      return key.startsWith("/") ? (/\d/.test(bare) ? bare.replace(/\/\d+$/, "") + key + tail : text) : bare + key + tail;
  }
}

function reveal() {
  const pad = document.querySelector("[data-keypad]");
  const switches = document.querySelectorAll("[data-switch]");
  for (const button of switches) {
    const isKeys = button.dataset.switch === "keypad";
    button.hidden = isKeys ? !pad : !hasVoice;
    button.setAttribute("aria-pressed", String(isKeys ? wantsKeys() : wantsVoice()));
  }

  if (pad && value()) {
    pad.hidden = !wantsKeys();
    // With our keys the phone's own keyboard stays down and does not cover the answer.
    value().inputMode = wantsKeys() ? "none" : "text";
  }

  for (const input of document.querySelectorAll("input[type=file][data-shrink]")) {
    input.accept ||= "image/*";
  }
}

let spoken = document.querySelector("[data-spoken]")?.dataset.spoken;

function speak() {
  const words = document.querySelector("[data-spoken]")?.dataset.spoken;
  if (words && words !== spoken && wantsVoice() && hasVoice) {
    speechSynthesis.cancel();
    speechSynthesis.speak(new SpeechSynthesisUtterance(words));
  }

  spoken = words;
}

document.addEventListener("click", (event) => {
  const key = event.target.closest?.("[data-keypad] [data-key]");
  if (key && value()) {
    value().value = press(key.dataset.key, key.dataset.unit);
    value().dispatchEvent(new Event("input", { bubbles: true }));
    return;
  }

  const button = event.target.closest?.("[data-switch]");
  if (button) {
    const name = button.dataset.switch;
    localStorage.setItem(name, button.getAttribute("aria-pressed") === "true" ? "off" : "on");
    reveal();
    if (name === "voice" && wantsVoice()) {
      spoken = undefined;
      speak();
    }
  }
});

// Without the laptop the next line is filled in on the phone: the large words follow.
document.addEventListener("plumbmark:waits", (event) => {
  const form = event.target;
  const now = form.querySelector?.("[data-now]");
  const ends = ["point", "from", "to"].map((name) => form.elements.namedItem(name)?.value).filter(Boolean);
  if (now) {
    now.textContent = ends.length ? now.dataset.now.replace("{0}", ends[0]).replace("{1}", ends[1] ?? "") : "";
  }
});

document.addEventListener("plumbmark:shown", () => {
  reveal();
  speak();
});
reveal();

// Opened at the value, the pair asked for and every key are to be seen, not the field alone.
addEventListener("load", () =>
  requestAnimationFrame(() => {
    if (location.hash === "#value") {
      value()?.closest(".floor-compact form")?.scrollIntoView({ block: "start", behavior: "instant" });
    }
  }),
);
