"""Fonts built from an alphabet, so that a class's letters can be typed elsewhere and checked by other engines.

A stage at the right of ``lines``: it takes shapes from ``letters`` and spacing and forms from ``lines``.
"""
