// One child now: as letters are typed those who begin so are left, and Enter takes the first.
"use strict";
{
  const form = document.querySelector("[data-finder]"), field = document.querySelector("#letters");
  const found = document.querySelector("#found"), hits = document.querySelector("[data-hits]");
  const everyone = document.querySelector("[data-everyone]"), strip = document.querySelector(".strip");
  const items = [...everyone.querySelectorAll("li")], homes = new Map(items.map((item) => [item, item.parentNode]));
  const buttons = () => [...form.querySelectorAll(".names:not([hidden]) button")].filter((one) => one.checkVisibility());

  const narrow = () => {  // whose name begins so comes first, then whose family's does
    const typed = plain(field.value);
    const first = items.filter((item) => item.dataset.begins.split("|").some((name) => name.startsWith(typed)));
    const shown = [...first, ...items.filter((item) => !first.includes(item) && item.dataset.family.startsWith(typed))];
    for (const item of items) {
      item.classList.toggle("first", typed !== "" && item === shown[0]);
      homes.get(item).append(item);
    }
    if (typed) hits.append(...shown);
    hits.hidden = !typed;
    everyone.hidden = typed !== "";
    if (strip) strip.hidden = typed !== "";
    found.textContent = !typed ? (items.length ? form.dataset.all : "") : shown.length === 0 ? form.dataset.none
      : shown.length === 1 ? form.dataset.one : form.dataset.found.replace("#", shown.length);
  };
  field.addEventListener("input", narrow);
  field.addEventListener("keydown", (event) => {
    const first = hits.querySelector(".first button");
    if (event.key === "Enter" && first && field.value.trim()) { event.preventDefault(); first.click(); }
    if (event.key === "ArrowDown") { event.preventDefault(); buttons()[0]?.focus(); }
  });
  form.addEventListener("keydown", (event) => {
    const step = { ArrowDown: 1, ArrowRight: 1, ArrowUp: -1, ArrowLeft: -1 }[event.key];
    const shown = buttons(), here = shown.indexOf(document.activeElement);
    if (!step || here < 0) return;
    event.preventDefault();
    if (here + step < 0) field.focus();
    else shown[Math.min(here + step, shown.length - 1)].focus();
  });
  if (field.value) narrow();
}
