/**
 * The script of a plan's page: numbers the lines, and a moment after the last key asks what is wrong, says it, leads to its line, and
 * draws the season anew. Warns before typed text would be left unsaved, keeps it in this tab alone until it is saved, and shows that
 * it is being saved. The page does without it.
 */
export const PLAN_JS = `"use strict";
const text = document.getElementById("text");
const form = text.form;
const told = document.getElementById("checked");
const saving = document.getElementById("saving");
const pictures = document.getElementById("pictures");
const gutter = document.createElement("div");
gutter.className = "gutter";
gutter.setAttribute("aria-hidden", "true");
text.before(gutter);
text.parentElement.classList.add("scripted");
let problems = [];
let asked = 0;
let sending = false;
let saved = form.dataset.unsaved ? null : text.value;

function number() {
  const count = text.value.split("\\n").length;
  const marks = new Map();
  for (const { line, stops } of problems) if (stops || !marks.has(line)) marks.set(line, stops ? "✗" : "?");
  gutter.textContent = Array.from({ length: count }, (_, at) => (marks.get(at + 1) ?? "") + " " + (at + 1)).join("\\n");
  gutter.scrollTop = text.scrollTop;
}

function goTo(line) {
  const from = text.value.split("\\n").slice(0, line - 1).join("\\n").length + (line > 1 ? 1 : 0);
  const to = text.value.indexOf("\\n", from);
  text.focus({ preventScroll: true });
  text.setSelectionRange(from, to < 0 ? text.value.length : to);
  // Where a text is long, the line is brought to the middle of its field, and the field into sight.
  const height = parseFloat(getComputedStyle(text).lineHeight);
  text.scrollTop = Math.max(0, (line - 1) * height - text.clientHeight / 2);
  text.scrollLeft = 0;
  const top = text.getBoundingClientRect().top + scrollY + (line - 1) * height - text.scrollTop;
  scrollTo({ top: top - innerHeight / 3 });
}

function leading(line) {
  const button = document.createElement("button");
  button.type = "button";
  button.textContent = "line " + line;
  button.addEventListener("click", () => goTo(line));
  return button;
}

function tell() {
  // What was wrong when it was last sent is told below from now on.
  document.querySelector(".beside")?.remove();
  told.replaceChildren();
  const summary = document.createElement("p");
  const wrong = problems.filter(({ stops }) => stops).length;
  summary.textContent = wrong > 0 ? "Not yet to be saved: " + wrong + (wrong === 1 ? " line wants" : " places want") + " putting right." : "It can be saved.";
  told.append(summary);
  const list = document.createElement("ul");
  for (const { line, says } of problems) {
    const item = document.createElement("li");
    item.append(leading(line), " " + says);
    list.append(item);
  }
  told.append(list);
  number();
}

async function check(show) {
  const mine = ++asked;
  const body = new URLSearchParams(new FormData(form));
  try {
    const answer = await fetch(form.dataset.check ?? location.pathname + "/check", { method: "POST", body });
    if (!answer.ok || mine !== asked) return;
    problems = await answer.json();
    show();
    if (pictures && !problems.some(({ stops }) => stops)) await draw(body, mine);
  } catch {
    // Without a network the text stays as it is, and saving tells.
  }
}

async function draw(body, mine) {
  for (const image of pictures.querySelectorAll("img")) {
    const answer = await fetch(image.dataset.src, { method: "POST", body });
    if (mine !== asked) return;
    // A plan without beds has none to draw.
    image.hidden = !answer.ok;
    if (!answer.ok) continue;
    const before = image.src;
    image.src = URL.createObjectURL(await answer.blob());
    if (before.startsWith("blob:")) URL.revokeObjectURL(before);
  }
  pictures.querySelector("[role=status]").textContent = isChanged() ? "The text as it stands here, not saved yet." : "The plan as it is saved.";
}

const isChanged = () => text.value !== saved;
const draft = form.dataset.draft && "draft " + location.pathname;

function keep() {
  if (!draft) return;
  try {
    if (isChanged()) sessionStorage.setItem(draft, JSON.stringify([form.elements.base.value, text.value]));
    else sessionStorage.removeItem(draft);
  } catch {
    // A browser that keeps nothing still warns before the page is left.
  }
}

/** What was typed here and left unsaved stands here again, over the version that it was typed over. */
function takeUp() {
  const kept = draft && saved !== null ? sessionStorage.getItem(draft) : null;
  if (kept === null) return keep();
  const [base, typed] = JSON.parse(kept);
  if (typed === text.value) return sessionStorage.removeItem(draft);
  const newest = [form.elements.base.value, text.value];
  [form.elements.base.value, text.value] = [base, typed];
  saving.textContent = "What you typed here before stands here again. It is not saved yet. ";
  const button = document.createElement("button");
  button.type = "button";
  button.textContent = "Throw it away";
  button.addEventListener("click", () => {
    [form.elements.base.value, text.value] = newest;
    saving.textContent = "";
    keep();
    check(tell);
  });
  saving.append(button);
  check(tell);
}

let later;
text.addEventListener("input", () => {
  number();
  keep();
  clearTimeout(later);
  later = setTimeout(check, 700, tell);
});
text.addEventListener("scroll", () => { gutter.scrollTop = text.scrollTop; });
form.addEventListener("submit", () => {
  sending = true;
  if (saving) saving.textContent = "Saving …";
  form.setAttribute("aria-busy", "true");
});
addEventListener("pageshow", ({ persisted }) => {
  sending = false;
  form.removeAttribute("aria-busy");
  if (persisted && saving) saving.textContent = "";
});
addEventListener("beforeunload", (event) => {
  if (isChanged() && !sending) event.preventDefault();
});
try {
  if (saving) takeUp();
} catch {
  // A browser that keeps nothing has nothing to take up.
}
number();
// On a phone the pictures would be longer than everything else.
if (pictures && !matchMedia("(min-width: 62rem)").matches) pictures.open = false;
for (const line of document.querySelectorAll(".beside [data-line]")) line.replaceChildren(leading(Number(line.dataset.line)));
// The page has told already what is wrong; its lines are marked too.
if (document.querySelector(".beside")) check(number);
`;
