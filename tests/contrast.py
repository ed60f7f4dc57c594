"""How far two colours stand apart, by WCAG 2.2."""

from __future__ import annotations


def luminance(colour: str) -> float:
    """Return the relative luminance of an sRGB colour (w3.org/TR/WCAG22/#dfn-relative-luminance)."""
    parts = [int(colour[at:at + 2], 16) / 255 for at in (1, 3, 5)]
    red, green, blue = (part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: str, other: str) -> float:
    """Return the contrast ratio, 1 to 21 (w3.org/TR/WCAG22/#dfn-contrast-ratio)."""
    light, dark = sorted((luminance(one), luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)
