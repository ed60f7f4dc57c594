"""Who plays what: ``Narrator: Mia``, ``Sheep: Leo and Ava``, ``Leo – Joseph``. A part is nobody, though Mary is a name.

On which side of the sign the parts stand is told by those that are nobody's name (shepherd, Schaf, posadero), on most
lines alike; then whatever stands there is a part. Out of scope: parts that no play for small children has.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from namewright.message import message
from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.capitals import is_loud
from namewright.roster.known import is_given, opens_with_given
from namewright.roster.names_between import BRACKETS
from namewright.roster.names_in_text import BETWEEN_NAMES
from namewright.roster.pasted import Line
from namewright.roster.shares import given_share, share
from namewright.roster.vocabulary import ANY_DAYS, fold, word_set
from namewright.store import keeps_names

_SIGN = pattern(r"\s*(.{1,60}?)(?:\s?:\s+|\s+[-–—=]\s+|\s*(?:→|->|=>)\s*|\t)(\S.*)")
_NUMBER = pattern(r"\s+(?:\d{1,2}|I{1,3})$")
_TIME = pattern(r"[0-9]{1,2}\s?(?:[:.h]\s?[0-9][0-9]|h\b|uhr\b|[ap]m\b)|\bore\s[0-9]", needs="0123456789")
_TITLES = word_set("""
    role, roles, part, parts, character, rolle, rollen, ruolo, ruoli, papel, papeis, papeles, personaje, personagem,
    personnage, personaggio""")
_PARTS = word_set("""
    narrator, storyteller, shepherd, sheep, lamb, ox, donkey, camel, star, king, queen, wise man, innkeeper, angel,
    soldier, tree, flower, wolf, fox, bear, mouse, rabbit, fairy, witch, snowman, elf, reindeer, prince, princess,
    dancer, dragon, pig, hen, duck, cat, moon, sun, cloud, drummer, giant, farmer, sailor, bee, butterfly, erzahler,
    erzahlerin, hirte, hirtin, schaf, lamm, ochse, esel, kamel, stern, konig, konigin, wirt, wirtin, engel, soldat,
    baum, blume, fuchs, bar, maus, hase, fee, hexe, schneemann, prinz, prinzessin, drache, schwein, huhn, ente,
    katze, mond, sonne, wolke, zwerg, riese, bauer, rauber, biene, schmetterling, bote, narrador, narradora, pastor,
    pastora, pastorcillo, oveja, cordero, buey, burro, mula, camello, estrella, rey, reina, rey mago, posadero,
    posadera, soldado, arbol, flor, lobo, zorro, oso, raton, conejo, hada, bruja, principe, princesa, cerdo,
    gallina, pato, gato, luna, sol, nube, gigante, paje, abeja, mariposa, narrateur, narratrice, berger, bergere,
    mouton, agneau, boeuf, ane, chameau, etoile, roi, reine, roi mage, aubergiste, ange, arbre, fleur, loup, renard,
    ours, souris, lapin, fee, sorciere, prince, cochon, poule, canard, chat, lune, soleil, nuage, geant, lutin,
    abeille, papillon, narratore, narratrice, pastorella, pecora, agnello, bue, asino, asinello, cammello, stella,
    re, regina, re magio, oste, locandiere, angelo, soldato, albero, fiore, lupo, volpe, orso, topo, coniglio, fata,
    strega, pupazzo di neve, drago, maiale, gallina, anatra, gatto, sole, nuvola, gigante, folletto, ape, farfalla,
    ovelha, cordeiro, boi, camelo, estrela, rei, rainha, rei mago, estalajadeiro, anjo, arvore, raposa, urso, rato,
    coelho, fada, bruxa, princesa, porco, galinha, lua, nuvem, gigante, duende, abelha, borboleta""")
_CALLED = word_set("mary, joseph, maria, josef, jose, giuseppe, marie, jesus, gesu")
"""Parts that are names: a list where all are parts has them, too."""
_PLURALS = ("", "s", "es", "e", "n", "en")
_FEWEST, _HALF = 2, 0.5
_MOST_ABOVE = 3
_LONGEST = 300
_OVER, _SAID = message("roster.heading_over"), message("roster.sentence")


class _Signed(NamedTuple):
    """What stands before the first sign of a line, and behind it."""

    before: str
    behind: str


def from_a_cast(lines: Sequence[Line]) -> list[Line]:
    """Return a heading for each part with its children below, or the children without the parts behind them."""
    found = {at: signed for at, line in enumerate(lines) if (signed := _signed(line.text))}
    titles = _titles(lines, found)
    found = {at: one for at, one in found.items() if at not in titles}
    before, behind = [one.before for one in found.values()], [one.behind for one in found.values()]
    front = share(map(_is_a_part, before)) > share(map(_is_a_part, behind))
    if not (_are_parts(before, behind) if front else _are_parts(behind, before)):
        return list(lines)
    first, last = min(found), max(found)
    above = [at for at in range(first) if any(map(is_letter, lines[at].text))]
    cast: list[Line] = []
    for at, line in enumerate(lines):
        if at in found:
            cast += _told(line, found[at], first=front)
        elif at in titles or (at in above and len(above) <= _MOST_ABOVE and not opens_with_given(line.text)):
            cast.append(line.heading(line.text, _OVER))
        elif at > last and _tells_when(line.text):
            cast.append(line.heading(line.text, _SAID))
        else:
            cast.append(line)
    return cast


def _are_parts(sides: Sequence[str], names: Sequence[str]) -> bool:
    """Say whether what stands on one side of the signs are parts: some are no name, and most or all are of a play."""
    parts = [_bare(side) for side in sides if _is_a_part(side)]
    no_names = sum(not is_given(part) for part in parts)
    if len(parts) >= max(_FEWEST, _HALF * len(sides)) and no_names >= _FEWEST:
        return True
    known = len(sides) > _FEWEST and given_share(names) > _HALF and not all(map(_is_a_part, sides))
    return len(sides) >= _FEWEST and bool(no_names or known) and all(
        _is_a_part(side) or fold(_bare(side)) in _CALLED for side in sides)


def _titles(lines: Sequence[Line], found: Mapping[int, _Signed]) -> set[int]:
    """Return the first line of all where it goes on small behind its sign, as no other does: ``Play – who is who``.

    Or where it is all in capitals, as no other is.
    """
    at = next((at for at, line in enumerate(lines) if any(map(is_letter, line.text))), 0)
    first, others = found.get(at), [one for place, one in found.items() if place != at]
    if first is None or not others or any(map(_is_a_part, first)) or (
            opens_with_given(first.before) and not begins_small(first.before.split()[-1])):
        return set()
    small = begins_small(first.behind) and not any(begins_small(one.behind) for one in others)
    loud = is_loud(lines[at].text) and not any(is_loud(one.before) or is_loud(one.behind) for one in others)
    return {at} if small or loud else set()


@keeps_names(1024)
def _signed(text: str) -> _Signed | None:
    match = _SIGN.fullmatch(text) if len(text) <= _LONGEST else None
    return _Signed(match[1].strip(), match[2].strip()) if match and "\t" not in match[2] else None


def _told(line: Line, signed: _Signed, *, first: bool) -> Iterator[Line]:
    """Yield a part as a heading and each of its children, or the child whose part stands behind."""
    if not _TITLES.isdisjoint((fold(signed.before), fold(signed.behind))):
        yield line.heading(f"{signed.before} · {signed.behind}", _OVER)
    elif first:
        yield line.heading(signed.before, _OVER)
        yield from (line.part(name) if " " in signed.behind else line._replace(text=name)
                    for name in _names(signed.behind))
    else:
        yield line.without(signed.behind, signed.before)


def _names(text: str) -> Iterator[str]:
    """Yield the names between signs and words that part, each with its brackets."""
    masked, at = BRACKETS.sub(lambda match: "x" * len(match[0]), text), 0
    for sign in BETWEEN_NAMES.finditer(masked):
        yield text[at : sign.start()].strip()
        at = sign.end()
    yield text[at:].strip()


def _bare(side: str) -> str:
    """Return words without brackets and without a number behind them: ``Sheep 2 (knows the song)``."""
    return _NUMBER.sub("", BRACKETS.sub(" ", side).strip())


@keeps_names(1024)
def _is_a_part(side: str) -> bool:
    word = fold(_bare(side))
    return any(word.removesuffix(end) in _PARTS for end in _PLURALS)


def _tells_when(text: str) -> bool:
    """Say whether a line below has a day or a time, and opens with no known name: ``Rehearsal Thursday 10:00``."""
    timed = _TIME.search(text.lower()) or any(fold(word).strip(".,") in ANY_DAYS for word in text.split())
    return bool(timed) and not opens_with_given(text)
