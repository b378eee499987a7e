// Without the laptop, a tap on a point of the drawing goes into the lists of the form beside it.

const endsOf = (form) => ["point", "from", "to"].map((name) => form.elements.namedItem(name)).filter((e) => e?.matches?.("select"));

/** The first empty list takes the point, or a new beginning when all are full. */
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

document.addEventListener("plumbmark:pick", (event) => {
  const form = document.querySelector("main form.floor-entry[data-waits]");
  if ("point" in event.detail.dataset && form && endsOf(form).length > 0) {
    event.preventDefault(); // handled: there is nothing to open
    pick(form, event.detail.dataset.point);
  }
});

document.addEventListener("plumbmark:waits", (event) => {
  if (endsOf(event.target).length > 0) {
    markPicks(event.target);
  }
});
