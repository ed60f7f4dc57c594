"""A language is one file, and says all that English says, with the same fields to fill in."""

from __future__ import annotations

import re
import string
from collections.abc import Mapping
from importlib import resources

import pytest

from namewright.wording import FIRST, languages, wording

STUDY = re.compile(r"([A-Z]\w+)(?: et al\.|,? (?:&|y|und|et|e) [A-Z]\w+) \(?((?:19|20)\d\d)")
NUMBER = re.compile(r"\d+(?![:.,\d]*})")
PARTS = {"command.": "command.usage"}
"""What a language may do without, all or nothing: the command line, by the key that tells."""


def _wanted(language: str, key: str) -> bool:
    return all(wording(language).has(tells) for part, tells in PARTS.items() if key.startswith(part))


def fields(template: str) -> frozenset[str]:
    return frozenset(name for _, name, _, _ in string.Formatter().parse(template) if name)


def forms(language: str) -> Mapping[str, list[frozenset[str]]]:
    """Return the fields of each key's forms: of one template, or of a singular and a plural."""
    found: dict[str, list[frozenset[str]]] = {}
    for key, template in wording(language).templates.items():
        if _wanted(language, key):
            found.setdefault(re.sub(r"\.(one|other)$", "", key), []).append(fields(template))
    return found


@pytest.mark.parametrize("language", languages())
def test_a_language_quotes_with_its_own_signs_alone(language: str) -> None:
    own = frozenset(wording(language).templates["quoted"])
    other = {key: text for key, text in wording(language).templates.items() if set("„“”«»") & set(text) - own}
    assert not other


@pytest.mark.parametrize("language", languages())
def test_what_stays_stays_on_this_device(language: str) -> None:
    """The screens are seen on phones, too: they call it what the page for a browser alone does."""
    device = wording(language).say("web.shell.private").rstrip(".").split()[-1]
    assert device in wording(language).say("web.site.private")


@pytest.mark.parametrize("language", languages())
def test_a_language_has_every_key_and_no_other(language: str) -> None:
    """The command line is in some languages; everything else, the screens too, is in all of them."""
    first = {key for key in forms(FIRST) if _wanted(language, key)}
    assert set(forms(language)) ^ first == set()


@pytest.mark.parametrize("language", languages())
def test_a_sentence_has_the_fields_of_the_english_one(language: str) -> None:
    """The fullest form names the same; a singular may leave the number away."""
    first = forms(FIRST)
    for key, own in forms(language).items():
        whole = frozenset().union(*own)
        assert whole == frozenset().union(*first[key]), key
        assert all(whole - form <= {"count"} | frozenset().union(*(whole - each for each in first[key]))
                   for form in own), key


@pytest.mark.parametrize("language", languages())
def test_studies_and_numbers_are_the_same_in_every_language(language: str) -> None:
    """A sentence that cites a study cites the same in each language, with the same figures."""
    first, own = wording(FIRST).templates, wording(language).templates
    for key in set(first) & set(own):
        assert sorted(STUDY.findall(own[key])) == sorted(STUDY.findall(first[key])), key
        there, here = (NUMBER.findall(text.replace("1,574", "1574")) for text in (first[key], own[key]))
        assert here == there, key


@pytest.mark.parametrize("language", languages())
def test_a_plural_has_both_forms(language: str) -> None:
    """A singular without a plural, or a plural without a singular, would be missed only when it is counted."""
    keys = set(wording(language).templates)
    assert {key.removesuffix(".one") for key in keys if key.endswith(".one")} == {
        key.removesuffix(".other") for key in keys if key.endswith(".other")}


@pytest.mark.parametrize("language", languages())
def test_a_file_says_who_has_read_it(language: str) -> None:
    """At its head, so that a teacher knows what to expect, and in the README too."""
    head = resources.files("namewright.wording").joinpath(f"{language}.toml").read_text(encoding="utf-8")[:800]
    assert re.search(READ[language], head), language


READ = {"de": "Von einer Person mit deutscher Muttersprache gelesen: (ja|nein)",
        "en": "Read by a native speaker: (yes|no)",
        "es": "Leído por una persona de lengua materna española: (sí|no)",
        "fr": "Relu par une personne de langue maternelle française : (oui|non)",
        "it": "Letto da una persona di madrelingua italiana: (sì|no)",
        "pt": "Lido por uma pessoa de língua materna portuguesa: (sim|não)"}
