"""Features: how letters and marks join, as a feature file (the OpenType feature notation that feaLib reads).

The same rules as ``Alphabet.letter``: a soft-dotted letter loses its dot under a mark above, some marks take
another form with some letters, marks hang on the anchors of their base and stack on each other.
"""

from __future__ import annotations

from collections.abc import Iterator

from namewright.letters.alphabet import Alphabet
from namewright.truetype.characters import UNIT, FontLetter, FontMark, Repertoire, glyph_name, names

PAIR_LOOKUPS = ("letters", "marked")  # first in GPOS, in this order; filled by ``kerning``


def feature_source(alphabet: Alphabet, repertoire: Repertoire) -> str:
    """Return the feature file of an alphabet."""
    parts = ["languagesystem DFLT dflt;", "languagesystem latn dflt;", *_glyph_classes(repertoire),
             *_compositions(alphabet, repertoire), *_pairs(repertoire), *_attachments(repertoire)]
    return "\n".join(parts)


def _glyph_classes(repertoire: Repertoire) -> Iterator[str]:
    yield f"table GDEF {{ GlyphClassDef {names(repertoire.letters)}, , {names(repertoire.marks)},; }} GDEF;"
    for attach in repertoire.attachments():
        yield f"@{attach} = {names(repertoire.marks_at(attach))};"
        yield f"markClass {names(repertoire.marks_at(attach))} <anchor 0 0> @at_{attach};"


def _pairs(repertoire: Repertoire) -> Iterator[str]:
    """Make room for the pair lookups; the pairs are far too many to be said in words."""
    first = repertoire.letters[0].name
    for name in PAIR_LOOKUPS:
        yield f"lookup {name} {{ lookupflag IgnoreMarks; pos {first} {first} 0; }} {name};"
    yield "feature kern { " + " ".join(f"lookup {name};" for name in PAIR_LOOKUPS) + " } kern;"


# --- ccmp: which glyphs are meant ------------------------------------------------------------------------


def _compositions(alphabet: Alphabet, repertoire: Repertoire) -> Iterator[str]:
    dotted = [entry for entry in repertoire.letters if _soft_dotted(entry)]
    single = [entry for entry in dotted if len(entry.marks) == 1]
    several = [entry for entry in dotted if len(entry.marks) > 1]
    yield "lookup lose_dot { " + " ".join(f"sub {s.name} by {s.base};" for s in single) + " } lose_dot;"
    yield "lookup lose_dot_keep_marks { " + " ".join(
        f"sub {s.name} by {s.base} {' '.join(s.marks[1:])};" for s in several) + " } lose_dot_keep_marks;"
    yield "feature ccmp {"
    yield from _sequences(repertoire)
    yield from _mark_forms(alphabet, repertoire)
    yield from _stacked_forms(alphabet, repertoire)
    yield "lookup soft_dotted { lookupflag UseMarkFilteringSet @top;"
    yield f"sub {names(single)}' lookup lose_dot @top;"
    yield f"sub {names(several)}' lookup lose_dot_keep_marks @top;"
    yield "} soft_dotted;\n} ccmp;"


def _sequences(repertoire: Repertoire) -> Iterator[str]:
    """Join a letter and a mark that have a glyph together though no code point."""
    joined = [entry for entry in repertoire.letters if len(entry.cluster) > 1]
    if joined:
        rules = (f"sub {' '.join(map(glyph_name, entry.cluster))} by {entry.name};" for entry in joined)
        yield f"lookup sequences {{ {' '.join(rules)} }} sequences;"


def _soft_dotted(entry: FontLetter) -> bool:
    return entry.base in (glyph_name("ı"), glyph_name("ȷ")) and entry.marks[:1] == (glyph_name("\u0307"),)


def _mark_forms(alphabet: Alphabet, repertoire: Repertoire) -> Iterator[str]:
    mark_names = {id(mark.glyph): mark.name for mark in repertoire.marks}
    forms = [form for form in alphabet.mark_forms.items() if form[0][1] in alphabet.glyphs]
    for index, ((mark, base), use) in enumerate(forms):
        plain, form = (mark_names[id(alphabet.marks[name])] for name in (mark, use))
        yield (f"lookup form_{index} {{ lookupflag UseMarkFilteringSet [{plain}]; "
               f"sub {names(repertoire.on(alphabet.glyphs[base]))} {plain}' by {form}; }} form_{index};")


def _stacked_forms(alphabet: Alphabet, repertoire: Repertoire) -> Iterator[str]:
    """Give a mark its form behind another mark, or behind a letter whose last mark at that side it is."""
    mark_names = {id(mark.glyph): mark.name for mark in repertoire.marks}
    for index, ((mark, below), use) in enumerate(alphabet.stacked_forms.items()):
        plain, form, under = (mark_names[id(alphabet.marks[name])] for name in (mark, use, below))
        attach = alphabet.marks[mark].attach
        before = [under, *(entry.name for entry in repertoire.letters
                           if [each.glyph for each in entry.letter.marks if each.glyph.attach == attach][-1:]
                           == [alphabet.marks[below]])]
        yield (f"lookup stacked_{index} {{ lookupflag UseMarkFilteringSet [{plain} {under}]; "
               f"sub [{' '.join(before)}] {plain}' by {form}; }} stacked_{index};")


# --- mark and mkmk: where marks stand --------------------------------------------------------------------


def _attachments(repertoire: Repertoire) -> Iterator[str]:
    yield "feature mark {"
    for attach in repertoire.attachments():
        joins = (_join("base", entry.name, _anchor(entry, attach), attach) for entry in repertoire.letters
                 if attach in entry.letter.base.anchors)
        yield f"lookup on_{attach} {{ {' '.join(joins)} }} on_{attach};"
    yield "} mark;\nfeature mkmk {"
    for attach in repertoire.attachments():
        joins = (_join("mark", mark.name, _step(mark), attach) for mark in repertoire.marks_at(attach))
        yield f"lookup over_{attach} {{ lookupflag UseMarkFilteringSet @{attach}; {' '.join(joins)} }} over_{attach};"
    yield "} mkmk;"


def _join(kind: str, name: str, at: tuple[int, int], attach: str) -> str:
    return f"pos {kind} {name} <anchor {at[0]} {at[1]}> mark @at_{attach};"


def _anchor(entry: FontLetter, attach: str) -> tuple[int, int]:
    """Return where the next mark hangs: on the base, or beyond the marks that the letter has there already."""
    (x, y), (dx, dy) = entry.letter.base.anchors[attach], entry.letter.next_mark(attach) or (0.0, 0.0)
    return round(UNIT * (x + dx)) + entry.shift, round(UNIT * (y + dy))


def _step(mark: FontMark) -> tuple[int, int]:
    x, y = mark.glyph.anchors.get(mark.glyph.attach, (0.0, 0.0))
    return round(UNIT * x), round(UNIT * y)
