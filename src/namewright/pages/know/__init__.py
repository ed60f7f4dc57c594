"""Pages to recognise, spell and build a name, one file a kind of page.

Which letters and names stand on them is computed in ``practice``; here they are drawn.
"""
