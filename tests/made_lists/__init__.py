"""Lists as teachers have them, made from open name data, and a judge of how each was read.

Names are those of Faker's person lists (PyPI Faker, MIT; many are taken from statistics offices), put together at
random, so that no list is a real class. Shapes are split: `shapes_tuned` was looked at while the reader was written,
`shapes_held` was written before that and looked at once, at the end; places are split the same way.
"""
