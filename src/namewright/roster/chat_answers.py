"""What a family answers where names are asked for in a chat: ``Hi! Our son is Leo Berg 😊, thank you`` names Leo Berg.

A message that asks has a word for names and one for children in a sentence. Beside it a greeting, thanks and ``here``
come off the name. What says whose the child is (``My daughter is Mia``) comes off in every chat. What is left must be
written as a name; else the message stays as it is. Out of scope: who writes and when (``pasted``, ``chat_blocks``).
"""

from __future__ import annotations

import re

from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.capitals import is_titled
from namewright.roster.header_words import CHILD_WORDS
from namewright.roster.heading_words import CHILDREN, CLOSINGS, GREETING_PHRASES, GREETINGS
from namewright.roster.known import is_given
from namewright.roster.vocabulary import AND_WORDS, fold, word_set

_NAMES = word_set("""
    name, names, nombre, nombres, nom, noms, prenom, prenoms, namen, vorname, vornamen, nome, nomi, nomes""")
_CHILDREN = CHILD_WORDS | CHILDREN | word_set("""
    son, daughter, sons, daughters, hijos, hijas, fils, fille, filles, sohn, tochter, sohnes, kindern, figli, figlie,
    filhos, filhas, pequeno, pequena, little, one""")
_GREETS = (GREETINGS | GREETING_PHRASES | word_set("morning, evening, guten, morgen, boas")) - CLOSINGS
_TO_ALL = word_set("""
    all, everyone, everybody, there, a, todos, todas, tout, le, monde, tous, toutes, zusammen, alle, an, allerseits,
    tutti, tutte, pessoal, gente, again, de, nuevo, nochmal, à""")
_FEWEST_WORDS = 5  # of a message that asks: no list of names has so many words in small letters
_MOST_WORDS = 6  # of a name
_WHOSE = pattern(
    r"(?:(?:and|y|et|und|e|the|o|a|el|la|il|le|der|die|das|this is|it['’]s|es|c['’]est|das ist|este é|esta é|questo è|"
    r"questa è|él es|ella es)\s+)*"
    r"(?:my|our|mi|nuestr[oa]|mon|ma|notre|meine?|unsere?|mi[ao]|nostr[oa]|minha|meu|noss[oa])\s+"
    r"(?:(?:little|sweet|dear|younger|older|youngest|oldest|kleine[rs]?|liebe[rs]?|petit|petite|cher|chère|pequeñ[oa]|"
    r"piccol[oa]|pequen[oa])\s+)*"
    r"(?:daughter|son|girl|boy|child|kid|kiddo|one|hij[oa]|niñ[oa]|nen[ea]|peque|fils|fille|garçon|enfant|tochter|sohn|"
    r"kind|mädchen|junge|maus|figli[oa]|bimb[oa]|bambin[oa]|ragazz[oa]|filh[oa]|menin[oa]|criança)"
    r"(?:(?:['’]s| s)?\s+name)?\s*"
    r"(?:[:,=–—-]|is called|is named|goes by|is|se llama|es|s['’]appelle|est|c['’]est|hei(?:ß|ss)t|ist|si chiama|è|"
    r"chama-se|se chama|é)?\s+(?:(?:o|a|el|la|il|der|die)\s+(?=(?-i:[^\W\d_a-z])))?", re.I)
_HERE = pattern(r"\s+(?:is\s+|est\s+|ist\s+|está\s+)?(?:here|hier|aqu[íi]|ici|qui)(?:\s+(?:please|bitte))?$", re.I)
_CLAUSE = pattern(r"(?:(?<=[^\W\d_]{2})\.|[,!;:–—-])+(?:\s+|$)")
_INITIAL = pattern(r"\s[^\W\d_]\.$")
_PLEASE = word_set("please, bitte, svp, stp, s'il vous plait, s’il vous plait, por favor, per favore")


def asks_for_names(text: str) -> bool:
    """Say whether a message asks families to write a child's name: ``Bitte schreibt hier den Namen eures Kindes``."""
    words = [fold(word.strip(".,!?:;()¡¿")) for word in text.split()]
    small = sum(begins_small(word) for word in text.split())
    return small >= _FEWEST_WORDS and not _NAMES.isdisjoint(words) and not _CHILDREN.isdisjoint(words)


def only_greets(text: str) -> bool:
    """Say whether a message is a greeting and nothing else: ``Guten Abend!``; Ola alone is a child."""
    words = fold(_trimmed(text)).split()
    return bool(words) and _greets(words) and (len(words) > 1 or not is_given(words[0]) or "!" in text)


def named_by(text: str, *, asked: bool) -> str:
    """Return the name in an answer, empty where nothing comes off; ``asked`` says that names were asked for."""
    bare = _trimmed(text)
    said = _without_greeting(bare) if asked else bare
    whose = _WHOSE.match(said)
    name = said[whose.end() :] if whose else said
    if not asked and not whose:
        return ""
    name = _HERE.sub("", _trimmed(_without_thanks(_trimmed(name))))
    return name if name != text.strip() and _is_a_name(name) else ""


def _trimmed(text: str) -> str:
    """Return a text without pictures and signs at its ends."""
    start = next((at for at, char in enumerate(text) if is_letter(char)), len(text))
    end = next((at for at in range(len(text), start, -1) if is_letter(text[at - 1]) or text[at - 1] in ".)'’"), start)
    bare = text[start:end].rstrip()
    return bare if _INITIAL.search(bare) else bare.removesuffix(".")


def _without_greeting(text: str) -> str:
    """Return what stands behind greetings, each before a sign, or of words that are no known given name."""
    while clause := _CLAUSE.search(text):
        words = fold(text[: clause.start()]).split()
        if not words or not _greets(words) or not text[clause.end() :].strip():
            break
        text = _trimmed(text[clause.end() :])
    words = text.split()
    size = next((size for size in (2, 1) if fold(" ".join(words[:size])) in _GREETS and len(words) > size), 0)
    return " ".join(words[size:]) if size and not is_given(words[0]) else text


def _greets(words: list[str]) -> bool:
    size = next((size for size in (2, 1) if " ".join(words[:size]) in _GREETS), 0)
    return size > 0 and _TO_ALL.issuperset(words[size:])


def _without_thanks(text: str) -> str:
    """Return what stands before a sign and thanks or a farewell."""
    clauses = list(_CLAUSE.finditer(text))
    for clause in clauses:
        behind = fold(text[clause.end() :].strip(" .!")).split()
        size = next((size for size in range(min(len(behind), 4), 0, -1)
                     if " ".join(behind[:size]) in CLOSINGS | _PLEASE), 0)
        small = all(map(begins_small, text[clause.end() :].split()[size:]))
        if size and small and clause.start():
            return text[: clause.start()]
    return text


def _is_a_name(text: str) -> bool:
    words = text.split()
    plain = 0 < len(words) <= _MOST_WORDS and not any(char.isdigit() or char in ":;?!@" for char in text)
    joined = [word for word in words if fold(word) not in AND_WORDS]
    greets = fold(text) in _GREETS | CLOSINGS and not is_given(text)
    return plain and not greets and bool(joined) and is_titled(" ".join(joined)) and len(words[0]) > 1
