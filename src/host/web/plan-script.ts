/**
 * The one script of the pages, for the plan's text: numbers the lines, and a moment after the last key asks what is wrong and
 * says it under the text, leading to its line. The page does without it; nothing is stored by it.
 */
export const PLAN_JS = `"use strict";
const text = document.getElementById("text");
const told = document.getElementById("checked");
const gutter = document.createElement("div");
gutter.className = "gutter";
gutter.setAttribute("aria-hidden", "true");
text.before(gutter);
text.parentElement.classList.add("scripted");
let problems = [];
let asked = 0;

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
  text.focus();
  text.setSelectionRange(from, to < 0 ? text.value.length : to);
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
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = "line " + line;
    button.addEventListener("click", () => goTo(line));
    item.append(button, " " + says);
    list.append(item);
  }
  told.append(list);
  number();
}

async function check(show) {
  const mine = ++asked;
  const form = new URLSearchParams(new FormData(text.form));
  try {
    const answer = await fetch(text.form.dataset.check ?? location.pathname + "/check", { method: "POST", body: form });
    if (!answer.ok || mine !== asked) return;
    problems = await answer.json();
    show();
  } catch {
    // Without a network the text stays as it is, and saving tells.
  }
}

let later;
text.addEventListener("input", () => {
  number();
  clearTimeout(later);
  later = setTimeout(check, 700, tell);
});
text.addEventListener("scroll", () => { gutter.scrollTop = text.scrollTop; });
number();
// The page has told already what is wrong; its lines are marked too.
if (document.querySelector(".beside")) check(number);
`;
