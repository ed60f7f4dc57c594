"""Beats: parts that join to the name, read from a correction, the dictionary or the spelling."""

from __future__ import annotations

import unicodedata

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from namewright.message import Problem
from namewright.names import beats as module
from namewright.names.beat_rules import plain, table_for
from namewright.names.beats import Beats, Spoken, beats, readings, spoken_beats, typed
from namewright.names.clusters import clusters
from namewright.names.syllables import breaks

LETTERS = "abcdefghijklmnopqrstuvwxyzABCDEJKLMNQUYZéèëïíóúüñçãőłşğıİßœʻ"
WORD = st.text(LETTERS, min_size=1, max_size=12)
NAME = st.builds(
    lambda words, joints: "".join(w + j for w, j in zip(words, joints, strict=False)) + words[-1],
    st.lists(WORD, min_size=1, max_size=3),
    st.lists(st.sampled_from([" ", "-", "'", ". "]), min_size=2, max_size=2),
)
LANGUAGE = st.sampled_from(["en", "en-GB", "es", "es-MX", "haw", "pl", "vi", "de", "fr", "tlh"])


def shown(name: str, language: str = "en") -> str:
    return "|".join(beats(name, language).parts)


@given(NAME, LANGUAGE)
@example("Ng", "en")
@example("McKenna", "en")
@example("O'Brien-Łucja", "pl")
@example("A.J. Smith", "en")
@example("3", "en")
def test_parts_join_back(name: str, language: str) -> None:
    """Whatever the name and the language, the parts join to it, there is at least one, and none is empty."""
    parts = beats(name, language).parts
    assert "".join(parts) == unicodedata.normalize("NFC", name)
    assert parts
    assert all(parts)


@given(st.text(max_size=12).filter(lambda text: text.strip()), LANGUAGE)
def test_any_text_joins_back(text: str, language: str) -> None:
    """No text that somebody pastes is lost or refused."""
    assert "".join(beats(text, language).parts) == unicodedata.normalize("NFC", text)


@given(st.text(LETTERS.lower().replace("i̇", ""), min_size=1, max_size=14), st.sampled_from(["en", "es", "pl", "de"]))
def test_each_part_has_a_vowel(word: str, language: str) -> None:
    """A part of a word holds a vowel letter unless the word has none (initials and Mc- apart)."""
    vowels = table_for(language).vowels
    parts = beats(word.removeprefix("mc") or "a", language).parts
    held = [any(plain(letter) in vowels for letter in clusters(part)) for part in parts]
    assert all(held) or len(parts) == 1


@pytest.mark.parametrize("name", ["Ng", "Bg", "Hrv", "李"])
def test_no_vowel_letter_is_one_beat(name: str) -> None:
    """A name without a vowel letter is clapped once."""
    assert beats(name).parts == (name,)


@pytest.mark.parametrize(
    ("name", "language", "expected"),
    [
        ("Penelope", "en", "Pe|ne|lo|pe"),  # a final e that sounds
        ("James", "en", "James"),  # -es that does not
        ("Katelyn", "en", "Kate|lyn"),  # a silent e stays with what it leans on
        ("Chloé", "en", "Chlo|é"),  # an accent makes a beat
        ("Zoë", "en", "Zo|ë"),
        ("Guy", "en", "Guy"),  # silent u
        ("Maya", "en", "Ma|ya"),  # y as a consonant
        ("Anthony", "en", "An|tho|ny"),  # th stays whole
        ("Winston", "en", "Win|ston"),
        ("Jackie", "en", "Jack|ie"),  # ck closes
        ("McKenna", "en", "Mc|Ken|na"),  # a beat with no vowel letter
        ("Mary-Jane", "en", "Ma|ry-|Jane"),  # the hyphen ends a part
        ("Ana María", "es", "A|na |Ma|rí|a"),  # so does the space
        ("D'Angelo", "en", "D'An|ge|lo"),
        ("O'Brien", "en", "O'|Bri|en"),
        ("A.J.", "en", "A.|J."),  # initials are said letter by letter
        ("TJ", "en", "T|J"),
        ("JO", "en", "JO"),  # a short name in capitals is no initials
        ("Guillermo", "es", "Gui|ller|mo"),  # ll is one letter, u is silent
        ("Mateo", "es", "Ma|te|o"),  # two strong vowels part
        ("Julia", "es", "Ju|lia"),  # a weak one joins
        ("Lucía", "es", "Lu|cí|a"),  # unless it has the accent
        ("Áurea", "es", "Áu|re|a"),  # an accent on the strong one changes nothing
        ("Águeda", "es", "Á|gue|da"),
        ("Güicho", "es", "Güi|cho"),
        ("Eloy", "es", "E|loy"),
        ("Kaʻiulani", "haw", "Ka|ʻiu|la|ni"),  # the ʻokina opens a beat, iu glides
        ("Kealiʻi", "haw", "Ke|a|li|ʻi"),  # ea does not glide
        ("Ka'ahumanu", "haw", "Ka|'a|hu|ma|nu"),  # an apostrophe typed for it
        ("Małgorzata", "pl", "Mał|go|rza|ta"),  # rz is one sound
        ("Maria", "pl", "Ma|ria"),  # i only softens
        ("Nguyễn Thị Minh", "vi", "Nguyễn |Thị |Minh"),  # a word is a beat
        ("François", "fr", "Fran|çois"),
    ],
)
def test_examples(name: str, language: str, expected: str) -> None:
    """Each rule once, by an everyday name."""
    assert shown(name, language) == expected


def test_known_only_from_dictionary_or_teacher() -> None:
    """A listed English name and a correction are known; anything else is a guess and says so."""
    source = "the CMU Pronouncing Dictionary, or read by hand"
    assert beats("Penelope") == Beats(tuple("Penelope"), (0, 2, 4, 6), True, source)
    guess = beats("Brivola")
    assert (guess.parts, guess.known) == (("Bri", "vo", "la"), False)
    assert "guess" in guess.source
    assert not beats("Penelope Brivola").known
    assert not beats("Penelope", "es").known
    assert beats("Brivola", corrected="Briv-o-la").known


@pytest.mark.parametrize(
    ("name", "corrected", "expected"),
    [
        ("Penelope", "Pe-ne-lo-pe", "Pe|ne|lo|pe"),
        ("Penelope", "Pe·ne·lo·pe", "Pe|ne|lo|pe"),
        ("Julia", " ju-li-a ", "Ju|li|a"),  # the name's own capitals are kept
        ("Mary-Jane", "Ma-ry-Jane", "Ma|ry-|Jane"),  # one hyphen may be the name's and the beat's
        ("Mary-Jane", "Ma·ry·Jane", "Ma|ry-|Jane"),
        ("Mary-Jane", "Ma·ryJane", "Ma|ry-|Jane"),  # a hyphen or space forgotten is filled in
        ("Ana Lía", "A-na-Lí-a", "A|na |Lí|a"),
        ("Zoë", "Zo-e\u0308", "Zo|ë"),  # typed with a separate mark
    ],
)
def test_correction(name: str, corrected: str, expected: str) -> None:
    """The teacher's beats win, however the joints are typed, and the letters stay the name's own."""
    found = beats(name, corrected=corrected)
    assert "|".join(found.parts) == expected
    assert found.known


@pytest.mark.parametrize("corrected", ["Pe-ne-lop", "Pe-ne-lo-pee", "Pe-na-lo-pe", "---", "Penelope s", "Penelópe"])
def test_correction_that_does_not_join_back(corrected: str) -> None:
    """Beats that are not the name are refused in a sentence that says what to type."""
    with pytest.raises(Problem, match=r"beats\.do_not_join\(name=Penelope"):
        beats("Penelope", corrected=corrected)


def test_empty_name() -> None:
    """No name, no beats, and a sentence that says so."""
    with pytest.raises(Problem, match=r"beats\.no_name"):
        beats("  ")


@given(NAME, st.data())
def test_any_cut_can_be_typed(name: str, data: st.DataObject) -> None:
    """A name cut anywhere between its letters and typed back with middle dots gives those cuts.

    A cut in front of a hyphen or space falls behind it.
    """
    letters = clusters(unicodedata.normalize("NFC", name))
    cuts = data.draw(st.lists(st.booleans(), min_size=len(letters), max_size=len(letters)))
    typed = "".join(letter + "·" * cut for letter, cut in zip(letters, cuts, strict=True))
    parts = beats(name, corrected=typed).parts
    assert "".join(parts) == "".join(letters)
    ends = {sum(map(len, parts[: at + 1])) for at in range(len(parts))}
    followed = [*letters[1:], ""]
    wanted = {sum(map(len, letters[: at + 1])) for at, cut in enumerate(cuts) if cut and followed[at] not in (" ", "-")}
    assert wanted <= ends


def test_dictionary_is_read_only_when_needed() -> None:
    """A class of another language never waits for the English dictionary."""
    module._lines.cache_clear()
    module._dictionary.cache_clear()
    beats("Lucía", "es")
    beats("Lucy", corrected="Lu-cy")
    assert module._lines.cache_info().currsize == 0
    beats("Lucy")
    assert module._lines.cache_info().currsize == 1


@pytest.mark.parametrize(("name", "spoken", "parts", "known"), [
    ("Liam", Spoken(None, "es"), "Li am", False),   # the dictionary has two, Spanish spelling one: a doubt
    ("Liam", Spoken("es"), "Liam", True), ("Liam", Spoken("en"), "Li am", True), ("Liam", Spoken(), "Li am", True),
    ("Rocío", Spoken(None, "es"), "Ro cí o", False), ("Zofia", Spoken("pl"), "Zo fia", True),
    ("Ngọc Anh", Spoken("vi-VN"), "Ngọc  Anh", True), ("Keʻalohi", Spoken("haw"), "Ke ʻa lo hi", True),
    ("Ottilka", Spoken("en"), "Ot til ka", False), ("Ottilka", Spoken("ta"), "Ot til ka", False),
    ("Penelope", Spoken("en", own="Pen-el-o-pe"), "Pen el o pe", True),
    ("Penelope", Spoken("en", own="Mi-ra"), "Pe ne lo pe", True),  # beats of another name are passed over
])
def test_a_name_is_clapped_in_its_own_language(name: str, spoken: Spoken, parts: str, known: bool) -> None:
    """What is said of the language holds; where nobody said, the pages' language, and English where that differs."""
    found = spoken_beats(clusters(name), spoken)
    assert (" ".join(found.parts), found.known) == (parts, known)


@pytest.mark.parametrize(("name", "spoken", "first"), [
    ("Liam", Spoken(None, "es"), "Li-am"), ("Magdalene", Spoken(None, "it"), "Mag-da-lene"),
    ("Jean-Luc Ottilka", Spoken(), "Jean-Luc-Ot-til-ka"), ("Nguyễn", Spoken(), "Ngu-yễn")])
def test_readings_are_what_a_teacher_could_mean(name: str, spoken: Spoken, first: str) -> None:
    """The likeliest first, each once, and each of them is taken again as a teacher's own."""
    ways = readings(clusters(name), spoken)
    assert typed(ways[0]) == first
    assert len({len(way) for way in ways}) == len(ways)
    assert all(beats(name, corrected=typed(way)).parts == way for way in ways)


def test_a_teachers_own_beats_move_the_breaks_of_a_long_name() -> None:
    """A name too long for its row is broken where its teacher claps, and its tile boxes are, too."""
    name = clusters("Christopherson")
    assert breaks(name) == (5, 7, 11)
    assert breaks(name, Spoken(own="Christo-pherson")) == (7,)
