"""Names told in a sentence, as a message does: ``Hi! My class this year: Mia, Leo and Ava``.

The words end at a colon or at the last one in small letters, and names alone follow, up to the end of that sentence. It
is sure that these are the class where a colon or a verb of naming leads to them, and enough are known or the words say
that they name the children; else they are asked about.
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.beside import is_word_about
from namewright.roster.heading_words import CHILDREN, DEARS, GREETINGS, HEADING_WORDS, LEVELS, OPENERS, OUR
from namewright.roster.known import is_given, opens_with_given
from namewright.roster.names_in_text import is_small
from namewright.roster.several import Several
from namewright.roster.shares import given_share
from namewright.roster.unlike import is_closing
from namewright.roster.vocabulary import AND, OTHER_PEOPLE, fold, word_set
from namewright.store import keeps_names

_PARTED = pattern(rf"\s*[,;，、]\s*(?:(?:{AND})\s+)?|\s+(?:{AND}|&)\s+")
_TOLD_APART = pattern(rf"[.,;!]\s+|\s+(?:{AND})\s+")
_COLON = pattern(r"\s?:\s+(?=\S)", needs=":")
_CLOSED = pattern(r"(?<=[^\W\d_]{2})\s?[.!?…]+(?=\s|$)|\s*[^\w\s.,;:!?'’()&/+·‐-]+(?=\s|$)")
"""Where names end before more is said: a sign that ends a sentence, not an initial, or a picture."""
_LISTED = pattern(rf"[^\W\d_a-zß-ÿ][\w’'-]+(?:,\s+|\s+(?:{AND}|&)\s+)[^\W\d_a-zß-ÿ][\w’'-]+")
"""Two words with capitals, about a comma or an “and”."""
_SENTENCES = pattern(r"(?<=[^\W\d_]{3})[.!?…]+\s+(?=[^\W\d_])")
_CLAUSES = pattern(r"[.,!?…;]+(?:\s|$)|[^\w\s.,;:!?'’()&/+·‐-]+")
_NAMING = word_set("""
    are, is, have, called, named, heissen, sind, son, estan, llaman, sont, s'appellent, s’appellent, sono, stanno,
    chiamano, sao, estao, chamam, chamam-se, voici, voila, ecco, seguem""")
_HAVING = word_set("""
    have, has, haben, habe, hat, tengo, tenemos, tiene, ai, j'ai, j’ai, avons, ho, abbiamo, tenho, temos, tem""")
_NOT = word_set("not, no, without, nicht, kein, keine, ohne, sin, ne, n'ai, n’ai, pas, sans, non, senza, nao, sem")
_CLASS = HEADING_WORDS | LEVELS
_FEWEST, _MOST_WORDS = 3, 3
_MANY = 6  # names, with nothing but their place to tell that they are some
_BETWEEN = 2  # words of which the second may be what is named: are the kids
_SMALL = 2  # words in small letters that make a sentence
_MOSTLY, _SOME = 0.6, 0.3


@keeps_names(1024)
def told_in_a_sentence(text: str) -> Several | None:
    """Return the names at the end of a sentence, headed by its words; None where a line is no such sentence."""
    told, after = _before_more(text)
    words = told.rstrip(" .!").split()
    ends = [at for at, word in enumerate(words) if word.endswith(":") or is_small(word)]
    opened = len(words) > 1 and fold(words[0]) in OPENERS and begins_small(words[1]) and ":" not in told
    named = is_given(words[0].strip(",!")) and fold(words[0]).strip(",!") not in GREETINGS if words else True
    if len(ends) + opened < _SMALL or not ends or (named and not opened):
        return None
    before, behind = words[: ends[-1] + 1], " ".join(words[ends[-1] + 1 :])
    if closed := _CLOSED.search(behind):  # Mia and Leo. Thanks
        behind, after = behind[: closed.start()], f"{behind[closed.end() :]} {after}"
    parts = tuple(_PARTED.split(behind))
    if len(parts) < _BETWEEN or not all(map(_is_name, parts)):
        return None
    clause = _last_clause(before)
    known = given_share(parts)
    if len(parts) < _FEWEST and (known < 1 or fold(before[-1]) not in _NAMING):
        return None
    about = not _CLASS.isdisjoint(clause)
    if not about and known < _MOSTLY:
        return None
    leads = before[-1].endswith(":") or fold(before[-1]) in _NAMING or (about and _tells_who_is_had(clause))
    named_so = _names_children(clause) or (about and all(" " in part for part in parts))
    enough = known >= (_SOME if about else _MOSTLY) or (len(parts) >= _MANY and named_so)
    sure = leads and OTHER_PEOPLE.isdisjoint(clause) and enough and not _names_more(after)
    if opened and not sure and (named or len(ends) < _SMALL):  # told aloud, it may be surer
        return None
    return Several(parts, sure, f"{' '.join(before).rstrip(' :')}:")


@keeps_names(1024)
def is_a_text(text: str) -> bool:
    """Say whether several sentences follow each other and open with no child: ``Le chef de rang est Mira. Bo part``.

    A remark of several sentences stands behind a name and a sign.
    """
    if _names_some_in_passing(text):
        return True
    clauses = [clause.split() for clause in _SENTENCES.split(text) if clause.strip()]
    words = text.split()
    if len(clauses) < _BETWEEN or sum(map(is_small, words)) <= _SMALL or is_given(words[0].strip(",.:;")):
        return False
    signs = any(word[-1] in ",:;" or word in "-–—" or word[0] == "(" for word in clauses[0][:_MOST_WORDS])
    return not signs and any(map(is_small, clauses[0]))


def _names_some_in_passing(text: str) -> bool:
    """Say whether a sentence opens with a small word or a greeting and lists names: ``Bitte mit Mia, Leo üben``."""
    first = text.split()[0] if text.strip() else ""
    opening = fold(bare := first.strip(",!:"))
    greets = opening in GREETINGS | DEARS and bare != first  # Olá, Mia e Leo …
    if not greets and (opening not in OPENERS | GREETINGS | DEARS or is_given(bare)):
        return False
    return sum(map(is_small, text.split())) >= _SMALL and _LISTED.search(text, len(opening)) is not None


def speaks_of_several(text: str) -> Several | None:
    """Return the clauses of a line that tells of several children: ``Noah leaves at 2, Emma rides bus 7``."""
    clauses = [clause.strip(" .!") for clause in _TOLD_APART.split(text)]
    about = tuple(clause for clause in clauses if _tells_of_one(clause.split()))
    if len(about) < _BETWEEN or about[0] != clauses[0] or not any(opens_with_given(clause) for clause in about):
        return None
    return Several(about, False)


def _tells_of_one(words: Sequence[str]) -> bool:
    """Say whether words are a name and what the child does, in small letters."""
    return (len(words) > 1 and not begins_small(words[0]) and is_small(words[1]) and words[0].isalpha()
            and not is_word_about(words[0]))


def _before_more(text: str) -> tuple[str, str]:
    """Return a text up to where the names behind its last colon end, and what is said after them: ``. Thank you!``."""
    colons = list(_COLON.finditer(text))
    closed = _CLOSED.search(text, colons[-1].end()) if colons else None
    return (text[: closed.start()], text[closed.end() :]) if closed else (text, "")


def _last_clause(words: Sequence[str]) -> list[str]:
    """Return the folded words that lead to the names: ``Ciao maestra, ecco i bambini:`` speaks of children."""
    clauses = [clause for clause in _CLAUSES.split(" ".join(words)) if clause.strip(" :")]
    return [word.strip(":¡¿") for word in fold(clauses[-1]).split() if word != ":"] if clauses else []


def _names_children(clause: Sequence[str]) -> bool:
    """Say whether children are what a clause names: ``estos son los niños``, ``meine Kinder heißen``."""
    naming = [at for at, word in enumerate(clause) if word in _NAMING]
    return any(not CHILDREN.isdisjoint(clause[max(0, at - _BETWEEN) : at + _BETWEEN + 1]) for at in naming)


def _tells_who_is_had(clause: Sequence[str]) -> bool:
    """Say whether a clause tells of whom somebody has before the class: ``este ano tenho na minha sala``."""
    return not _HAVING.isdisjoint(clause) and _NOT.isdisjoint(clause) and not OUR.isdisjoint(clause)


def _names_more(after: str) -> bool:
    """Say whether more children may be named behind the end, and no thanks: ``Noah comes, too``."""
    return any(map(is_given, (word.strip(",.!") for word in after.split() if not begins_small(word)))) and (
        not is_closing(after))


def _is_name(part: str) -> bool:
    words = part.split()
    return 0 < sum(word not in PARTICLES for word in words) <= _MOST_WORDS and all(
        is_letter(word[0]) and (not begins_small(word) or word in PARTICLES) and not any(map(str.isdigit, word))
        for word in words)
