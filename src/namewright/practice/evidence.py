"""The published evidence, read from ``evidence.toml`` and kept as it was published.

One record a source, with how surely it is known; the tables refer to the sources by key. Nothing here
weighs or combines sources: that is the business of ``difficulty``. Naming figures are in the logit-like
units of the source (more negative is easier); similarity ratings have no unit (higher looks more alike).
Out of scope: fetching anything. The file is read once and never written.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from enum import StrEnum
from functools import cache
from pathlib import Path
from types import MappingProxyType
from typing import Any

from namewright import toml
from namewright.named_tuples import NamedTuple


class Surety(StrEnum):
    """How a number or a finding was read, from most to least sure."""

    SEEN = "seen"
    SEEN_ABSTRACT = "seen-abstract"
    SECOND_HAND = "second-hand"
    MEMORY = "memory"


class Source(NamedTuple):
    """One publication: what it is, where it was read, whom it studied, and what it found (our words)."""

    key: str
    reference: str
    read_at: str
    sample: str
    finding: str
    surety: Surety
    doi: str | None = None


class NamingItem(NamedTuple):
    """How hard one capital is to name; None where the source calls its own estimate unstable."""

    a: float
    b: float
    b_not_first: float
    b_first: float | None

    @property
    def own_initial_gain(self) -> float | None:
        """How much easier the letter is as the child's own first initial; None where not estimable."""
        return None if self.b_first is None else self.b_not_first - self.b_first


class WritingList(NamedTuple):
    """The easy and the hard small letters of one study."""

    source: str
    easy: frozenset[str]
    hard: frozenset[str]


class Basis(StrEnum):
    """What a way of making a page rests on."""

    SOURCE = "source"
    COMMON = "common practice"
    OURS = "a rule of ours"


class PageReason(NamedTuple):
    """Why a kind of page is made as it is (our words), what that rests on, and the keys of the sources if on those."""

    why: str
    basis: Basis
    sources: tuple[str, ...] = ()


class Evidence(NamedTuple):
    """Everything in the file.

    ``capitals`` maps A–Z to naming figures and ``own_initial_item`` is the source's (a, b) of the item
    "the child's own first initial". ``similarity`` maps an unordered pair of letters of one case to its
    rating and holds every published pair rated 3.0 or more, small a read as printed with two storeys;
    ``single_storey_a`` holds the pairs of the other small a. ``left_facing`` are the characters seen
    named as examples of those that children reverse. ``name_likeness`` are the weights of what makes two names look
    alike, and ``pages`` says of each kind of page to know a name by why it is made so.
    """

    sources: Mapping[str, Source]
    capitals: Mapping[str, NamingItem]
    own_initial_item: tuple[float, float]
    writing: tuple[WritingList, ...]
    similarity: Mapping[frozenset[str], float]
    single_storey_a: Mapping[frozenset[str], float]
    left_facing: frozenset[str]
    computed_from: frozenset[str]
    name_likeness: Mapping[str, float]
    pages: Mapping[str, PageReason]


@cache
def load_evidence() -> Evidence:
    """Read the evidence file of this package; the same object each time.

    Raises ValueError where a table leans on a source that is missing or known from memory only.
    """
    text = Path(__file__).with_name("evidence.toml").read_text(encoding="utf-8")
    return parse_evidence(text)


def parse_evidence(text: str) -> Evidence:
    """Read evidence from TOML text; see ``load_evidence``."""
    raw = toml.loads(text)
    naming, pairs = raw["naming"], raw["similarity"]
    likeness = {key: value for key, value in raw["name_likeness"].items() if key != "basis"}
    reasons = {key: _reason(entry) for key, entry in raw["pages"].items()}
    evidence = Evidence(
        sources=MappingProxyType({key: _source(key, entry) for key, entry in raw["sources"].items()}),
        capitals=MappingProxyType({letter: _item(entry) for letter, entry in naming["capitals"].items()}),
        own_initial_item=(naming["own_initial_item"]["a"], naming["own_initial_item"]["b"]),
        writing=tuple(_writing(entry) for entry in raw["writing"]),
        similarity=MappingProxyType(_pairs(pairs["capitals"]) | _pairs(pairs["small"])),
        single_storey_a=MappingProxyType(_pairs(pairs["single_storey_a"])),
        left_facing=frozenset(letter for entry in raw["left_facing"] for letter in entry["letters"].split()),
        computed_from=frozenset(entry["source"] for entry in
                                (naming, pairs, *raw["writing"], *raw["left_facing"]))
        | {source for one in reasons.values() for source in one.sources},
        name_likeness=MappingProxyType(likeness),
        pages=MappingProxyType(reasons),
    )
    _check_sources(evidence)
    return evidence


def _source(key: str, entry: Mapping[str, Any]) -> Source:
    return Source(key=key, **{**entry, "surety": Surety(entry["surety"])})


def _reason(entry: Mapping[str, Any]) -> PageReason:
    return PageReason(entry["why"], Basis(entry["basis"]), tuple(entry.get("sources", ())))


def _item(entry: Mapping[str, float]) -> NamingItem:
    return NamingItem(entry["a"], entry["b"], entry["b_not_first"], entry.get("b_first"))


def _writing(entry: Mapping[str, str]) -> WritingList:
    return WritingList(entry["source"], frozenset(entry["easy"].split()), frozenset(entry["hard"].split()))


def _pairs(table: Mapping[str, float]) -> dict[frozenset[str], float]:
    return {frozenset(pair.split("-")): rating for pair, rating in table.items()}


def _check_sources(evidence: Evidence) -> None:
    """Refuse a table with no source, and a table known from memory only: nothing is computed from those."""
    bad = sorted(key for key in evidence.computed_from if not _is_sure(evidence.sources, key))
    if bad:
        raise ValueError(f"a table leans on {_listed(bad)}, which is missing or known from memory only; "
                         "give the table a source that was read")


def _is_sure(sources: Mapping[str, Source], key: str) -> bool:
    return key in sources and sources[key].surety is not Surety.MEMORY


def _listed(keys: Iterable[str]) -> str:
    return ", ".join(f"“{key}”" for key in keys)
