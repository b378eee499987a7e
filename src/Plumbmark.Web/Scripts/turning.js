// The frame that turns by finger. The library is fetched only here; where WebGL is missing the still picture stays.

const holder = document.querySelector("[data-turning]");

function colours() {
  const style = getComputedStyle(document.documentElement);
  const of = (name) => style.getPropertyValue(name).trim();
  return { ink: of("--ink"), should: of("--line"), true: of("--true"), out: of("--out"), open: of("--open"), none: of("--quiet") };
}

// A name as a flat sign that always faces the eye.
function sign(three, text, colour) {
  const canvas = document.createElement("canvas");
  [canvas.width, canvas.height] = [160, 64];
  const pen = canvas.getContext("2d");
  pen.font = "700 44px system-ui, sans-serif";
  pen.textAlign = "center";
  pen.fillStyle = colour;
  pen.fillText(text, 80, 48);
  const sprite = new three.Sprite(new three.SpriteMaterial({ map: new three.CanvasTexture(canvas), depthTest: false }));
  sprite.scale.set(0.3, 0.12, 1);
  return sprite;
}

function build(three, frame) {
  const colour = colours();
  const group = new three.Group();
  // Axes of the car, x forward, y left, z up, become the screen's: y up, the front toward the eye.
  const at = (x, y, z) => new three.Vector3(y, z, x);
  const is = Object.fromEntries(frame.points.map((p) => [p.id, p]));
  const line = (from, to, paint, isDashed) => {
    const geometry = new three.BufferGeometry().setFromPoints([from, to]);
    const material = isDashed
      ? new three.LineDashedMaterial({ color: paint, dashSize: 0.03, gapSize: 0.03 })
      : new three.MeshBasicMaterial({ color: paint });
    if (isDashed) {
      const dashed = new three.Line(geometry, material);
      dashed.computeLineDistances();
      group.add(dashed);
      return;
    }

    const tube = new three.Mesh(new three.TubeGeometry(new three.LineCurve3(from, to), 1, 0.009, 6), material);
    group.add(tube);
  };
  for (const [a, b] of frame.beams.map(([a, b]) => [is[a], is[b]])) {
    line(at(a.shouldX, a.shouldY, a.shouldZ), at(b.shouldX, b.shouldY, b.shouldZ), colour.should, true);
    line(at(a.x, a.y, a.z), at(b.x, b.y, b.z), colour.ink, false);
  }

  for (const point of frame.points) {
    // Shape as well as colour: a cube is out, a ball is not.
    const shape = point.verdict === "out" ? new three.BoxGeometry(0.06, 0.06, 0.06) : new three.SphereGeometry(0.028, 12, 8);
    const mark = new three.Mesh(shape, new three.MeshBasicMaterial({ color: colour[point.verdict] }));
    mark.position.copy(at(point.x, point.y, point.z));
    const name = sign(three, point.id, colour.ink);
    name.position.copy(mark.position).add(new three.Vector3(0, 0.09, 0));
    group.add(mark, name);
  }

  const box = new three.Box3().setFromObject(group);
  group.position.sub(box.getCenter(new three.Vector3()));
  return { group, size: box.getSize(new three.Vector3()).length() };
}

async function start() {
  const frame = JSON.parse(holder.dataset.frame);
  const three = await import(holder.dataset.three);
  const renderer = new three.WebGLRenderer({ antialias: true, alpha: true });
  const { group, size } = build(three, frame);
  const pivot = new three.Group();
  pivot.add(group);
  const scene = new three.Scene();
  scene.add(pivot);
  const camera = new three.PerspectiveCamera(35, 1, 0.1, 50);
  let distance = size * 1.35;
  pivot.rotation.set(0.45, -0.7, 0);
  const draw = () => {
    const width = holder.clientWidth;
    renderer.setSize(width, width);
    renderer.setPixelRatio(Math.min(devicePixelRatio, 2));
    camera.position.set(0, 0, distance);
    renderer.render(scene, camera);
  };
  const turn = (dx, dy) => {
    pivot.rotation.y += dx;
    pivot.rotation.x = Math.max(-1.5, Math.min(1.5, pivot.rotation.x + dy));
    requestAnimationFrame(draw);
  };
  holder.replaceChildren(renderer.domElement);
  holder.dataset.turns = "yes";
  const fingers = new Map();
  const spread = () => {
    const [a, b] = [...fingers.values()];
    return Math.hypot(a.x - b.x, a.y - b.y);
  };
  const canvas = renderer.domElement;
  canvas.addEventListener("pointerdown", (event) => {
    canvas.setPointerCapture(event.pointerId);
    fingers.set(event.pointerId, { x: event.clientX, y: event.clientY });
  });
  canvas.addEventListener("pointermove", (event) => {
    const last = fingers.get(event.pointerId);
    if (!last) {
      return;
    }

    const before = fingers.size === 2 ? spread() : 0;
    fingers.set(event.pointerId, { x: event.clientX, y: event.clientY });
    if (fingers.size === 2) {
      distance = Math.max(size * 0.5, Math.min(size * 4, (distance * before) / Math.max(1, spread())));
      requestAnimationFrame(draw);
    } else {
      turn((event.clientX - last.x) / 120, (event.clientY - last.y) / 120);
    }
  });
  for (const ending of ["pointerup", "pointercancel"]) {
    canvas.addEventListener(ending, (event) => fingers.delete(event.pointerId));
  }

  const ways = { left: [-0.3, 0], right: [0.3, 0], up: [0, -0.2], down: [0, 0.2] };
  const buttons = document.querySelector("[data-turn-buttons]");
  buttons.hidden = false;
  buttons.addEventListener("click", (event) => {
    const way = ways[event.target.closest("[data-turn]")?.dataset.turn];
    if (way) {
      turn(...way);
    }
  });
  addEventListener("resize", draw);
  draw();
}

if (holder) {
  // Without WebGL the library throws while it starts; nothing has been replaced by then.
  start().catch(() => (holder.dataset.turns = "no"));
}
