"""Folders drawn as a tree: the folder of each child is a child, what is in all of them is none."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster

KNOWN = [("Mira", "Vost"), ("Leo", "Tarn"), ("Ana", "Ruiz")]
UNKNOWN = [("Dlunyil", "Kwapson"), ("Xairfön", "Gaskwom"), ("Tarnul", "Brevin")]


def tree(names: list[str], files: tuple[str, ...]) -> str:
    lines = ["K-2/"]
    for at, name in enumerate(names, 1):
        last = at == len(names)
        lines.append(f"{'└' if last else '├'}── {name}")
        lines += [f"{' ' if last else '│'}   {'└' if file == files[-1] else '├'}── {file}" for file in files]
    return "\n".join((*lines, "", "3 directories, 6 files"))


@pytest.mark.parametrize("files", [(), ("portrait.pdf", "Mappe.docx"), ("dibujo.jpg", "ritratto.jpg", "Pasta.pdf")])
@pytest.mark.parametrize("form", ["{} {}", "{} {}/", "{}_{}/"])
@pytest.mark.parametrize("names", [KNOWN, UNKNOWN])
def test_a_folder_is_a_child_and_what_is_in_each_is_none(
    names: list[tuple[str, str]], form: str, files: tuple[str, ...]
) -> None:
    read = read_roster(tree([form.format(*name) for name in names], files))
    assert [(child.given, child.family) for child in read.children] == names
    told = [report for report in read.lines if any(note.key == "roster.said_below" for note in report.notes)]
    assert len(told) == len(files) * len(names)
    assert not any(report.outcome is Outcome.LEFT_OUT for report in read.lines)


def test_family_names_in_front_stay_in_front() -> None:
    text = tree([f"{family}, {given}/" for given, family in UNKNOWN], ("portrait.pdf", "dossier.pdf"))
    assert [(child.given, child.family) for child in read_roster(text).children] == UNKNOWN


def test_children_in_folders_of_groups_are_children() -> None:
    text = "├── Bears\n│   ├── Mira Vost\n│   └── Leo Tarn\n└── Owls\n    ├── Ana Ruiz\n    └── Tilo Menk"
    assert {"Mira", "Leo", "Ana", "Tilo"} <= {child.practice for child in read_roster(text).children}
