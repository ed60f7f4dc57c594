"""A school's variable font: Inter (Debian package fonts-inter-variable), and DejaVu Sans, which has no axes."""

from __future__ import annotations

from pathlib import Path

import pytest

from namewright.cli import main
from namewright.lines.ruling import preset
from namewright.schoolfont import FontError
from namewright.schoolfont.reading import load_font
from namewright.schoolfont.shaping import Lettering

VARIABLE = Path("/usr/share/fonts/truetype/inter-vf/Inter-roman.var.ttf")
DEJAVU = Path("/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf")
needs_inter = pytest.mark.skipif(not VARIABLE.is_file(), reason="needs apt-get install fonts-inter-variable")


def stem_mm(axes: str | None) -> float:
    """Return the width of the outline of an l."""
    (letter,) = Lettering(load_font(VARIABLE, axes)).ruled(preset("us-3/4")).line("l").letters
    xs = [point[0] for stroke in letter.letter.outline for segment in stroke.segments for point in segment]
    return max(xs) - min(xs)


@needs_inter
def test_a_weight_is_drawn_as_asked() -> None:
    """Heavier values have wider stems, a ready form is the value that the file gives it, and none is the default."""
    light, plain, bold = (stem_mm(f"wght={weight}") for weight in (100, 400, 700))
    assert light < 0.6 * plain < 0.6 * bold
    assert stem_mm("Bold") == stem_mm("bold") == bold
    assert stem_mm(None) == plain


@needs_inter
@pytest.mark.parametrize("asked", ["", "wght", "wght=heavy", "wght=9000", "wdth=80", "Fat"])
def test_what_the_font_does_not_know_is_refused(asked: str) -> None:
    """With what it does know, so that the next try succeeds."""
    with pytest.raises(FontError) as refused:
        load_font(VARIABLE, asked)
    assert refused.value.message.key == "font.axes"
    assert {"wght=100…900", "Bold"} <= set(dict(refused.value.message.fields)["known"])


@pytest.mark.skipif(not DEJAVU.is_file(), reason="needs apt-get install fonts-dejavu-core")
def test_a_font_without_axes_says_so() -> None:
    """It is not drawn in a form that nobody asked for."""
    with pytest.raises(FontError) as refused:
        load_font(DEJAVU, "wght=400")
    assert refused.value.message.key == "font.no_axes"


@needs_inter
def test_a_form_that_nobody_chose_is_told(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """A variable font drawn in its usual form is said to be, with what else there is; a form that is chosen is not."""
    card = ["card", "Mira", "-o", str(tmp_path / "card.pdf"), "--font", str(VARIABLE)]
    assert main(card) == 0
    said = capsys.readouterr().err
    assert "several forms" in said
    assert "wght=100…900" in said
    assert main([*card, "--font-axis", "Bold"]) == 0
    assert "forms" not in capsys.readouterr().err
