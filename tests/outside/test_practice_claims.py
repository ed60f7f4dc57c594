"""Each sentence that cites a study, set beside what the study's abstract says, line by line.

``ABSTRACTS`` tells in our words what was read in each abstract (or table), apart from the package's own evidence file.
A row of ``CLAIMS`` is a sentence as it is printed, and the words of the abstract that carry it. A citation that is in
no row fails, so a sentence cannot be changed, and no new one written, without looking at its source again.
"""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from namewright.pages.ladder import RUNGS
from namewright.practice.evidence import Surety, load_evidence
from namewright.wording import wording

CITES = re.compile(r"[A-Z][a-z]+(?: (?:et al\.|[&y] [A-Z][A-Za-z]+))? \(?(?:19|20)\d\d")

# What was read, in our words; where, stands in evidence.toml under the same key.
ABSTRACTS = {
    "phillips-2012": "1,074 and 500 children aged 2 to 5 named capitals; order clear only at the ends; table seen",
    "puranik-2014": "415 children aged 3 to 5; letter factors had no substantial influence on writing letters, being "
                    "in the child's own name had; what drives naming does not substantially influence writing",
    "treiman-broderick-1998": "initial of the first name named better; preschoolers also printed it better",
    "treiman-2014": "130 children aged 5 to 6; left-facing forms (d, J) reversed more; no later poor reading foretold",
    "fischer-koch-2016": "166 children; at 5 often reverse left-facing characters when writing from memory",
    "reidlinger-2012": "first graders; with two lines 55% took the middle line for the top line",
    "hirsch-niedermeyer-1973": "kindergartners; all improved; copying beat faded tracing",
    "askov-greff-1975": "kindergarten and grade 2; copying clearly better than tracing at reproducing from memory",
    "berninger-1997": "144 first graders at risk; six groups, five lessons and a control; numbered arrows with writing "
                      "from memory did best",
    "lindsay-mclennan-1983": "younger children wrote more legibly on unlined paper, older ones on lined",
}
ABSTRACTS |= {
    "sunde-2020": "first school year in Norway; a faster pace than one letter a week went with better letter "
                  "knowledge, word reading and spelling; not pre-K",
    "jones-reutzel-2012": "kindergarten classes, exploratory; short lessons with distributed cycles of review went "
                          "with better alphabet knowledge",
    "turnbull-2010": "461 children aged 3 to 5; knowing the capital made knowing the small letter more than 16 times "
                     "as likely",
    "justice-2006": "339 four-year-olds; own name among four things that go with learning a letter sooner",
    "ounsted-1985": "199 children; by 4 years the preferred hand was evident in 89.4 % of right-handers and 85.7 % of "
                    "left-handers, so in about one in nine it was not",
    "simpson-2013": "adults rated in clear view how alike two letters look; table seen",
}
# place, sentence or part of one, key, words of the abstract that carry it
CLAIMS = (
    ("readme", "With only middle and base lines, 55 % of first graders in one study took the middle line for the top "
               "(Reidlinger et al. 2012)", "reidlinger-2012", "with two lines 55% took the middle line for the top"),
    ("readme", "kindergartners who copied did better than those who traced (Hirsch & Niedermeyer 1973",
     "hirsch-niedermeyer-1973", "copying beat faded tracing"),
    ("readme", "Askov & Greff 1975, abstracts)", "askov-greff-1975", "copying clearly better than tracing"),
    ("readme", "of five lessons and a control, numbered arrows with writing from memory did most for first graders at "
               "risk (Berninger et al. 1997, abstract)", "berninger-1997", "five lessons and a control"),
    ("readme", "three bands of naming letters (Phillips et al. 2012: clear only at the two ends", "phillips-2012",
     "order clear only at the ends"),
    ("readme", "Naming says little about writing (Puranik et al. 2014, abstract)", "puranik-2014",
     "what drives naming does not substantially influence writing"),
    ("en", "which preschoolers also print better than others (Treiman & Broderick 1998, abstract)",
     "treiman-broderick-1998", "preschoolers also printed it better"),
    ("en", "three bands of naming capitals (Phillips et al. 2012, 1,574 children aged 2 to 5), which are clear only at "
           "the two ends", "phillips-2012", "order clear only at the ends"),
    ("en", "in a study of 415 children aged 3 to 5, what makes letters easier to name had no substantial influence on "
           "writing them, and standing in the child’s own name had (Puranik et al. 2014, abstract)", "puranik-2014",
     "letter factors had no substantial influence on writing letters, being in the child's own name had"),
    ("en", "Preschoolers print the first letter of their own name better than others (Treiman & Broderick 1998, "
           "abstract)", "treiman-broderick-1998", "preschoolers also printed it better"),
    ("en", "Children of five to six turned letters that face left, such as d and J, more often than others, and this "
           "did not foretell poor reading (Treiman et al. 2014, abstract)", "treiman-2014",
     "left-facing forms (d, J) reversed more; no later poor reading foretold"),
    ("en", "at five it is frequent when they write from memory (Fischer & Koch 2016, abstract)", "fischer-koch-2016",
     "at 5 often reverse left-facing characters when writing from memory"),
    ("en", "in the first school year in Norway, more than one letter a week went with better letter knowledge (Sunde "
           "et al. 2020, abstract); for younger children nobody has shown it", "sunde-2020",
     "a faster pace than one letter a week went with better letter knowledge"),
    ("en", "short lessons with spread review went with better letter knowledge in kindergarten (Jones & Reutzel 2012, "
           "abstract)", "jones-reutzel-2012", "short lessons with distributed cycles of review went with better"),
    ("es", "en el primer año escolar en Noruega, más de una letra por semana fue de la mano de un mejor conocimiento "
           "de las letras (Sunde et al. 2020, resumen); con niños más pequeños nadie lo ha mostrado", "sunde-2020",
     "a faster pace than one letter a week went with better letter knowledge"),
    ("es", "lecciones breves con repaso repartido fueron de la mano de un mejor conocimiento de las letras antes de "
           "primaria (Jones y Reutzel 2012, resumen)", "jones-reutzel-2012",
     "short lessons with distributed cycles of review went with better alphabet knowledge"),
    ("es", "que antes de primaria también se escribe mejor que las otras (Treiman y Broderick 1998, resumen)",
     "treiman-broderick-1998", "preschoolers also printed it better"),
    ("es", "tres grupos según se nombran las mayúsculas (Phillips et al. 2012, 1574 niños de 2 a 5 años), claros solo "
           "en los dos extremos", "phillips-2012", "order clear only at the ends"),
    ("es", "en un estudio con 415 niños de 3 a 5 años, lo que ayuda a nombrar las letras no influyó de forma notable "
           "en escribirlas, y que estén en su propio nombre sí (Puranik et al. 2014, resumen)", "puranik-2014",
     "letter factors had no substantial influence on writing letters, being in the child's own name had"),
    ("es", "Antes de primaria se escribe mejor la primera letra del propio nombre (Treiman y Broderick 1998, resumen)",
     "treiman-broderick-1998", "preschoolers also printed it better"),
    ("es", "A los cinco y seis años se giraron más las letras que miran a la izquierda, como d y J, y eso no anunció "
           "dificultades con la lectura (Treiman et al. 2014, resumen)", "treiman-2014",
     "left-facing forms (d, J) reversed more; no later poor reading foretold"),
    ("es", "a los cinco es frecuente al escribir de memoria (Fischer y Koch 2016, resumen)", "fischer-koch-2016",
     "at 5 often reverse left-facing characters when writing from memory"),
    ("en", "In one study younger children wrote more legibly without lines (Lindsay & McLennan 1983, abstract)",
     "lindsay-mclennan-1983", "younger children wrote more legibly on unlined paper"),
    ("en", "Lindsay & McLennan 1983 found younger children more legible without lines", "lindsay-mclennan-1983",
     "younger children wrote more legibly on unlined paper"),
    ("es", "Lindsay y McLennan 1983 hallaron que los más pequeños escriben más legible sin líneas",
     "lindsay-mclennan-1983", "younger children wrote more legibly on unlined paper"),
    ("es", "los niños más pequeños escribieron más legible sin líneas (Lindsay y McLennan 1983, resumen)",
     "lindsay-mclennan-1983", "younger children wrote more legibly on unlined paper"),
    ("en", "How alike letters look was rated by adults (Simpson et al. 2013)", "simpson-2013",
     "adults rated in clear view how alike two letters look"),
    ("es", "Cuánto se parecen las letras lo valoraron adultos (Simpson et al. 2013)", "simpson-2013",
     "adults rated in clear view how alike two letters look"),
    ("en", "from unlike to alike by adults’ ratings (Simpson et al. 2013)", "simpson-2013",
     "adults rated in clear view how alike two letters look"),
    ("en", "knowing the capital went with knowing the small letter (Turnbull et al. 2010, abstract)", "turnbull-2010",
     "knowing the capital made knowing the small letter more than 16 times as likely"),
    ("en", "letters of the own name are learnt sooner (Justice et al. 2006, abstract)", "justice-2006",
     "own name among four things that go with learning a letter sooner"),
    ("en", "though about one in nine does not yet (Ounsted et al. 1985, abstract)", "ounsted-1985",
     "in about one in nine it was not"),
    ("es", "aunque uno de cada nueve todavía no (Ounsted et al. 1985, resumen)", "ounsted-1985",
     "in about one in nine it was not"),
    ("es", "de distintas a parecidas según lo valoraron adultos (Simpson et al. 2013)", "simpson-2013",
     "adults rated in clear view how alike two letters look"),
    ("es", "quien conocía la mayúscula conocía más a menudo la minúscula (Turnbull et al. 2010, resumen)",
     "turnbull-2010",
     "knowing the capital made knowing the small letter more than 16 times as likely"),
    ("es", "las letras del propio nombre se aprenden antes (Justice et al. 2006, resumen)", "justice-2006",
     "own name among four things that go with learning a letter sooner"),
    ("ladder", "Of five lessons and a control, numbered arrows with writing from memory did most for first graders at "
               "risk (Berninger et al. 1997, abstract)", "berninger-1997", "numbered arrows with writing"),
    ("ladder", "Tracing alone did less than copying for kindergartners (Hirsch & Niedermeyer 1973, abstract)",
     "hirsch-niedermeyer-1973", "copying beat faded tracing"),
    ("ladder", "forms that face left, which children reverse more than others (Treiman et al. 2014, abstract)",
     "treiman-2014", "left-facing forms (d, J) reversed more"),
    ("ladder", "The own first letter, which preschoolers print better than others (Treiman & Broderick 1998, abstract)",
     "treiman-broderick-1998", "preschoolers also printed it better"),
    ("ladder", "copying did clearly better than tracing at writing from memory later (Askov & Greff 1975, abstract)",
     "askov-greff-1975", "copying clearly better than tracing at reproducing from memory"),
    ("ladder", "with numbered arrows it did more than four other lessons and a control (Berninger et al. 1997, "
               "abstract)", "berninger-1997", "five lessons and a control"),
    ("notes", "The bands are those of naming capitals (Phillips et al. 2012), which are clear only at the two ends",
     "phillips-2012", "order clear only at the ends"),
    ("notes", "what makes letters easy to name says little about writing them (Puranik et al. 2014, abstract)",
     "puranik-2014", "what drives naming does not substantially influence writing"),
)
NOT_SAID = ("best of six", "known best", "comes most easily", "one movement serves", "más conocida", "mejor sale",
            "un mismo movimiento")


def said(place: str) -> str:
    """Return all that is printed at a place, as running text."""
    if place == "readme":
        text = (Path(__file__).parents[2] / "README.md").read_text("utf-8")
    elif place == "ladder":
        text = " ".join(RUNGS.values())
    elif place == "notes":
        text = " ".join(sentence for key, sentence in wording("en").templates.items() if key.startswith("order.note."))
    else:
        text = " ".join(sentence for key, sentence in wording(place).templates.items()
                        if not key.startswith("order.note."))
    return " ".join(text.split())


@pytest.mark.parametrize("claim", CLAIMS, ids=lambda claim: f"{claim[0]}: {claim[1][-40:]}")
def test_a_sentence_agrees_with_the_abstract(claim: tuple[str, str, str, str]) -> None:
    """The sentence is printed so, the abstract says the words that carry it, and every number in it is the source's."""
    place, sentence, key, carried = claim
    source = load_evidence().sources[key]
    assert sentence.lower() in said(place).lower()
    assert carried in ABSTRACTS[key]
    assert source.surety in (Surety.SEEN, Surety.SEEN_ABSTRACT)
    told = f"{ABSTRACTS[key]} {source.sample} {source.finding} {source.reference} 1,574"  # 1,074 and 500
    numbers = set(re.findall(r"\d[\d,]*", sentence.replace("1574", "1,574"))) - {"2,"}
    assert {number.rstrip(",") for number in numbers} <= {number.rstrip(",") for number in
                                                          re.findall(r"\d[\d,]*", told.replace("–", " "))}


@pytest.mark.parametrize("place", ["readme", "en", "es", "ladder", "notes"])
def test_no_sentence_cites_a_study_and_is_not_in_the_table(place: str) -> None:
    """As many citations are printed at a place as the table has of it."""
    listed = " ".join(sentence for where, sentence, _, _ in CLAIMS if where == place)
    assert sorted(CITES.findall(said(place))) == sorted(CITES.findall(listed))


@pytest.mark.parametrize("place", ["readme", "en", "es", "ladder", "notes"])
def test_rules_of_ours_are_not_told_as_findings(place: str) -> None:
    """What no abstract says is not said."""
    assert not [words for words in NOT_SAID if words in said(place)]
