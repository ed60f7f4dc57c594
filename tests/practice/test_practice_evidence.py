"""The evidence file: each source apart, and nothing from memory computed with or printed."""

from __future__ import annotations

import re
from importlib.resources import files

import pytest

from namewright.practice.evidence import Surety, load_evidence, parse_evidence

TEXT = files("namewright.practice").joinpath("evidence.toml").read_text(encoding="utf-8")


def test_every_source_says_what_it_is() -> None:
    """A source has a reference, a place where it was read, a sample and a finding; a doi looks like one."""
    for source in load_evidence().sources.values():
        assert all(text.strip() for text in (source.reference, source.read_at, source.sample, source.finding))
        assert source.doi is None or re.fullmatch(r"10\.\d{4,}/\S+", source.doi)


def test_nothing_is_computed_from_memory() -> None:
    """No table leans on a source known from memory only, and such sources do exist to be kept out."""
    evidence = load_evidence()
    surety = {key: source.surety for key, source in evidence.sources.items()}
    assert Surety.MEMORY in surety.values()
    assert all(surety[key] is not Surety.MEMORY for key in evidence.computed_from)


@pytest.mark.parametrize("key", ["puranik-2013-ends", "no-such-source"])
def test_a_table_on_memory_or_on_nothing_is_refused(key: str) -> None:
    """A table whose source is missing or from memory is an error that names the source."""
    broken = TEXT.replace('source = "simpson-2013"', f'source = "{key}"')
    with pytest.raises(ValueError, match=key):
        parse_evidence(broken)


def test_evidence_cannot_be_changed_by_a_reader() -> None:
    """The one shared copy is read-only."""
    with pytest.raises(TypeError):
        load_evidence().capitals["A"] = load_evidence().capitals["B"]  # type: ignore[index]
