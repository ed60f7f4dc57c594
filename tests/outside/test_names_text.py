"""Clusters and normalisation against code nobody here wrote.

Sources: the ``regex`` library's ``\\X`` (an implementation of UAX #29, extended grapheme clusters), and
Python's own ``unicodedata`` (UAX #15). Break points against ``pyphen``, asked directly.
"""

from __future__ import annotations

import unicodedata

import pyphen
import pytest
import regex
from hypothesis import example, given, settings
from hypothesis import strategies as st

from namewright.names.beats import Spoken
from namewright.names.clusters import clusters
from namewright.names.syllables import breaks
from namewright.roster.tidy import tidy

NAMES = [
    "Zoë",
    "Nguyễn",
    "Ngọc",
    "Kaʻiulani",
    "Ẹ̀bun",
    "Ą́",
    "Đặng",
    "D'Angelo",
    "Mary-Jane",
    "Łucja",
    "Søren",
    "Þóra",
    "Íñigo",
    "Chloé",
    "Björn",
    "Žofia",
    "Ştefan",
    "Ștefan",
    "Ğülten",
    "Işıl",
    "İlkay",
    "Ọ̀ṣun",
    "Ḿbà",
    "Ŋaio",
    "Ǫ́",
    "Ĳsbrand",
    "Straße",
    "Māui",
    "Tāwhiri",
    "Ƙarama",
    "Ɓala",
    "Oʻtkir",
    "Gʻani",
    "Núñez",
    "Ľudovít",
    "Đorđe",
    "Ēriks",
    "Ķēvins",
    "Ģirts",
    "Šarūnas",
    "Ųla",
    "Ċetta",
    "Ħaġar",
    "Ŵyn",
    "Seán",
    "Aoibhínn",
    "Jósé",
    "Ą́ki",
]
MARKS = "".join(map(chr, (*range(0x300, 0x370), 0x20DD)))
LATIN = st.characters(categories=("Lu", "Ll", "Lt", "Lm"), max_codepoint=0x24F)
SIGNS = st.sampled_from(" -'’ʻ·.\r\n\t\u200d\u200c\u00ad")
NAME_TEXT = st.text(st.one_of(LATIN, st.sampled_from(MARKS), SIGNS))


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("form", ["NFC", "NFD"])
def test_clusters_are_those_of_another_library(name: str, form: str) -> None:
    r"""Names of many languages, composed or not, are cut as regex's \X cuts them."""
    text = unicodedata.normalize(form, name)
    assert list(clusters(text)) == regex.findall(r"\X", text)


@settings(max_examples=300)
@example("A\r\n\u0301b")
@example("A\u20ddb")
@given(NAME_TEXT)
def test_any_latin_text_is_cut_alike(text: str) -> None:
    r"""Latin letters, marks in any number and place, joiners and line ends: the same clusters as \X."""
    assert list(clusters(text)) == regex.findall(r"\X", text)


@pytest.mark.parametrize("name", NAMES)
def test_names_become_nfc(name: str) -> None:
    """A name in either form becomes the NFC of Python's own tables."""
    for form in ("NFC", "NFD"):
        assert tidy(unicodedata.normalize(form, name)).text == unicodedata.normalize("NFC", name)


@settings(max_examples=300)
@given(st.text(st.one_of(LATIN, st.sampled_from(MARKS.replace("\u034f", ""))), max_size=20))
def test_any_latin_text_becomes_nfc(text: str) -> None:
    """Letters and marks in any order are only ever normalised, never changed."""
    assert tidy(text).text == unicodedata.normalize("NFC", text)


@pytest.mark.parametrize(
    ("name", "language"),
    [("Guadalupe", "es"), ("Maximiliane", "de"), ("Torvander", "en_US"), ("Fernando", "en_US")],
)
def test_breaks_agree_with_the_patterns(name: str, language: str) -> None:
    """Names whose syllables pyphen finds are broken where it breaks them, two letters from either end."""
    expected = [int(at) for at in pyphen.Pyphen(lang=language, left=2, right=2).positions(name.lower())]
    assert list(breaks(clusters(name), Spoken(language))) == expected
    assert expected
