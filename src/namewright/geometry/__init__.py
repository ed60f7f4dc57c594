"""Plane geometry for letters and pages: points, boxes, lines and cubic curves, polylines, distances.

The unit and the way y runs are the caller's (letter units with y up in an alphabet, millimetres with y down on a
page); where an answer depends on them its docstring says so. What is approximate takes a ``tolerance`` in the
caller's unit. fontTools does what it does well (boxes, arc lengths and cuts of curves). Out of scope: what a stroke
of a pen is (``letters.strokes``), and areas (shapely's, in ``schoolfont``).
"""
