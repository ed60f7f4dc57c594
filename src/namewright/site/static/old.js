// For browsers that cannot read the rest of this page, and so cannot say it themselves: one sentence, in words that every
// browser with scripts understands. DecompressionStream came later than all else that is needed (2020 to 2023).
(function () {
  var said = document.getElementById("said"), words = JSON.parse(said.getAttribute("data-old"));
  var spoken = (navigator.language || "en").split("-")[0];
  if (!window.DecompressionStream) said.textContent = words[spoken] || words.en;
})();
