"""Each command that the README shows is typed as it stands there, one after the other in one folder."""

from __future__ import annotations

import io
import re
import shlex
from collections.abc import Iterator
from pathlib import Path

import openpyxl
import pytest

from namewright.cli import main

README = (Path(__file__).parents[1] / "README.md").read_text(encoding="utf-8")
CLASS = (("First name", "Last name", "Hand"), ("Mira", "Quill", "left"), ("Bo", "Tarn", ""), ("Emma", "Moss", ""),
         ("Zoë", "Lind", "right"), ("Tilo", "Reed", ""))
TRIED_ELSEWHERE = {"open", "fonts"}
"""One never ends by itself, the other takes a quarter of a minute."""


def shown() -> Iterator[list[str]]:
    """Yield the words of each command; one that begins with … goes on from the newest that does not."""
    block, before = README[README.index("namewright open  "):], [""]
    for line in block[:block.index("```")].splitlines():
        typed, _, told = re.sub(r"\s{2,}", "\t", line.strip()).partition("\t")
        if " | " in typed:  # three that need no more words, but for a list
            yield from ([word, "class.xlsx"] if word == "roster" else [word] for word in typed.split()[1::2])
            continue
        first, *words = shlex.split(typed)
        before = before if first == "…" else words
        yield [*before, *words] if first == "…" else words
        if "; then: namewright " in told:
            yield shlex.split(told.partition("; then: namewright ")[2])


def test_every_command_of_the_readme_does_what_is_asked(tmp_path: Path, monkeypatch: pytest.MonkeyPatch,
                                                        capsys: pytest.CaptureFixture[str]) -> None:
    """All are made, and the file that is named is there; only erasing waits for a yes that nobody types."""
    monkeypatch.chdir(tmp_path)
    book = openpyxl.Workbook()
    for row in CLASS:
        book.active.append(row)
    book.save("class.xlsx")
    Path("new.csv").write_text("\n".join(",".join(row) for row in CLASS).replace("Moss", "Vost"), encoding="utf-8")
    Path("lists").mkdir()
    book.save("lists/room4.xlsx")
    typed = [words for words in shown() if words[0] not in TRIED_ELSEWHERE]
    assert len(typed) > 30
    for words in typed:
        monkeypatch.setattr("sys.stdin", io.TextIOWrapper(io.BytesIO(b"Mira\nBo\n" if "-" in words else b"")))
        assert main(words) == (2 if "--erase" in words else 0), (words, capsys.readouterr().err)
        for flag in {"-o", "--summary"} & set(words):
            assert Path(words[words.index(flag) + 1]).exists(), words
