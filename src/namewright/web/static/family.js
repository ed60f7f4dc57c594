// The language of a family is kept as soon as it is chosen.
"use strict";
for (const form of document.querySelectorAll("[data-at-once]")) form.addEventListener("change", () => form.requestSubmit());
