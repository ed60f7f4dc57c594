// The list: read on the right as it grows on the left, and kept as a draft on the way. Without scripts a button reads it.
"use strict";
{
  const form = one("form[data-list]"), result = one("[data-lines]"), text = one("#text"), file = one("#file");
  const save = one("button[data-save]"), state = one("[data-state]"), needed = one("a[data-needed]");
  let wait, taken = null, unkept = false, sending = false, asking = 0, resend = null, dirty = Boolean(one("[data-now][data-unsaved]"));

  // What was changed before this script ran, or kept by the browser over a reload, counts as a change too.
  function changed(form) {
    return [...form.elements].some((field) => field.type === "checkbox" || field.type === "radio" ? field.checked !== field.defaultChecked
      : field.options ? field.selectedIndex !== Math.max(0, [...field.options].findIndex((option) => option.defaultSelected))
      : "defaultValue" in field && field.type !== "range" && field.value !== field.defaultValue);
  }

  // The answer takes the place of the result; what was open stays open, and the keyboard goes on where it was.
  function show(html, pressed) {
    const open = all("details[open][data-open]", result).map((each) => each.dataset.open);
    const held = document.activeElement?.id, inside = result.contains(document.activeElement);
    const asked = all("[data-ask]", result).indexOf(document.activeElement?.closest("[data-ask]"));
    result.innerHTML = html;
    for (const each of all("details[data-open]", result)) each.open = open.includes(each.dataset.open);
    const fresh = one("[data-text]", result), now = one("[data-now]", result);
    if (fresh) { put(fresh.value); fresh.remove(); }
    save.textContent = now.dataset.save;
    needed.textContent = now.dataset.needed;
    needed.hidden = !now.dataset.needed;
    dirty = "unsaved" in now.dataset;
    state.textContent = !text.value.trim() ? "" : dirty ? state.dataset.open : state.dataset.kept;
    for (const each of all("[data-unsaved]", form)) if (each !== now) each.hidden = !dirty;
    if (!inside && !pressed) return;
    const questions = all("[data-ask]", result);
    (held && document.getElementById(held) || one("button[name=do], input", questions[Math.min(Math.max(asked, 0), questions.length - 1)] ?? result) || save)
      .focus({ preventScroll: !pressed });
  }
  // Only the lines that differ are replaced, so that the place in the text is kept.
  function put(next) {
    const before = text.value, top = text.scrollTop;
    let start = 0, end = 0;
    while (start < before.length && before[start] === next[start]) start += 1;
    while (end < Math.min(before.length, next.length) - start && before.at(-1 - end) === next.at(-1 - end)) end += 1;
    text.setRangeText(next.slice(start, next.length - end), start, before.length - end);
    text.scrollTop = top;
  }
  async function send(body, pressed) {
    let answer = await fetch(form.dataset.list, { method: "POST", body });
    if (answer.status === 403) {  // the program was started anew: its forms have another seal
      const page = new DOMParser().parseFromString(await (await fetch(location.pathname)).text(), "text/html");
      const seal = one("input[name=token]", page);
      if (!seal) return;
      for (const field of all("input[name=token]")) field.value = seal.value;
      body.set("token", seal.value);
      answer = await fetch(form.dataset.list, { method: "POST", body });
    }
    if (!answer.ok) return;
    one(".offline")?.remove();
    const typed = body.get("text");
    if (pressed || text.value.replaceAll("\r\n", "\n") === typed.replaceAll("\r\n", "\n")) show(await answer.text(), pressed);
    unkept = false;
  }
  async function ask(body, pressed) {
    asking += 1;
    try { await send(body, pressed); } finally {
      asking -= 1;
      if (!asking) { resend?.(); resend = null; }
    }
  }
  const what = (...more) => {
    const body = new FormData(form);
    for (const name of [...body.keys()]) if (name.startsWith("as-") || name === "file") body.delete(name);
    for (const [name, value] of more) body.set(name, value);
    return body;
  };
  const readAgain = lively(async () => { if (!sending) await ask(what()); });
  let newest = -Infinity;
  function later(event) {  // what comes after a pause, as a pasted list does, is read at once
    const pause = event.timeStamp - newest;
    newest = event.timeStamp;
    unkept = true;
    clearTimeout(wait);
    wait = setTimeout(readAgain, pause > 1000 ? 0 : 120);
  }
  text.addEventListener("input", later);
  form.addEventListener("change", (event) => { if (["practise", "whole"].includes(event.target.name)) later(event); });
  if (changed(form)) readAgain();

  // --- one press answers a line ---
  result.addEventListener("click", async (event) => {
    const button = event.target.closest("button");
    if (!button) return;
    event.preventDefault();
    if (button.dataset.at) { goTo(Number(button.dataset.at)); return; }
    clearTimeout(wait);
    const field = one("input", button.closest(".spelling") ?? document.createElement("p"));
    try {
      await ask(what([button.name, button.value], ...(field ? [[field.name, field.value]] : []), ...(button.name === "sheet" ? [["file", taken]] : [])), true);
    } catch { sayOffline(form); }
  });
  result.addEventListener("keydown", (event) => {
    if (event.key !== "Enter" || event.target.tagName !== "INPUT") return;
    event.preventDefault();
    one("button", event.target.closest(".spelling")).click();
  });
  function goTo(line) {
    const lines = text.value.split("\n"), start = lines.slice(0, line - 1).join("\n").length + (line > 1);
    text.focus();
    text.setSelectionRange(start, start + (lines[line - 1] ?? "").length);
    text.scrollTop = Math.max(0, (line - 3) * parseFloat(getComputedStyle(text).lineHeight));
  }
  text.addEventListener("keydown", (event) => {
    if (event.key === "Enter" && (event.ctrlKey || event.metaKey)) { event.preventDefault(); save.click(); }
  });

  // --- a file, chosen or dropped ---
  const take = async () => {
    if (!file.files.length) return;
    taken = file.files[0];
    try { await ask(what(["file", taken]), true); } catch { sayOffline(form); }
    file.value = "";
  };
  file.addEventListener("change", take);
  for (const kind of ["dragover", "drop"]) document.addEventListener(kind, (event) => {
    if (![...event.dataTransfer?.types ?? []].includes("Files")) return;
    event.preventDefault();
    if (kind === "drop") { file.files = event.dataTransfer.files; take(); }
  });

  // --- leaving with a list that is not saved ---
  const leaving = one("[data-leaving]");
  let to = null;
  document.addEventListener("click", (event) => {
    const link = event.target.closest("a[href]");
    if (!link || !(dirty || unkept) || event.ctrlKey || event.metaKey || event.shiftKey || link.target || link.hash && link.pathname === location.pathname) return;
    event.preventDefault();
    to = link.href;
    leaving.showModal();
  });
  for (const button of all("[data-leave]", leaving)) button.addEventListener("click", async () => {
    leaving.close();
    if (button.dataset.leave === "save") save.click();
    if (button.dataset.leave !== "go") return;
    if (unkept) try { await ask(what()); } catch { sayOffline(form); return; }
    dirty = unkept = false;
    location.assign(to);
  });
  addEventListener("beforeunload", (event) => { if (unkept && !sending) event.preventDefault(); });
  const line = /^#line-(\d+)$/.exec(location.hash);  // led here to mend one
  if (line) goTo(Number(line[1]));
  // What is on its way arrives before a form that is sent: after it, it would be a list that another window has typed.
  document.addEventListener("submit", (event) => {
    if (event.defaultPrevented) return;
    if (event.target === form) clearTimeout(wait);
    if (asking) { event.preventDefault(); resend = () => event.target.requestSubmit(event.submitter); return; }
    if (event.target !== form) return;
    sending = true;
    setTimeout(() => { sending = false; }, 3000);
  });
}
